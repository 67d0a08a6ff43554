package org.deckplanreview.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonValue;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.formula.Expression;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Obligation;
import org.deckplanreview.ruleset.Standing;
import org.deckplanreview.schedule.SiteSchedule;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.NotReviewed;
import org.deckplanreview.vocabulary.Sense;

/**
 * The report in the shape of format 1, without its provenance. What many findings share stands once in a list, and they name
 * it by its place there.
 *
 * @param subjects what findings speak of
 * @param sources documents, as they were confirmed
 * @param values where the values come from that calculations and look-ups use
 * @param steps of calculations
 */
record ReportDocument(
        String notice,
        String reference,
        Optional<String> title,
        LocalDate reviewOn,
        Optional<LengthUnit> units,
        Determination outcome,
        Counts counts,
        ReportedEdition edition,
        List<String> cautions,
        List<String> referrals,
        List<Entry> findings,
        List<NotApplicable> notApplicable,
        List<NotReviewed> givenNotReviewed,
        List<String> assumptions,
        List<RecalledValue> recalledFromMemory,
        Optional<SiteSchedule> schedule,
        List<NumberedSubject> subjects,
        List<Cited> sources,
        List<ReportedCitation.SetBy> values,
        List<Step> steps) {

    /**
     * A finding that applies.
     *
     * @param subject its number
     * @param also numbers of those that are alike and no worse
     * @param source number of the document
     * @param values numbers of those that were used
     * @param working numbers of the steps
     */
    record Entry(
            String provision,
            String title,
            Concern concern,
            Obligation obligation,
            int subject,
            List<Range> also,
            Determination determination,
            Optional<String> quantity,
            Optional<Value> found,
            Optional<Limit> allowed,
            Optional<BigDecimal> utilisation,
            Optional<ReportedCalculation> calculated,
            String sentence,
            Optional<String> advice,
            List<Need> needs,
            int source,
            Optional<String> clause,
            List<Range> values,
            List<Range> working) {}

    /** @param unit of a number that is no ratio */
    record Value(ShownValue value, Optional<MeasureUnit> unit, Optional<String> text) {
        static Optional<Value> of(Found found) {
            return found.value().map(v -> new Value(v, unlessRatio(found.unit()), found.text()));
        }
    }

    /** Named by the sense: what is compared is one value, or one of several. */
    record Limit(@JsonValue Map<String, Object> members) {
        static Limit of(Allowed allowed) {
            Map<String, Object> members = new LinkedHashMap<>();
            members.put(
                    allowed.sense().word(),
                    allowed.sense() == Sense.ONE_OF
                            ? allowed.values()
                            : allowed.values().get(0));
            unlessRatio(allowed.unit()).ifPresent(u -> members.put("unit", u));
            allowed.text().ifPresent(t -> members.put("text", t));
            allowed.asWritten().ifPresent(t -> members.put("asWritten", t));
            return new Limit(members);
        }
    }

    /** Provisions that do not apply to a subject for the same reason. */
    record NotApplicable(int subject, List<Range> also, String sentence, List<String> provisions) {}

    /** @param on the day on which what is cited was confirmed */
    record Cited(
            String title,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) String edition,
            String publisher,
            Standing standing,
            Confirmation confirmed,
            LocalDate on) {}

    /** @param unit of a number that is no ratio */
    record Step(
            String symbol,
            Optional<Expression> expression,
            Optional<BigDecimal> value,
            Optional<String> word,
            Optional<MeasureUnit> unit,
            Optional<String> text,
            Optional<String> equation,
            Optional<String> meaning,
            List<Pointer> from) {
        static Step of(ReportedStep step) {
            return new Step(
                    step.symbol(),
                    step.expression(),
                    step.value(),
                    step.word(),
                    unlessRatio(Optional.of(step.unit())),
                    step.text(),
                    step.equation(),
                    step.meaning(),
                    step.from());
        }
    }

    static ReportDocument of(Report report) {
        return new Writing().document(report);
    }

    private static Optional<MeasureUnit> unlessRatio(Optional<MeasureUnit> unit) {
        return unit.filter(u -> u != MeasureUnit.RATIO);
    }

    /** The lists that fill while findings are written. */
    private static final class Writing {
        private final Numbered<Cited> sources = new Numbered<>();
        private final Numbered<ReportedCitation.SetBy> values = new Numbered<>();
        private final Numbered<Step> steps = new Numbered<>();

        ReportDocument document(Report report) {
            List<Entry> findings = report.findings().stream()
                    .filter(ReportedFinding::applies)
                    .map(this::entry)
                    .toList();
            return new ReportDocument(
                    report.notice(),
                    report.reference(),
                    report.title(),
                    report.reviewOn(),
                    report.units(),
                    report.outcome(),
                    report.counts(),
                    report.edition(),
                    report.cautions(),
                    report.referrals(),
                    findings,
                    notApplicable(report),
                    report.givenNotReviewed(),
                    report.assumptions(),
                    report.recalledFromMemory(),
                    report.schedule(),
                    report.subjects(),
                    sources.all(),
                    values.all(),
                    steps.all());
        }

        private Entry entry(ReportedFinding finding) {
            ReportedCitation citation = finding.citation();
            return new Entry(
                    finding.provision(),
                    finding.title(),
                    finding.concern(),
                    finding.obligation(),
                    finding.subject().number(),
                    finding.subject().alsoNumbers(),
                    finding.determination(),
                    finding.found().map(Found::quantity),
                    finding.found().flatMap(Value::of),
                    finding.allowed().map(Limit::of),
                    finding.utilisation(),
                    finding.calculated(),
                    finding.sentence(),
                    finding.advice(),
                    finding.needs(),
                    sources.number(new Cited(
                            citation.source().title(),
                            citation.source().edition(),
                            citation.source().publisher(),
                            finding.standing(),
                            citation.confirmed().by(),
                            citation.confirmed().on())),
                    citation.clause(),
                    values.numbers(citation.setBy()),
                    steps.numbers(finding.working().stream().map(Step::of).toList()));
        }

        private static List<NotApplicable> notApplicable(Report report) {
            record Reason(int subject, List<Range> also, String sentence) {}
            Map<Reason, List<String>> provisions = new LinkedHashMap<>();
            report.findings().stream()
                    .filter(f -> !f.applies())
                    .forEach(f -> provisions
                            .computeIfAbsent(
                                    new Reason(f.subject().number(), f.subject().alsoNumbers(), f.sentence()),
                                    r -> new ArrayList<>())
                            .add(f.provision()));
            return provisions.entrySet().stream()
                    .map(e -> new NotApplicable(
                            e.getKey().subject(), e.getKey().also(), e.getKey().sentence(), e.getValue()))
                    .toList();
        }
    }

    /** A list in which each entry stands once, numbered from 0. */
    private static final class Numbered<T> {
        private final Map<T, Integer> numbers = new LinkedHashMap<>();

        int number(T entry) {
            return numbers.computeIfAbsent(entry, e -> numbers.size());
        }

        List<Range> numbers(List<T> entries) {
            return Range.of(entries.stream().map(this::number).toList());
        }

        List<T> all() {
            return List.copyOf(numbers.keySet());
        }
    }
}
