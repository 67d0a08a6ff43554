package org.deckplanreview.ruleset;

/** What laying amendments over an edition comes to. */
public sealed interface Amending {

    /** @param edition as it holds with them */
    record Amended(Edition edition) implements Amending {}

    /**
     * One of them cannot be laid over it.
     *
     * @param index of that one among those named, from 0
     * @param accepted what would be accepted in its place
     */
    record Refused(int index, String detail, String accepted) implements Amending {}
}
