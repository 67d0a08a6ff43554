package org.deckplanreview.review;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Function;

/**
 * Works on many submissions at once and hands the results on in the order in which the submissions came. Holds no more than
 * a fixed number of them, however many there are.
 */
public final class InOrder {
    private final ExecutorService threads;
    private final int most;

    /** @param most submissions that are read and whose result is not yet handed on */
    public InOrder(ExecutorService threads, int most) {
        this.threads = threads;
        this.most = most;
    }

    /** What takes the results, one at a time and in order. */
    public interface Taker<R> {
        void take(R result) throws IOException;
    }

    /**
     * Returns when the last result was taken.
     *
     * @throws IOException from reading or taking; nothing is taken after it
     */
    public <R> void run(
            SubmissionSource submissions, Function<SubmissionSource.Received, R> work, Taker<? super R> taker)
            throws IOException {
        Deque<Future<R>> pending = new ArrayDeque<>();
        try {
            for (Optional<SubmissionSource.Received> next = submissions.next();
                    next.isPresent();
                    next = submissions.next()) {
                SubmissionSource.Received received = next.get();
                pending.add(threads.submit(() -> work.apply(received)));
                while (pending.size() >= most
                        || !pending.isEmpty() && pending.peek().isDone()) {
                    taker.take(result(pending.remove()));
                }
            }
            while (!pending.isEmpty()) {
                taker.take(result(pending.remove()));
            }
        } finally {
            pending.forEach(f -> f.cancel(true));
        }
    }

    private static <R> R result(Future<R> done) throws IOException {
        try {
            return done.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("A review failed", e.getCause());
        }
    }
}
