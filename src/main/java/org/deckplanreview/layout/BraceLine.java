package org.deckplanreview.layout;

import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Brace;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/**
 * A brace between a post and its beam.
 *
 * @param lengthMm between its two ends, along the brace
 * @param angleDegrees between the brace and the horizontal
 */
public record BraceLine(
        int platformIndex,
        Pointer pointer,
        String label,
        Brace brace,
        Timber timber,
        double lengthMm,
        double angleDegrees)
        implements TimberPiece {
    @Override
    public SubjectKind kind() {
        return SubjectKind.BRACES;
    }

    @Override
    public String alikeKey() {
        return platformIndex + " " + timber.id();
    }
}
