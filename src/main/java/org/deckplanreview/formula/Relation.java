package org.deckplanreview.formula;

import java.util.Arrays;
import java.util.Optional;
import org.deckplanreview.measure.Numbers;

/** How the two sides of a condition compare; two numbers that {@link Numbers#areSame are the same} count as equal. */
public enum Relation {
    AT_MOST("<=") {
        @Override
        boolean holds(double left, double right) {
            return left < right || Numbers.areSame(left, right);
        }
    },
    AT_LEAST(">=") {
        @Override
        boolean holds(double left, double right) {
            return left > right || Numbers.areSame(left, right);
        }
    },
    UNDER("<") {
        @Override
        boolean holds(double left, double right) {
            return left < right && !Numbers.areSame(left, right);
        }
    },
    OVER(">") {
        @Override
        boolean holds(double left, double right) {
            return left > right && !Numbers.areSame(left, right);
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
