package org.deckplanreview.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Value;
import org.deckplanreview.vocabulary.Sense;

/**
 * One provision on one subject, before those that are alike are drawn together.
 *
 * @param isBeyond whether the provision does not reach as far as this case
 * @param calculated what is calculated in its place where it does not
 * @param mayCount values of a limit's rows that count or, as far as is known, may count
 */
record Result(
        Subject subject,
        Determination determination,
        String quantity,
        Optional<Value> found,
        Optional<Sense> sense,
        List<Value> allowed,
        OptionalDouble utilisation,
        String sentence,
        List<WorkingStep> working,
        List<Need> needs,
        List<String> assumptions,
        List<TakenRow> rows,
        boolean isBeyond,
        Optional<Calculated> calculated,
        List<Value> mayCount) {

    Result(
            Subject subject,
            Determination determination,
            String quantity,
            Optional<Value> found,
            Optional<Sense> sense,
            List<Value> allowed,
            OptionalDouble utilisation,
            String sentence,
            List<WorkingStep> working,
            List<Need> needs,
            List<String> assumptions,
            List<TakenRow> rows) {
        this(
                subject,
                determination,
                quantity,
                found,
                sense,
                allowed,
                utilisation,
                sentence,
                working,
                needs,
                assumptions,
                rows,
                false,
                Optional.empty(),
                allowed);
    }

    static Result undetermined(Subject subject, String quantity, String sentence, List<Need> needs) {
        return new Result(
                subject,
                Determination.UNDETERMINED,
                quantity,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                OptionalDouble.empty(),
                sentence,
                List.of(),
                needs,
                List.of(),
                List.of());
    }

    static Result notApplicable(Subject subject, String quantity, String sentence) {
        return new Result(
                subject,
                Determination.NOT_APPLICABLE,
                quantity,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                OptionalDouble.empty(),
                sentence,
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    /** Undetermined for these needs too; what was measured stays. */
    Result becauseOf(List<Need> more) {
        return undetermined(more, "Whether this provision applies is not known.");
    }

    /** Undetermined while it is not known whether the provision reaches as far as this case. */
    Result uncovered(List<Need> more) {
        return undetermined(more, "Whether this provision covers the case is not known.");
    }

    private Result undetermined(List<Need> more, String why) {
        List<Need> all =
                Stream.concat(needs.stream(), more.stream()).distinct().sorted().toList();
        return new Result(
                subject,
                Determination.UNDETERMINED,
                quantity,
                found,
                sense,
                allowed,
                utilisation,
                sentence + " " + why,
                working,
                all,
                assumptions,
                rows,
                isBeyond,
                calculated,
                mayCount);
    }

    /** With the values that may count. */
    Result among(List<Value> values) {
        return new Result(
                subject,
                determination,
                quantity,
                found,
                sense,
                allowed,
                utilisation,
                sentence,
                working,
                needs,
                assumptions,
                rows,
                isBeyond,
                calculated,
                values);
    }

    /** With the rows that were taken from tables, how they were come to, and more to say. */
    Result from(TableEntry.Way way, String more) {
        return new Result(
                subject,
                determination,
                quantity,
                found,
                sense,
                allowed,
                utilisation,
                sentence + more,
                Stream.concat(working.stream(), way.working().stream()).toList(),
                needs,
                Stream.concat(assumptions.stream(), way.assumptions().stream()).toList(),
                way.rows(),
                isBeyond,
                calculated,
                mayCount);
    }

    /** The same, of a provision that does not reach as far as this case. */
    Result beyond() {
        return new Result(
                subject,
                determination,
                quantity,
                found,
                sense,
                allowed,
                utilisation,
                sentence,
                working,
                needs,
                assumptions,
                rows,
                true,
                calculated,
                mayCount);
    }

    /** With what is calculated in the provision's place. */
    Result with(Calculated instead) {
        return new Result(
                subject,
                determination,
                quantity,
                found,
                sense,
                allowed,
                utilisation,
                sentence + " " + instead.sentence(),
                working,
                needs,
                assumptions,
                rows,
                isBeyond,
                Optional.of(instead),
                mayCount);
    }

    /** Whether it is the one of two alike to be told of; equal ones stay in their order, whatever rounding makes of them. */
    boolean isWorseThan(Result other) {
        if (utilisation.isEmpty() && other.utilisation.isEmpty()) {
            return calculated
                    .filter(own -> other.calculated.isEmpty() || own.isWorseThan(other.calculated.get()))
                    .isPresent();
        }
        return isMore(utilisation, other.utilisation);
    }

    /** Whether a utilisation is larger; none is the least. */
    static boolean isMore(OptionalDouble utilisation, OptionalDouble than) {
        return utilisation.isPresent()
                && (than.isEmpty() || Sense.OVER.holds(utilisation.getAsDouble(), than.getAsDouble()));
    }
}
