package org.deckplanreview.method;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.function.Supplier;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.vocabulary.Sense;

/**
 * A case that was calculated on a sheet, which ends with the utilisation.
 *
 * @param before what a reader is shown first, such as the loads
 * @param found what the finding tells, of what stands on the sheet
 * @param remark where along the subject and under which combination
 */
public record SheetCase(
        Supplier<Sheet> before,
        Sheet sheet,
        double utilisation,
        Supplier<Measure> found,
        Sense sense,
        Supplier<Measure> allowed,
        Supplier<String> remark,
        Supplier<List<String>> assumptions)
        implements Case {

    private static final Measure WHOLE = Measure.of(1, RATIO);

    /** One symbol of the sheet against another. */
    public static SheetCase of(
            Sheet sheet,
            Formula utilisation,
            String found,
            Sense sense,
            String allowed,
            Supplier<String> remark,
            Supplier<List<String>> assumptions) {
        return new SheetCase(
                Sheet::blank,
                sheet,
                sheet.calculate(utilisation),
                () -> sheet.measure(found),
                sense,
                () -> sheet.measure(allowed),
                remark,
                assumptions);
    }

    /** A utilisation of several parts, which itself is what the finding tells. */
    public static SheetCase use(
            Sheet sheet, Formula utilisation, Supplier<String> remark, Supplier<List<String>> assumptions) {
        double use = sheet.calculate(utilisation);
        return new SheetCase(
                Sheet::blank,
                sheet,
                use,
                () -> Measure.of(use, RATIO),
                Sense.AT_MOST,
                () -> WHOLE,
                remark,
                assumptions);
    }

    /** The same case, whose working begins with what stands on another sheet. */
    public SheetCase after(Supplier<Sheet> first) {
        return new SheetCase(first, sheet, utilisation, found, sense, allowed, remark, assumptions);
    }

    @Override
    public Evaluation.Measured measured() {
        return new Evaluation.Measured(
                found.get(),
                sense,
                allowed.get(),
                utilisation,
                remark.get(),
                Sheet.late(() -> Sheet.on(before.get(), sheet)),
                assumptions.get());
    }
}
