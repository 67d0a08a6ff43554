package org.deckplanreview.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.assessment.Calculated;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.assessment.TakenRow;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Deck;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Value;
import org.deckplanreview.ruleset.Citation;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.ruleset.Condition;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Obligation;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.ruleset.Source;
import org.deckplanreview.ruleset.Standing;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.Sense;

/** A finding of a provision on the first edge of the first platform, complying unless told otherwise. */
public final class FindingBuilder {
    private static final LocalDate CONFIRMED_ON = LocalDate.of(2026, 11, 25);

    private final String provision;
    private int order;
    private String title = "A requirement";
    private Concern concern = Concern.GUARDING;
    private Obligation obligation = Obligation.SHALL;
    private Confirmation confirmation = Confirmation.PAGE;
    private Rule rule = new Rule.Limit("guard height", Sense.AT_LEAST, List.of());
    private String advice = "Raise the guard.";
    private Optional<String> caution = Optional.empty();
    private Optional<String> referral = Optional.empty();
    private Subject subject = edge("edge 1 of the terrace", "/platforms/0/edges/0");
    private final List<Subject> also = new ArrayList<>();
    private Determination determination = Determination.COMPLIES;
    private Optional<Value> found = Optional.empty();
    private Optional<Sense> sense = Optional.empty();
    private List<Value> allowed = List.of();
    private OptionalDouble utilisation = OptionalDouble.empty();
    private String sentence = "The guard is as high as it must be.";
    private List<WorkingStep> working = List.of();
    private List<Need> needs = List.of();
    private List<TakenRow> rows = List.of();
    private Optional<Calculated> calculated = Optional.empty();
    private List<Value> mayCount = List.of();

    private FindingBuilder(String provision) {
        this.provision = provision;
    }

    public static FindingBuilder finding(String provision) {
        return new FindingBuilder(provision);
    }

    public static Subject edge(String label, String pointer) {
        PlanLine line = new PlanLine(new PlanPoint(0, 0), new PlanPoint(3000, 0));
        return new EdgeRun(
                0,
                Pointer.of(pointer),
                label,
                line,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Derived.missing(Pointer.of("/site/groundLevels"), "the ground's level"));
    }

    public FindingBuilder order(int place) {
        order = place;
        return this;
    }

    public FindingBuilder title(String text) {
        title = text;
        return this;
    }

    public FindingBuilder concern(Concern of) {
        concern = of;
        return this;
    }

    public FindingBuilder should() {
        obligation = Obligation.SHOULD;
        return this;
    }

    public FindingBuilder fromMemory() {
        confirmation = Confirmation.MEMORY;
        return this;
    }

    public FindingBuilder rule(Rule asked) {
        rule = asked;
        return this;
    }

    public FindingBuilder advice(String text) {
        advice = text;
        return this;
    }

    public FindingBuilder caution(String text) {
        caution = Optional.of(text);
        return this;
    }

    public FindingBuilder referral(String text) {
        referral = Optional.of(text);
        return this;
    }

    public FindingBuilder on(String label, String pointer) {
        subject = edge(label, pointer);
        return this;
    }

    public FindingBuilder onTheDeck() {
        subject = new Deck();
        return this;
    }

    public FindingBuilder also(String label, String pointer) {
        also.add(edge(label, pointer));
        return this;
    }

    public FindingBuilder doesNotComply() {
        determination = Determination.DOES_NOT_COMPLY;
        return this;
    }

    public FindingBuilder undetermined(Need... wanting) {
        determination = Determination.UNDETERMINED;
        needs = List.of(wanting);
        return this;
    }

    public FindingBuilder notApplicable() {
        determination = Determination.NOT_APPLICABLE;
        return this;
    }

    public FindingBuilder compares(Value value, Sense with, Value... limits) {
        found = Optional.of(value);
        sense = Optional.of(with);
        allowed = List.of(limits);
        mayCount = allowed;
        return this;
    }

    public FindingBuilder mayCount(Value... values) {
        mayCount = List.of(values);
        return this;
    }

    public FindingBuilder utilisation(double value) {
        utilisation = OptionalDouble.of(value);
        return this;
    }

    public FindingBuilder sentence(String text) {
        sentence = text;
        return this;
    }

    public FindingBuilder working(List<WorkingStep> steps) {
        working = steps;
        return this;
    }

    public FindingBuilder takes(TakenRow... taken) {
        rows = List.of(taken);
        return this;
    }

    /** Beyond the provision, with what another one calculates in its place. */
    public FindingBuilder calculated(FindingBuilder by, double utilisation) {
        Determination of = utilisation > 1 ? Determination.DOES_NOT_COMPLY : Determination.COMPLIES;
        calculated =
                Optional.of(new Calculated(by.provision(), of, OptionalDouble.of(utilisation), "Calculated instead."));
        return this;
    }

    private Provision provision() {
        Source source =
                new Source("guarding", "Protection from falling", "2013", "The ministry", Standing.STATUTORY_GUIDANCE);
        return new Provision(
                order,
                provision,
                title,
                concern,
                obligation,
                new Citation(source, "Diagram 3.1", confirmation, CONFIRMED_ON),
                SubjectKind.EDGES,
                Condition.ALWAYS,
                List.of(),
                rule,
                List.of(),
                advice,
                caution,
                referral,
                List.of("shire/2024.yaml"),
                "shire/2024.yaml");
    }

    public Finding build() {
        return new Finding(
                provision(),
                subject,
                also,
                determination,
                "guard height",
                found,
                sense,
                allowed,
                utilisation,
                sentence,
                working,
                needs,
                List.of(),
                rows,
                calculated,
                mayCount);
    }
}
