package org.deckplanreview.layout;

import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.SubjectKind;

/** The deck as a whole. */
public record Deck() implements Subject {

    @Override
    public SubjectKind kind() {
        return SubjectKind.DECK;
    }

    @Override
    public Pointer pointer() {
        return Pointer.ROOT;
    }

    @Override
    public String label() {
        return "the deck";
    }

    @Override
    public String alikeKey() {
        return "";
    }

    @Override
    public int platformIndex() {
        return 0;
    }
}
