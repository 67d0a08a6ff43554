package org.deckplanreview.review;

import java.util.List;
import org.deckplanreview.ruleset.Edition;

/** Reviews submissions. Pure: the same bytes give the same result. */
public interface Reviewer {

    /** Under the edition that the submission names, or that is in force on its day. */
    ReviewResult review(byte[] bytes);

    /** Under this edition, whatever the submission names; never {@link ReviewResult.UnknownRuleset}. */
    default ReviewResult review(byte[] bytes, Edition edition) {
        return review(bytes, List.of(edition)).get(0);
    }

    /**
     * Under each of these editions, as {@link #review(byte[], Edition)} has it, in their order; the submission is read once.
     *
     * @param editions one or more
     */
    List<ReviewResult> review(byte[] bytes, List<Edition> editions);
}
