package org.deckplanreview.generator;

import java.util.List;

/** How carefully a deck was drawn. */
enum Care {
    CLEAN(0, 0),
    USUAL(0.05, 0.03),
    HURRIED(0.2, 0.12),
    BROKEN(0.5, 0.3);

    static final List<Care> ALL = List.of(values());

    private final double slips;
    private final double omissions;

    Care(double slips, double omissions) {
        this.slips = slips;
        this.omissions = omissions;
    }

    /** Whether this choice is a bad one. */
    boolean slips(Chance chance) {
        return chance.in(slips);
    }

    /** Whether this member is left out. */
    boolean omits(Chance chance) {
        return chance.in(omissions);
    }
}
