package org.deckplanreview.submission;

import java.util.List;
import org.deckplanreview.kernel.Pointer;

/**
 * A member that the submission gives and that a review did not read.
 *
 * @param meaning what it is, in the words of the schema
 * @param also the same member of other parts, in the order of pointers
 */
public record NotReviewed(String meaning, Pointer pointer, List<Pointer> also) {
    public NotReviewed {
        also = List.copyOf(also);
    }
}
