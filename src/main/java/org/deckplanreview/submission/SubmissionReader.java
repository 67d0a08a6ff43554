package org.deckplanreview.submission;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;

/**
 * Reads submissions. The text is parsed once; the tree is checked against {@code schema/submission-1.json}; then the
 * references between members and the geometry are checked. Never throws for any bytes. Thread-safe.
 */
public final class SubmissionReader {

    /** More faults than anyone mends at one sitting; what goes beyond is counted. */
    static final int MOST_FAULTS = 500;

    private final SubmissionSchema schema = new SubmissionSchema();
    private final SubmissionBinding binding = new SubmissionBinding();

    public ReadResult read(byte[] bytes) {
        StrictJson.Parsed parsed = StrictJson.parse(bytes);
        if (parsed instanceof StrictJson.Parsed.Refused refused) {
            return refused.reason();
        }
        return read(((StrictJson.Parsed.Tree) parsed).root());
    }

    private ReadResult read(JsonNode tree) {
        SortedSet<Fault> faults = schema.faults(tree);
        if (!faults.isEmpty()) {
            return invalid(faults);
        }
        Submission submission = binding.bind(tree);
        return new ReadResult.Read(submission, tree);
    }

    private static ReadResult invalid(SortedSet<Fault> faults) {
        if (faults.size() <= MOST_FAULTS) {
            return new ReadResult.Invalid(List.copyOf(faults));
        }
        List<Fault> listed = new ArrayList<>();
        listed.add(new Fault(
                Pointer.ROOT,
                "The document has " + faults.size() + " faults, of which the first " + MOST_FAULTS + " are listed",
                "a document whose listed faults are mended, to see the others"));
        faults.stream().limit(MOST_FAULTS).forEach(listed::add);
        return new ReadResult.Invalid(listed);
    }
}
