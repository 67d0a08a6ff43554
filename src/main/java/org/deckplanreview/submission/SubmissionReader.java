package org.deckplanreview.submission;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import org.deckplanreview.kernel.Pointer;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

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

    /** A log of what will be read of a submission that this reader has read. */
    public ReadLog logOf(ReadResult.Read read) {
        return new ReadLog(read.submission(), read.tree(), schema.root());
    }

    private ReadResult read(JsonNode tree) {
        SortedSet<Fault> faults = schema.faults(tree);
        if (!faults.isEmpty()) {
            return invalid(faults);
        }
        Submission submission = binding.bind(tree);
        SortedSet<Fault> misfits = misfits(submission, tree);
        return misfits.isEmpty() ? new ReadResult.Read(submission, tree) : invalid(misfits);
    }

    private static SortedSet<Fault> misfits(Submission submission, JsonNode tree) {
        FaultList faults = new FaultList(submission.units());
        realDate(submission, tree, faults);
        new NameChecks(submission, faults).check();
        new TimberChecks(submission, faults).check();
        new SiteChecks(submission, faults).check();
        new SizeChecks(submission, faults).check();
        Map<Integer, Polygon> areas = new OutlineChecks(submission, faults).check();
        Map<Integer, PreparedGeometry> outlines = new LinkedHashMap<>();
        areas.forEach((i, area) -> outlines.put(
                i, PreparedGeometryFactory.prepare(area.getBoundary().buffer(Tolerances.OUTLINE_MM))));
        for (int i = 0; i < submission.platforms().size(); i++) {
            Optional<Polygon> area = Optional.ofNullable(areas.get(i));
            new FrameChecks(submission, i, area, faults).check();
            new EdgeChecks(submission, i, outlines, faults).check();
            new StairChecks(submission, i, Optional.ofNullable(outlines.get(i)), faults).check();
        }
        new PieceChecks(submission, areas, faults).check();
        new FlightChecks(submission, areas, faults).check();
        new MeasurementChecks(submission, areas, faults).check();
        return faults.sorted();
    }

    private static void realDate(Submission submission, JsonNode tree, FaultList faults) {
        String written = tree.path("reviewOn").asText();
        if (!submission.reviewOn().toString().equals(written)) {
            faults.add(
                    Pointer.of("/reviewOn"),
                    Found.quoted(written) + " is no day of the calendar",
                    "a date of the calendar, such as " + submission.reviewOn());
        }
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
