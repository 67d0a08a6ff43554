package org.deckplanreview.formula;

import java.util.Arrays;
import java.util.Optional;

/** How the two sides of a condition compare. */
public enum Relation {
    AT_MOST("<=") {
        @Override
        boolean holds(double left, double right) {
            return left <= right;
        }
    },
    AT_LEAST(">=") {
        @Override
        boolean holds(double left, double right) {
            return left >= right;
        }
    },
    UNDER("<") {
        @Override
        boolean holds(double left, double right) {
            return left < right;
        }
    },
    OVER(">") {
        @Override
        boolean holds(double left, double right) {
            return left > right;
        }
    };

    private final String sign;

    Relation(String sign) {
        this.sign = sign;
    }

    abstract boolean holds(double left, double right);

    String sign() {
        return sign;
    }

    static Optional<Relation> find(String sign) {
        return Arrays.stream(values()).filter(r -> r.sign.equals(sign)).findFirst();
    }
}
