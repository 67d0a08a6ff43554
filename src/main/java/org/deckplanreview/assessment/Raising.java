package org.deckplanreview.assessment;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.method.Observation;
import org.deckplanreview.ruleset.TableKey;
import org.deckplanreview.vocabulary.Sense;

/** Raises keys in proportion to the load where the subject carries more than a table assumes. */
final class Raising {
    private static final Formula RAISED = Formula.of("x_q = x * q / q_0", MeasureUnit.MILLIMETRE, "");

    private final Function<String, Observation> observing;
    private final Trail trail;
    private Optional<Overload> overload = Optional.empty();

    Raising(Function<String, Observation> observing, Trail trail) {
        this.observing = observing;
        this.trail = trail;
    }

    /** Empty where no key was raised. */
    Optional<Overload> overload() {
        return overload;
    }

    /** The value as it enters the table; empty where the loads cannot be compared, which is noted. */
    Optional<Measure> raise(TableKey.Direct key, TableKey.Raise raise, Measure found) {
        Observation load = observing.apply(raise.quantity());
        Observation by = observing.apply(raise.key().quantity());
        for (Observation seen : List.of(load, by)) {
            if (seen instanceof Observation.NotApplicable n) {
                trail.goBeyond("The table is for a load, which cannot be compared: " + n.reason());
                return Optional.empty();
            }
            if (seen instanceof Observation.Missing m) {
                trail.need(m.needs());
            }
        }
        if (!(load instanceof Observation.Found carried) || !(by instanceof Observation.Found column)) {
            return Optional.of(found);
        }
        Optional<Measure> assumed = TableRows.matching(
                        raise.key(), column.value(), raise.assumed().rows())
                .stream()
                .map(row -> (Measure) row.cells().get(raise.column()))
                .findFirst();
        if (assumed.isEmpty()) {
            trail.goBeyond("There is no assumed load for the " + raise.key().quantity() + " "
                    + Phrases.of(column.value(), trail.units()) + " in "
                    + raise.assumed().source());
            return Optional.empty();
        }
        Measure carriedLoad = Measure.of(
                ((Measure) carried.value()).in(assumed.get().unit()),
                assumed.get().unit());
        double ratio = carriedLoad.value() / assumed.get().value();
        if (Sense.AT_MOST.holds(ratio, raise.from().value())) {
            return Optional.of(found);
        }
        trail.add(carried.working());
        overload = Optional.of(new Overload(
                ratio,
                "What is carried comes to " + Phrases.of(carriedLoad, trail.units()) + ", more than the "
                        + Phrases.of(assumed.get()) + " that the table assumes."));
        return Optional.of(raised(key, raise, found, carriedLoad, assumed.get()));
    }

    private Measure raised(TableKey.Direct key, TableKey.Raise raise, Measure found, Measure carried, Measure assumed) {
        Sheet sheet = Sheet.blank();
        sheet.given("q", carried.value(), carried.unit(), raise.quantity(), "");
        sheet.given(
                "q_0",
                assumed.value(),
                assumed.unit(),
                "load that the table assumes",
                raise.assumed().source());
        sheet.given("x", found.value(), found.unit(), key.quantity(), "");
        sheet.calculate(RAISED.in(found.unit()));
        trail.add(sheet);
        return sheet.measure("x_q");
    }
}
