package org.deckplanreview.review;

import org.deckplanreview.ruleset.Edition;

/** Reviews submissions. Pure: the same bytes give the same result. */
public interface Reviewer {

    /** Under the edition that the submission names, or that is in force on its day. */
    ReviewResult review(byte[] bytes);

    /** Under this edition, whatever the submission names; never {@link ReviewResult.UnknownRuleset}. */
    ReviewResult review(byte[] bytes, Edition edition);
}
