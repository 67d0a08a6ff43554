package org.deckplanreview.comparison;

import org.deckplanreview.review.ReviewResult;

/** What became of one submission. */
public sealed interface ComparisonResult {
    record Compared(SubmissionComparison comparison) implements ComparisonResult {}

    /** @param why not {@link ReviewResult.Reviewed} */
    record Refused(ReviewResult why) implements ComparisonResult {}

    /** The service failed at it; the others are compared none the less. */
    record Failed(RuntimeException failure) implements ComparisonResult {}

    /** More bytes than a submission may have. */
    record TooLarge() implements ComparisonResult {}
}
