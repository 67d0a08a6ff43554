package org.deckplanreview.method.en1995;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;

/**
 * Computes what a working shows: numbers, + - * / ^, brackets, min, max, sqrt, sin, cos; numbers with units in SI by JSR 385. Knows nothing
 * of how it was made.
 */
public final class Arithmetic {

    private final String text;
    private int at;
    private boolean hasUnits;

    private Arithmetic(String text) {
        this.text = text.replace(" ", "");
    }

    public static double of(String text) {
        Arithmetic a = new Arithmetic(text);
        double value = a.sum();
        if (a.at != a.text.length()) {
            throw new IllegalArgumentException("'" + text + "' goes on after " + a.at);
        }
        return value;
    }

    /** The value of a step, in the step's own unit, from its text alone. */
    public static double of(WorkingStep step) {
        Arithmetic a = new Arithmetic(step.substituted().orElseThrow().text());
        double value = a.sum();
        return a.hasUnits ? value / inSi(step.unit()) : value;
    }

    @SuppressWarnings({"rawtypes", "unchecked"})
    private static double inSi(MeasureUnit unit) {
        javax.measure.Unit raw = unit.unit();
        return raw.getConverterTo(raw.getSystemUnit()).convert(1.0);
    }

    private double sum() {
        double value = product();
        while (true) {
            if (take("+")) {
                value += product();
            } else if (take("-")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (take("*")) {
                value *= power();
            } else if (take("/")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        double base = atom();
        return take("^") ? StrictMath.pow(base, power()) : base;
    }

    private double atom() {
        if (take("-")) {
            return -atom();
        }
        if (take("sqrt(")) {
            return Math.sqrt(arguments().get(0));
        }
        if (take("sin(")) {
            return StrictMath.sin(arguments().get(0));
        }
        if (take("cos(")) {
            return StrictMath.cos(arguments().get(0));
        }
        if (take("acos(")) {
            return StrictMath.acos(arguments().get(0));
        }
        if (take("min(")) {
            return arguments().stream().mapToDouble(d -> d).min().orElseThrow();
        }
        if (take("max(")) {
            return arguments().stream().mapToDouble(d -> d).max().orElseThrow();
        }
        if (take("(")) {
            return arguments().get(0);
        }
        if (take("π")) {
            return Math.PI;
        }
        int from = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        double number = Double.parseDouble(text.substring(from, at));
        return unit().map(u -> number * inSi(u)).orElse(number);
    }

    private Optional<MeasureUnit> unit() {
        Optional<MeasureUnit> unit = Arrays.stream(MeasureUnit.values())
                .filter(u ->
                        u != MeasureUnit.RATIO && !Phrases.unit(u).isEmpty() && text.startsWith(Phrases.unit(u), at))
                .max(Comparator.comparing(u -> Phrases.unit(u).length()));
        unit.ifPresent(u -> at += Phrases.unit(u).length());
        hasUnits |= unit.isPresent();
        return unit;
    }

    private List<Double> arguments() {
        List<Double> all = new ArrayList<>();
        do {
            all.add(sum());
        } while (take(","));
        if (!take(")")) {
            throw new IllegalArgumentException("'" + text + "' lacks a bracket at " + at);
        }
        return all;
    }

    private boolean take(String token) {
        if (text.startsWith(token, at)) {
            at += token.length();
            return true;
        }
        return false;
    }
}
