package org.deckplanreview.report;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Deck;
import org.deckplanreview.layout.Decks;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.loadpath.LoadModel;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.ruleset.Binding;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.LoadRules;
import org.deckplanreview.ruleset.SiteValues;
import org.deckplanreview.ruleset.Source;
import org.deckplanreview.ruleset.Standing;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.Occupancy;
import org.deckplanreview.submission.Protection;
import org.deckplanreview.submission.RulesetChoice;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.Stating;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Use;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;
import org.deckplanreview.vocabulary.Vocabulary;

/** Reports of findings that are made by hand, under an edition of an invented region. */
public final class ReportBuilder {
    public static final String SUBMISSION = "{\"reference\": \"DPR-1\", \"a\": 1.0}";
    public static final String VERSION = "1.2.3";

    public static final Vocabulary VOCABULARY = new Vocabulary(
            List.of(),
            List.of(new MethodDescription(
                    "en1995.bending",
                    "EN 1995-1-1:2004",
                    "bending stress",
                    MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE,
                    List.of(SubjectKind.JOISTS),
                    List.of(
                            ParameterDescription.number("gammaM", MeasureUnit.RATIO, "partial factor"),
                            ParameterDescription.table("kmod", "modification factors")),
                    "Bending, (6.11).")),
            List.of(),
            List.of());

    private ReportBuilder() {}

    public static Report report(FindingBuilder... findings) {
        return report("DPR-1", findings);
    }

    /** Of a submission whose lengths are in inches. */
    public static Report reportInInches(FindingBuilder... findings) {
        return new Reports(VOCABULARY, VERSION)
                .of(
                        assessment("DPR-1", LengthUnit.INCH, findings),
                        SUBMISSION.getBytes(StandardCharsets.UTF_8),
                        () -> SUBMISSION,
                        List::of);
    }

    public static Report report(String reference, FindingBuilder... findings) {
        return new Reports(VOCABULARY, VERSION)
                .of(
                        assessment(reference, findings),
                        SUBMISSION.getBytes(StandardCharsets.UTF_8),
                        () -> SUBMISSION,
                        List::of);
    }

    /** Without findings, on a layout of its own and with a site schedule by the values of practice given. */
    public static Report report(Layout layout, Parameters practice) {
        Edition e = edition();
        Edition withPractice = new Edition(
                e.region(),
                e.regionTitle(),
                e.name(),
                e.title(),
                e.binding(),
                e.bases(),
                e.basedOn(),
                e.sources(),
                e.site(),
                e.loads(),
                Optional.of(practice),
                e.provisions(),
                e.cautions(),
                e.referrals(),
                e.notes(),
                e.amendments(),
                e.canonical(),
                e.digest());
        return new Reports(VOCABULARY, VERSION)
                .of(
                        new Assessment(
                                layout, unloaded(layout), withPractice, List.of(), List.of(), Determination.COMPLIES),
                        SUBMISSION.getBytes(StandardCharsets.UTF_8),
                        () -> SUBMISSION,
                        List::of);
    }

    public static Assessment assessment(String reference, FindingBuilder... builders) {
        return assessment(reference, LengthUnit.MILLIMETRE, builders);
    }

    private static Assessment assessment(String reference, LengthUnit units, FindingBuilder... builders) {
        List<Finding> findings =
                Arrays.stream(builders).map(FindingBuilder::build).toList();
        Determination outcome = findings.stream()
                .map(Finding::determination)
                .filter(d -> d != Determination.NOT_APPLICABLE)
                .min(Determination::compareTo)
                .orElse(Determination.COMPLIES);
        Layout layout = new Layout(submission(reference, units), new Deck(), List.of(), List.of());
        return new Assessment(
                layout,
                unloaded(layout),
                edition(),
                findings,
                List.of("The imposed load is that of a single dwelling."),
                outcome);
    }

    /** Of a bare platform, 3000 by 2400 mm, on which nothing is found. */
    public static Assessment drawnAssessment() {
        Layout layout = Decks.rectangle(3000, 2400).layout();
        return new Assessment(layout, unloaded(layout), edition(), List.of(), List.of(), Determination.COMPLIES);
    }

    private static LoadPath unloaded(Layout layout) {
        LoadModel.PlatformLoads none = new LoadModel.PlatformLoads(Derived.known(0.0), "", Derived.known(0.0), 0, 0);
        return LoadPath.derive(
                layout,
                new LoadModel(
                        layout.platforms().stream().map(p -> none).toList(),
                        new TreeMap<>(),
                        0,
                        0,
                        false,
                        1,
                        1,
                        OptionalDouble.empty(),
                        new LoadModel.OnEdges(0, Derived.known(0.0), Derived.known(0.0), new TreeMap<>())));
    }

    public static Edition edition() {
        return new Edition(
                "shire",
                "The Shire",
                "2024",
                "Decks in the Shire",
                new Binding.ByDate(LocalDate.of(2024, 10, 1), Optional.empty()),
                List.of(new Edition.Base("common/boards.yaml", "Boards in every shire", "sha256:" + "3".repeat(64))),
                List.of(new Edition.BasedOn(
                        "en1995",
                        new Source(
                                "en1995", "Design of timber structures", "EN 1995-1-1:2004", "CEN", Standing.STANDARD),
                        "sha256:" + "1".repeat(64))),
                List.of(),
                new SiteValues(List.of()),
                new LoadRules(List.of(), parameters()),
                Optional.empty(),
                List.of(),
                List.of("Wet boards are slippery."),
                List.of("Ask the authority whether the deck needs a permit."),
                List.of(),
                List.of(),
                "{\"region\":\"shire\"}",
                "sha256:" + "2".repeat(64));
    }

    /** Parameters that know where they come from and no more. */
    public static Parameters parameters() {
        return new Parameters() {
            @Override
            public boolean has(String name) {
                return true;
            }

            @Override
            public double number(String name, MeasureUnit unit) {
                throw new UnsupportedOperationException(name);
            }

            @Override
            public String word(String name) {
                throw new UnsupportedOperationException(name);
            }

            @Override
            public boolean flag(String name) {
                throw new UnsupportedOperationException(name);
            }

            @Override
            public Table table(String name) {
                throw new UnsupportedOperationException(name);
            }

            @Override
            public String source(String name) {
                return "source of " + name;
            }

            @Override
            public String confirmedBy(String name) {
                return recalled().contains(name) ? "memory" : "page";
            }

            @Override
            public List<String> recalled() {
                return List.of("kmod");
            }
        };
    }

    private static Submission submission(String reference, LengthUnit units) {
        return Stating.a(Submission.class)
                .with("reference", reference)
                .with("title", "Terrace behind the mill")
                .with("units", units)
                .with("reviewOn", LocalDate.of(2026, 11, 25))
                .with("ruleset", new RulesetChoice("shire", Optional.empty()))
                .with(
                        "use",
                        Stating.a(Use.class)
                                .with("occupancy", Occupancy.SINGLE_DWELLING)
                                .made())
                .with("site", Stating.a(Site.class).made())
                .with("protection", Stating.a(Protection.class).made())
                .made();
    }
}
