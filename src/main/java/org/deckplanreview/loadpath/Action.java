package org.deckplanreview.loadpath;

/** Kinds of action, kept apart all the way down so that any combination can be made of them. */
public enum Action {
    /**
     * Self-weight, finishes, and heavy items that always stand there. The weight of stairs and guards too, which is left out
     * where it relieves.
     */
    PERMANENT,
    /** The uniform imposed load, that of stairs, and heavy items that do not always stand there. Arranged span by span, worst case. */
    IMPOSED,
    /** One concentrated imposed load at the worst place; an alternative to IMPOSED, not added to it. */
    CONCENTRATED,
    /** Snow, over the whole deck or, where it would relieve, not there. */
    SNOW
}
