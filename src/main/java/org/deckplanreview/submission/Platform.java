package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Measure;

/**
 * One level area of decking with its frame.
 *
 * @param level finished level of the boards' upper face
 * @param finishes kN/m2 beside boards, joists and beams
 * @param overRoom whether a room lies under it
 * @param coversVents whether it covers or closes in an airbrick, flue, vent or meter
 */
public record Platform(
        String id,
        Optional<String> label,
        List<PlanPoint> outline,
        Optional<Level> level,
        Optional<Fall> fall,
        Optional<Measure> finishes,
        Optional<Boards> boards,
        Optional<JoistField> joists,
        List<Beam> beams,
        Optional<Ledger> ledger,
        List<Post> posts,
        List<Footing> footings,
        List<Edge> edges,
        List<Guard> guards,
        List<Brace> braces,
        List<Stair> stairs,
        Optional<Boolean> overRoom,
        Optional<Boolean> coversVents) {
    public Platform {
        stairs = List.copyOf(stairs);
        braces = List.copyOf(braces);
        outline = List.copyOf(outline);
        beams = List.copyOf(beams);
        posts = List.copyOf(posts);
        footings = List.copyOf(footings);
        edges = List.copyOf(edges);
        guards = List.copyOf(guards);
    }

    public String displayLabel() {
        return label.orElse("platform " + id);
    }
}
