package org.deckplanreview.quantity;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.kernel.Worded;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;

/** The ways in which a quantity comes out of the submission or the layout. Lengths are in mm. */
public final class Observations {

    private Observations() {}

    /** A number with one line of working that says where it comes from, so that a reader and a remedy find it. */
    public static Observation number(
            String symbol, double value, MeasureUnit unit, String meaning, String remark, Pointer... from) {
        Sheet working = Sheet.blank();
        working.given(symbol, value, unit, meaning, "", from);
        return new Observation.Found(Measure.of(value, unit), remark, working.steps());
    }

    /** A calculated number with its working. */
    public static Observation found(double value, MeasureUnit unit, Sheet working) {
        return new Observation.Found(Measure.of(value, unit), "", working.steps());
    }

    public static Observation length(Optional<Length> given, String symbol, String meaning, Pointer pointer) {
        return given.map(l -> number(symbol, l.mm(), MeasureUnit.MILLIMETRE, meaning, "", pointer))
                .orElseGet(() -> missing(pointer, meaning + ", a length"));
    }

    public static Observation measure(
            Optional<Measure> given, String symbol, MeasureUnit unit, String meaning, Pointer pointer) {
        return given.map(m -> number(symbol, m.in(unit), unit, meaning, "", pointer))
                .orElseGet(() -> missing(pointer, meaning + ", in " + unit.symbol()));
    }

    public static Observation derived(Derived<Double> value, String symbol, MeasureUnit unit, String meaning) {
        return value instanceof Derived.Known<Double> known
                ? number(symbol, known.value(), unit, meaning, "")
                : missing(value.needs());
    }

    public static Observation word(Optional<? extends Worded> given, Pointer pointer, String what) {
        return given.map(w -> word(w, "")).orElseGet(() -> missing(pointer, what));
    }

    public static Observation word(Worded word, String remark) {
        return new Observation.Found(new Word(word.word()), remark, List.of());
    }

    public static Observation flag(Optional<Boolean> given, Pointer pointer, String what) {
        return given.map(yes -> flag(yes, "")).orElseGet(() -> missing(pointer, what));
    }

    public static Observation flag(boolean yes, String remark) {
        return new Observation.Found(new Flag(yes), remark, List.of());
    }

    public static Observation missing(Pointer pointer, String what) {
        return missing(List.of(new Need(pointer, what)));
    }

    public static Observation missing(List<Need> needs) {
        return new Observation.Missing(needs);
    }

    public static Observation notApplicable(String reason) {
        return new Observation.NotApplicable(reason);
    }
}
