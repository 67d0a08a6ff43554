package org.deckplanreview.ruleset;

import org.deckplanreview.kernel.Worded;

/** How strict something is, held against what stood there before. */
public enum Strictness implements Worded {
    /** Nothing is permitted or refused that was not before. */
    SAME("the same"),
    /** Refuses what was permitted, and permits nothing that was refused. */
    TIGHTER("tighter"),
    /** Permits what was refused, and refuses nothing that was permitted. */
    LOOSER("looser"),
    /** Tighter for some, looser for others. */
    BOTH("tighter and looser"),
    /** Not to be told from the values alone, for example after a change of method. */
    UNKNOWN("not to be told");

    private final String word;

    Strictness(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** Of two changes that are made together. */
    public Strictness and(Strictness other) {
        if (this == other || other == SAME) {
            return this;
        }
        if (this == SAME) {
            return other;
        }
        return this == UNKNOWN || other == UNKNOWN ? UNKNOWN : BOTH;
    }

    /** Of the change back. */
    public Strictness reversed() {
        return switch (this) {
            case TIGHTER -> LOOSER;
            case LOOSER -> TIGHTER;
            default -> this;
        };
    }

    /** Whether it permits what was refused, or cannot be shown not to. */
    public boolean mayRelax() {
        return this == LOOSER || this == BOTH || this == UNKNOWN;
    }

    /**
     * Of what is permitted.
     *
     * @param narrower whether all that is permitted now was permitted before
     * @param wider whether all that was permitted before is permitted now
     */
    static Strictness of(boolean narrower, boolean wider) {
        if (narrower) {
            return wider ? SAME : TIGHTER;
        }
        return wider ? LOOSER : BOTH;
    }
}
