package org.deckplanreview.formula;

import java.util.Arrays;
import java.util.Optional;

/** Functions that formulas may call. */
public enum MathFunction {
    MIN("min"),
    MAX("max"),
    SQRT("sqrt"),
    SIN("sin"),
    COS("cos"),

    /** In radians. */
    ACOS("acos");

    private final String word;

    MathFunction(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    static Optional<MathFunction> find(String word) {
        return Arrays.stream(values()).filter(f -> f.word.equals(word)).findFirst();
    }
}
