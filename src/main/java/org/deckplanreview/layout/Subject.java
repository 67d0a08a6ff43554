package org.deckplanreview.layout;

import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.SubjectKind;

/** A part of the deck that a provision can look at. */
public sealed interface Subject
        permits Deck, PlatformLayout, TimberPiece, FootingPlace, EdgeRun, GuardRun, StairRun, FixingPlace {

    SubjectKind kind();

    /** Where the submission describes it. */
    Pointer pointer();

    /** How people call it, for example {@code joist 3 of the terrace}. */
    String label();

    /** Subjects with the same key are alike: one finding speaks for all of them that have the same determination. */
    String alikeKey();

    /** Index of the platform it belongs to; 0 for what belongs to the whole deck. */
    int platformIndex();
}
