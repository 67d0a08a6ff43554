package org.deckplanreview.submission;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/** What became of the bytes of a submission. */
public sealed interface ReadResult {

    /**
     * A submission without fault.
     *
     * @param tree the document as it was parsed, in its own unit
     */
    record Read(Submission submission, JsonNode tree) implements ReadResult {}

    /**
     * Text that is not JSON (RFC 8259), or JSON beyond the limits of what is parsed.
     *
     * @param line counted from 1
     * @param column counted from 1
     */
    record NotJson(String detail, int line, int column) implements ReadResult {}

    /**
     * JSON that is not a valid submission.
     *
     * @param faults all of them, sorted, never empty
     */
    record Invalid(List<Fault> faults) implements ReadResult {
        public Invalid {
            faults = List.copyOf(faults);
        }
    }
}
