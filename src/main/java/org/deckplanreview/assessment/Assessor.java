package org.deckplanreview.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.LoadModel;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Obligation;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.SiteValues;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Submission;

/** Assesses a layout under an edition. */
public final class Assessor {

    private final Catalogue catalogue;

    public Assessor(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** A submission with the local values that the edition's amendments give for its site. */
    public Assessment assess(Submission submission, Edition edition) {
        return assess(new Derivation(submission), edition);
    }

    /** {@link #assess(Submission, Edition)} of a submission that is assessed under several editions. */
    public Assessment assess(Derivation derivation, Edition edition) {
        SiteValues.Localised localised = edition.site().over(derivation.submission());
        return assess(derivation, derivation.layout(localised.submission()), edition, localised.assumptions());
    }

    /**
     * Derives what all of these editions take alike: the layout where their sites have the same values, and the load path where
     * their loads are the same.
     *
     * @param shared where that work is done; what chooses the loads is done outside it
     */
    public void derive(Derivation derivation, List<Edition> editions, Consumer<Runnable> shared) {
        if (editions.stream().anyMatch(edition -> !edition.site().values().isEmpty())) {
            return;
        }
        shared.accept(() -> derivation.layout(derivation.submission()));
        Layout layout = derivation.layout(derivation.submission());
        List<LoadModel> models = editions.stream()
                .map(edition -> loads(layout, edition).model())
                .distinct()
                .toList();
        if (models.size() == 1) {
            shared.accept(() -> derivation.loadPath(layout, models.get(0)));
        }
    }

    private Assessment assess(Derivation derivation, Layout layout, Edition edition, List<String> ofSite) {
        Loads loads = loads(layout, edition);
        LoadPath loadPath = derivation.loadPath(layout, loads.model());
        ProvisionAssessor one = provisionAssessor(layout, loadPath, loads, edition);
        Set<String> assumptions = new LinkedHashSet<>();
        assumptions.addAll(ofSite);
        layout.platforms().forEach(p -> assumptions.addAll(p.assumptions()));
        assumptions.addAll(loads.assumptions());
        List<Finding> findings = new ArrayList<>();
        for (Provision provision : edition.provisions()) {
            findings.addAll(findings(provision, layout, one));
        }
        findings.forEach(f -> assumptions.addAll(f.assumptions()));
        return new Assessment(
                layout, loadPath, edition, List.copyOf(findings), List.copyOf(assumptions), outcome(findings));
    }

    /** The findings of one provision of the edition alone, as {@link #assess(Submission, Edition)} would have them. */
    public List<Finding> assess(Submission submission, Edition edition, Provision provision) {
        return assess(new Derivation(submission), edition, provision);
    }

    /** {@link #assess(Submission, Edition, Provision)} of a submission of which several provisions or editions are asked for. */
    public List<Finding> assess(Derivation derivation, Edition edition, Provision provision) {
        Layout layout =
                derivation.layout(edition.site().over(derivation.submission()).submission());
        Loads loads = loads(layout, edition);
        LoadPath loadPath = new LateLoadPath(() -> derivation.loadPath(layout, loads.model()));
        return findings(provision, layout, provisionAssessor(layout, loadPath, loads, edition));
    }

    private ProvisionAssessor provisionAssessor(Layout layout, LoadPath loadPath, Loads loads, Edition edition) {
        return new ProvisionAssessor(catalogue, new ReviewContext(layout, loadPath, loads.categories()), edition);
    }

    /** Conditions on loads can only ask for geometry, which needs no load path. */
    private Loads loads(Layout layout, Edition edition) {
        ReviewContext geometryOnly = new ReviewContext(layout, NoLoadPath.INSTANCE, List.of());
        return Loads.of(edition, layout, new Conditions(catalogue, geometryOnly));
    }

    private static Determination outcome(List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.provision().obligation() == Obligation.SHALL)
                .map(Finding::determination)
                .filter(d -> d != Determination.NOT_APPLICABLE)
                .min(Comparator.naturalOrder())
                .orElse(Determination.COMPLIES);
    }

    private static List<Finding> findings(Provision provision, Layout layout, ProvisionAssessor one) {
        List<Result> results = new ArrayList<>();
        for (Subject subject : layout.subjects(provision.subjects())) {
            results.add(one.assess(provision, subject));
        }
        results.addAll(absent(provision.subjects(), layout));
        if (results.isEmpty()) {
            results.add(Result.notApplicable(
                    layout.deck(), "", "The deck has no " + provision.subjects().word() + "."));
        }
        Map<String, List<Result>> alike = new LinkedHashMap<>();
        for (Result r : results) {
            String key = r.determination() == Determination.NOT_APPLICABLE
                    ? r.determination().word() + r.sentence()
                    : r.determination().word() + " " + r.subject().kind() + " "
                            + r.subject().alikeKey();
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(r);
        }
        return alike.values().stream().map(group -> finding(provision, group)).toList();
    }

    /** Parts that every platform must have and that this one does not describe. */
    private static List<Result> absent(SubjectKind kind, Layout layout) {
        List<Result> results = new ArrayList<>();
        if (kind == SubjectKind.FIXINGS && layout.fixings().isEmpty()) {
            results.add(Result.undetermined(
                    layout.deck(),
                    "",
                    "The submission describes no fixings.",
                    List.of(new Need(
                            Pointer.of("/protection/fixings"),
                            "the metal fixings: kind, size and corrosion protection"))));
        }
        for (PlatformLayout p : layout.platforms()) {
            boolean isAbsent =
                    switch (kind) {
                        case BOARDS -> p.boards().isEmpty();
                        case JOISTS -> p.joists().isEmpty();
                        case BEAMS -> p.beams().isEmpty() && !p.isOnBlocks();
                        case POSTS -> p.posts().isEmpty() && !p.isOnBlocks();
                        case FOOTINGS -> p.footings().isEmpty();
                        default -> false;
                    };
            if (isAbsent) {
                results.add(Result.undetermined(
                        p,
                        "",
                        "The submission describes no " + kind.word() + " of " + p.label() + ".",
                        List.of(new Need(p.pointer().child(kind.word()), "the " + kind.word() + " of " + p.label()))));
            }
        }
        return results;
    }

    private static Finding finding(Provision provision, List<Result> group) {
        Result worst = group.get(0);
        for (Result r : group) {
            if (r.isWorseThan(worst)) {
                worst = r;
            }
        }
        List<Subject> also = new ArrayList<>();
        Set<Need> needs = new TreeSet<>();
        Set<String> assumptions = new LinkedHashSet<>();
        Set<TakenRow> rows = new LinkedHashSet<>(worst.rows());
        for (Result r : group) {
            if (r != worst) {
                also.add(r.subject());
            }
            needs.addAll(r.needs());
            assumptions.addAll(r.assumptions());
            rows.addAll(r.rows());
        }
        return new Finding(
                provision,
                worst.subject(),
                List.copyOf(also),
                worst.determination(),
                worst.quantity(),
                worst.found(),
                worst.sense(),
                worst.allowed(),
                worst.utilisation(),
                worst.sentence(),
                worst.working(),
                List.copyOf(needs),
                List.copyOf(assumptions),
                List.copyOf(rows),
                worst.calculated(),
                worst.mayCount());
    }
}
