package org.deckplanreview.comparison;

import java.io.IOException;
import org.deckplanreview.review.InOrder;
import org.deckplanreview.review.SubmissionSource;

/** Compares many submissions one by one and adds them up, in memory that does not grow with their number. */
public final class CorpusComparison {
    private final SubmissionComparer comparer;
    private final InOrder inOrder;

    public CorpusComparison(SubmissionComparer comparer, InOrder inOrder) {
        this.comparer = comparer;
        this.inOrder = inOrder;
    }

    /** One submission with what became of it, for whoever writes it down. May be called on any thread. */
    public interface Writing<W> {
        W written(long number, String name, ComparisonResult result);
    }

    /** @return what all of them come to, after the last was taken */
    public <W> ComparisonSummary run(SubmissionSource submissions, Writing<W> writing, InOrder.Taker<? super W> taker)
            throws IOException {
        record Done<W>(long number, String name, ComparisonResult result, W written) {}
        Tallying tallying = new Tallying(comparer.differences());
        inOrder.run(
                submissions,
                received -> {
                    ComparisonResult result = result(received);
                    return new Done<>(
                            received.number(),
                            received.name(),
                            result,
                            writing.written(received.number(), received.name(), result));
                },
                (Done<W> done) -> {
                    tallying.add(done.number(), done.name(), done.result());
                    taker.take(done.written());
                });
        return tallying.summary();
    }

    private ComparisonResult result(SubmissionSource.Received received) {
        try {
            return comparer.compare(received.bytes());
        } catch (RuntimeException e) {
            return new ComparisonResult.Failed(e);
        }
    }
}
