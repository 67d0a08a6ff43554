package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * A beam of one or more plies along a line.
 *
 * @param line its centre line
 * @param posts ids of the posts under it
 * @param joint with each of its posts
 * @param plyFixing of its plies to each other
 * @param holdDownResistance kN, design resistance of its fixing to one post against uplift
 * @param postCap what keeps it on the tops of its posts
 * @param plyJoints joints in its plies, along it from where its line begins
 */
public record Beam(
        String id,
        Optional<String> label,
        String timber,
        int plies,
        PlanLine line,
        List<String> posts,
        BeamSeating seating,
        JoistSeating joists,
        Optional<EndNotch> endNotch,
        Optional<Joint> joint,
        Optional<PlyFixing> plyFixing,
        Optional<Measure> holdDownResistance,
        Optional<PostCap> postCap,
        List<Length> plyJoints) {
    public Beam {
        posts = List.copyOf(posts);
        plyJoints = List.copyOf(plyJoints);
    }

    /** The same beam along another line. */
    public Beam along(PlanLine other) {
        return new Beam(
                id,
                label,
                timber,
                plies,
                other,
                posts,
                seating,
                joists,
                endNotch,
                joint,
                plyFixing,
                holdDownResistance,
                postCap,
                plyJoints);
    }

    public String displayLabel() {
        return label.orElse("beam " + id);
    }
}
