package org.deckplanreview.vocabulary;

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

    /** Whether a number complies, for the four senses that compare numbers. */
    public boolean holds(double found, double allowed) {
        return switch (this) {
            case AT_LEAST -> found >= allowed;
            case AT_MOST -> found <= allowed;
            case OVER -> found > allowed;
            case UNDER -> found < allowed;
            case EQUAL, ONE_OF -> found == allowed;
        };
    }
}
