package org.deckplanreview.report;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.provenance.CanonicalJson;
import org.deckplanreview.provenance.Digest;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.schedule.SiteSchedule;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.NotReviewed;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Vocabulary;

/** Makes reports of assessments. The same assessment of the same bytes gives the same report. */
public final class Reports {
    static final String NOTICE =
            "A pre-check of a design on paper. It grants no approval and replaces no inspection. Local"
                    + " codes, the authority that applies them and a licensed engineer prevail over it.";

    /** Worst first; stable, so that subjects with the same pointer keep the layout's order. */
    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::determination)
            .thenComparing(f -> f.provision().obligation())
            .thenComparing(
                    Comparator.<Finding>comparingDouble(f -> f.utilisation().orElse(Double.NEGATIVE_INFINITY))
                            .reversed())
            .thenComparingInt(f -> f.provision().order())
            .thenComparing(f -> f.subject().pointer());

    private final Vocabulary vocabulary;
    private final String serviceVersion;

    /** @param vocabulary names the parameters whose sources citations tell */
    public Reports(Vocabulary vocabulary, String serviceVersion) {
        this.vocabulary = vocabulary;
        this.serviceVersion = serviceVersion;
    }

    /**
     * The report of an assessment.
     *
     * @param received the bytes as they came
     * @param submissionJson the same submission as JSON text, in any form, asked for where its digest is
     * @param notReviewed what was given and not read, asked for when all else of the report is made
     */
    public Report of(
            Assessment assessment,
            byte[] received,
            Supplier<String> submissionJson,
            Supplier<List<NotReviewed>> notReviewed) {
        Submission submission = assessment.layout().submission();
        List<Finding> ordered = assessment.findings().stream().sorted(ORDER).toList();
        UnitSystem units = submission.units().system();
        FilledTexts texts = new FilledTexts(assessment.edition(), vocabulary, units);
        Subjects subjects = new Subjects(assessment.layout());
        List<ReportedFinding> findings =
                ordered.stream().map(f -> reported(f, subjects, texts, units)).toList();
        Optional<SiteSchedule> schedule =
                assessment.edition().schedule().map(practice -> SiteSchedule.derive(assessment.layout(), practice));
        return new Report(
                NOTICE,
                submission.reference(),
                submission.title(),
                submission.reviewOn(),
                Optional.of(submission.units()).filter(u -> u != LengthUnit.MILLIMETRE),
                assessment.outcome(),
                Counts.of(findings),
                ReportedEdition.of(assessment.edition(), submission),
                gathered(assessment.edition().cautions(), ordered, texts::caution),
                gathered(assessment.edition().referrals(), ordered, texts::referral),
                findings,
                subjects.all(),
                notReviewed.get(),
                assessment.assumptions(),
                RecalledValues.of(assessment, vocabulary),
                schedule,
                new Provenance(
                        serviceVersion,
                        Digest.sha256(received),
                        () -> Digest.sha256(CanonicalJson.of(submissionJson.get())),
                        assessment.edition().digest()));
    }

    private ReportedFinding reported(Finding finding, Subjects subjects, FilledTexts texts, UnitSystem units) {
        Provision provision = finding.provision();
        Comparison comparison = Comparison.of(finding, units);
        return new ReportedFinding(
                provision.id(),
                provision.title(),
                provision.concern(),
                provision.obligation(),
                provision.citation().source().standing(),
                subjects.of(finding),
                finding.determination(),
                comparison.found(),
                comparison.allowed(),
                finding.utilisation().stream()
                        .filter(Double::isFinite)
                        .mapToObj(Numbers::utilisation)
                        .findFirst(),
                finding.calculated().map(ReportedCalculation::of),
                finding.sentence(),
                Optional.of(finding).filter(Reports::isOpen).flatMap(texts::advice),
                ReportedStep.of(finding.working(), units),
                ReportedCitation.of(provision.citation(), setBy(finding)),
                finding.needs());
    }

    private List<ReportedCitation.SetBy> setBy(Finding finding) {
        if (!(finding.provision().rule() instanceof Rule.Calculation calculation)) {
            return finding.rows().stream().map(ReportedCitation.SetBy::of).toList();
        }
        Parameters parameters = calculation.parameters();
        return vocabulary.method(calculation.method()).map(MethodDescription::parameters).stream()
                .flatMap(List::stream)
                .map(ParameterDescription::name)
                .filter(parameters::has)
                .map(n -> ReportedCitation.SetBy.of(n, parameters))
                .toList();
    }

    private static List<String> gathered(
            List<String> always, List<Finding> findings, Function<Finding, Optional<String>> text) {
        Set<String> all = new LinkedHashSet<>(always);
        findings.stream()
                .filter(Reports::isOpen)
                .flatMap(f -> text.apply(f).stream())
                .forEach(all::add);
        return List.copyOf(all);
    }

    private static boolean isOpen(Finding finding) {
        return finding.determination() == Determination.DOES_NOT_COMPLY
                || finding.determination() == Determination.UNDETERMINED;
    }
}
