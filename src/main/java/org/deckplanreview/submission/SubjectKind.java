package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** The parts of a submission that provisions look at, as rulesets name them. */
public enum SubjectKind implements Worded {
    DECK("deck"),
    PLATFORMS("platforms"),
    BOARDS("boards"),
    JOISTS("joists"),
    BEAMS("beams"),
    LEDGERS("ledgers"),
    POSTS("posts"),
    FOOTINGS("footings"),
    EDGES("edges"),
    GUARDS("guards"),
    STAIRS("stairs"),
    BRACES("braces"),
    FIXINGS("fixings");

    private final String word;

    SubjectKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
