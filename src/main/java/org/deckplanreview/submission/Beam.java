package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;

/**
 * A beam of one or more plies along a line.
 *
 * @param line its centre line
 * @param posts ids of the posts under it
 * @param joint with each of its posts
 * @param plyFixing of its plies to each other
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
        Optional<PlyFixing> plyFixing) {
    public Beam {
        posts = List.copyOf(posts);
    }

    public String displayLabel() {
        return label.orElse("beam " + id);
    }
}
