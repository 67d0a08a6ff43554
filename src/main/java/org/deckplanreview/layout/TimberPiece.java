package org.deckplanreview.layout;

import org.deckplanreview.submission.Timber;

/** A subject that is made of one stock of timber. */
public sealed interface TimberPiece extends Subject permits BoardField, Member, LedgerLine, PostPlace, BraceLine {

    Timber timber();
}
