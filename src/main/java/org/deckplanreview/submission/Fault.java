package org.deckplanreview.submission;

import java.util.Comparator;
import org.deckplanreview.kernel.Pointer;

/**
 * One fault of a submission.
 *
 * @param pointer the member that is wrong; a missing member is pointed at as if it were there
 * @param detail what was found
 * @param accepted what would be right
 */
public record Fault(Pointer pointer, String detail, String accepted) implements Comparable<Fault> {

    private static final Comparator<Fault> ORDER =
            Comparator.comparing(Fault::pointer).thenComparing(Fault::detail).thenComparing(Fault::accepted);

    @Override
    public int compareTo(Fault other) {
        return ORDER.compare(this, other);
    }
}
