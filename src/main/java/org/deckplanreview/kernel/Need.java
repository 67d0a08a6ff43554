package org.deckplanreview.kernel;

/**
 * Something that the submission leaves out and that a provision needs.
 *
 * @param pointer the member to give
 * @param what what it is, in the trade's words, with its unit where it has one
 */
public record Need(Pointer pointer, String what) implements Comparable<Need> {
    @Override
    public int compareTo(Need other) {
        int c = pointer.compareTo(other.pointer);
        return c != 0 ? c : what.compareTo(other.what);
    }
}
