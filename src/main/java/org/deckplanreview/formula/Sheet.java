package org.deckplanreview.formula;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.UnitSystem;

/**
 * A page of calculation: values are entered, formulas calculated from what stands on it, in the order in which a reader follows
 * them. A sheet that {@link #on goes on} from another one begins with all of its steps, so that what several cases share is
 * calculated once.
 */
public final class Sheet {
    private final List<Sheet> before;
    private final List<WorkingStep> own = new ArrayList<>();

    private Sheet(List<Sheet> before) {
        this.before = before;
    }

    public static Sheet blank() {
        return new Sheet(List.of());
    }

    /** One that goes on from what stands on others, which are shown one after the other, each of them once. */
    public static Sheet on(Sheet... before) {
        return new Sheet(List.of(before));
    }

    /**
     * Enters a value from the submission or the ruleset. Returns it.
     *
     * @param source clause or table that it comes from; blank for what the submission states
     */
    public double given(String symbol, double value, MeasureUnit unit, String meaning, String source, Pointer... from) {
        return given(symbol, value, unit, () -> meaning, source, from);
    }

    /** Enters a value whose meaning is put into words only for a reader. Returns it. */
    public double given(
            String symbol, double value, MeasureUnit unit, Supplier<String> meaning, String source, Pointer... from) {
        own.add(new WorkingStep.Given(symbol, value, unit, meaning, source, List.of(from)));
        return value;
    }

    /**
     * Calculates a formula from what stands on the sheet. Returns what it comes to.
     *
     * @throws IllegalArgumentException if the formula uses a symbol that is not on the sheet, or its units do not fit
     */
    public double calculate(Formula formula) {
        List<Symbol> symbols = formula.symbols();
        double[] values = new double[symbols.size()];
        MeasureUnit[] units = new MeasureUnit[values.length];
        for (int i = 0; i < values.length; i++) {
            WorkingStep step = find(symbols.get(i).toString());
            if (step == null) {
                throw new IllegalArgumentException(
                        "'" + symbols.get(i) + "' in '" + formula + "' was not given before");
            }
            values[i] = step.value();
            units[i] = step.unit();
        }
        WorkingStep.Calculated result = new WorkingStep.Calculated(formula, values, units);
        own.add(result);
        return result.value();
    }

    /** Calculates a formula from what stands on the sheet without writing it there, for what a reader is shown elsewhere. */
    public double aside(Formula formula) {
        return Sheet.on(this).calculate(formula);
    }

    /**
     * What a symbol stands for, in its own unit.
     *
     * @throws IllegalArgumentException if it is not on the sheet
     */
    public double value(String symbol) {
        return step(symbol).value();
    }

    private WorkingStep step(String symbol) {
        WorkingStep step = find(symbol);
        if (step == null) {
            throw new IllegalArgumentException("'" + symbol + "' was not given before");
        }
        return step;
    }

    /**
     * What a symbol stands for, with its unit.
     *
     * @throws IllegalArgumentException if it is not on the sheet, or no finite number
     */
    public Measure measure(String symbol) {
        WorkingStep step = step(symbol);
        return Measure.of(step.value(), step.unit());
    }

    /** What a formula comes to, without writing it on the sheet. */
    public Measure measure(Formula formula) {
        return Measure.of(aside(formula), formula.unit());
    }

    /** The last step of that symbol; null for none, since this is asked thousands of times a review. */
    private WorkingStep find(String symbol) {
        for (int i = own.size() - 1; i >= 0; i--) {
            if (own.get(i).symbol().equals(symbol)) {
                return own.get(i);
            }
        }
        for (int i = before.size() - 1; i >= 0; i--) {
            WorkingStep step = before.get(i).find(symbol);
            if (step != null) {
                return step;
            }
        }
        return null;
    }

    /** The same calculation in the units of a system: what was given is converted, and calculated anew. */
    public Sheet in(UnitSystem system) {
        Sheet sheet = Sheet.blank();
        for (WorkingStep step : steps()) {
            MeasureUnit unit = system.unit(step.unit());
            if (step instanceof WorkingStep.Calculated c) {
                sheet.calculate(c.formula().in(unit));
            } else {
                sheet.own.add(new WorkingStep.Given(
                        step.symbol(),
                        step.unit().convert(step.value(), unit),
                        unit,
                        step::meaning,
                        step.equation(),
                        step.from()));
            }
        }
        return sheet;
    }

    /** The steps of a sheet that is put together when somebody reads it. */
    public static List<WorkingStep> late(Supplier<Sheet> sheet) {
        return new AbstractList<>() {
            private List<WorkingStep> steps;

            private List<WorkingStep> read() {
                if (steps == null) {
                    steps = sheet.get().steps();
                }
                return steps;
            }

            @Override
            public WorkingStep get(int index) {
                return read().get(index);
            }

            @Override
            public int size() {
                return read().size();
            }
        };
    }

    /** All steps in order; a value that stands there already is not given again. */
    public List<WorkingStep> steps() {
        List<WorkingStep> all = new ArrayList<>();
        addTo(all, new ArrayList<>());
        return List.copyOf(all);
    }

    private void addTo(List<WorkingStep> all, List<Sheet> shown) {
        for (Sheet sheet : before) {
            if (shown.stream().noneMatch(s -> s == sheet)) {
                sheet.addTo(all, shown);
            }
        }
        own.stream().filter(s -> !stands(s, all)).forEach(all::add);
        shown.add(this);
    }

    /** Whether the same value of the same symbol is what a reader finds there last. */
    private static boolean stands(WorkingStep step, List<WorkingStep> in) {
        if (step instanceof WorkingStep.Given) {
            for (int i = in.size() - 1; i >= 0; i--) {
                if (in.get(i).symbol().equals(step.symbol())) {
                    return in.get(i).unit() == step.unit() && in.get(i).value() == step.value();
                }
            }
        }
        return false;
    }
}
