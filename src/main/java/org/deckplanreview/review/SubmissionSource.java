package org.deckplanreview.review;

import java.io.IOException;
import java.util.Optional;

/** Many submissions, one after the other. */
public interface SubmissionSource {

    /** The next one; empty after the last. */
    Optional<Received> next() throws IOException;

    /**
     * One of many.
     *
     * @param number its line, or its place among the files, from 1
     * @param name how to tell people which one it is
     * @param bytes empty if they are more than a submission may have
     */
    record Received(long number, String name, Optional<byte[]> bytes) {}
}
