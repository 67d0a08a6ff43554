package org.deckplanreview.vocabulary;

import java.math.RoundingMode;
import org.deckplanreview.measure.Numbers;

/** Which side of a value complies. */
public enum Sense {
    AT_LEAST("atLeast", "at least"),
    AT_MOST("atMost", "at most"),
    OVER("over", "more than"),
    UNDER("under", "less than"),
    EQUAL("is", "exactly"),
    ONE_OF("oneOf", "one of");

    private final String word;
    private final String phrase;

    Sense(String word, String phrase) {
        this.word = word;
        this.phrase = phrase;
    }

    /** As rulesets write it. */
    public String word() {
        return word;
    }

    /** As sentences write it. */
    public String phrase() {
        return phrase;
    }

    /** How a limit is rounded so that whoever keeps to the rounded one complies. */
    public RoundingMode safe() {
        return switch (this) {
            case AT_LEAST, OVER -> RoundingMode.CEILING;
            case AT_MOST, UNDER -> RoundingMode.FLOOR;
            case EQUAL, ONE_OF -> RoundingMode.HALF_UP;
        };
    }

    /** Whether a number complies; two that {@link Numbers#areSame are the same} count as equal. */
    public boolean holds(double found, double allowed) {
        boolean same = Numbers.areSame(found, allowed);
        return switch (this) {
            case AT_LEAST -> same || found > allowed;
            case AT_MOST -> same || found < allowed;
            case OVER -> !same && found > allowed;
            case UNDER -> !same && found < allowed;
            case EQUAL, ONE_OF -> same;
        };
    }
}
