package org.deckplanreview.layout;

import org.deckplanreview.submission.Timber;

/** A subject that is made of one stock of timber. */
public sealed interface TimberPiece extends Subject permits BoardField, Member, LedgerLine, PostPlace, BraceLine {

    Timber timber();

    /** Whether it is of sawn timber, so that its strength, treatment and durability are those of its stock. */
    default boolean isSawn() {
        return true;
    }
}
