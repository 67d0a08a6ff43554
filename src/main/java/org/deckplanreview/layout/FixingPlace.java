package org.deckplanreview.layout;

import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Fixing;
import org.deckplanreview.submission.SubjectKind;

/**
 * Metal fixings of one kind.
 *
 *
 */
public record FixingPlace(Pointer pointer, String label, Fixing fixing) implements Subject {
    @Override
    public SubjectKind kind() {
        return SubjectKind.FIXINGS;
    }

    @Override
    public String alikeKey() {
        return fixing.id();
    }

    @Override
    public int platformIndex() {
        return 0;
    }
}
