package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Tolerances;

/** The platforms as those beside them see them: their sides and how high their boards lie. */
final class Neighbours {

    /** An edge may lie off the outline of either platform by the tolerance, and so they off each other by twice that. */
    private static final double BESIDE_MM = 2 * Tolerances.OUTLINE_MM;

    private record Neighbour(Outline outline, List<PlanLine> sides, Derived<Plane> boardsTop) {}

    private final List<Neighbour> platforms;

    private Neighbours(List<Neighbour> platforms) {
        this.platforms = List.copyOf(platforms);
    }

    static Neighbours of(Submission submission) {
        List<Neighbour> platforms = new ArrayList<>();
        for (int i = 0; i < submission.platforms().size(); i++) {
            Platform platform = submission.platforms().get(i);
            Pointer pointer = Pointer.of("/platforms").child(i);
            Outline outline = new Outline(platform.outline());
            platforms.add(new Neighbour(
                    outline,
                    outline.sides(),
                    DeckLevels.of(submission, platform, pointer).boardsTop()));
        }
        return new Neighbours(platforms);
    }

    /** Levels of the boards of the other platforms at a place, as far as they are known, mm. */
    List<Double> levels(int platformIndex, PlanPoint at) {
        List<Double> levels = new ArrayList<>();
        for (int i = 0; i < platforms.size(); i++) {
            if (i != platformIndex && platforms.get(i).outline().contains(at)) {
                platforms.get(i).boardsTop().optional().ifPresent(p -> levels.add(p.levelMm(at)));
            }
        }
        return levels;
    }

    /**
     * The largest step down from one platform's side to the other platforms along it, at the first place where it
     * occurs; 0 where all of them lie as high or higher. Empty where none lies along the side.
     */
    Optional<Derived<Drop>> largestStep(int platformIndex, PlanLine side) {
        Derived<Plane> boardsTop = platforms.get(platformIndex).boardsTop();
        List<Need> needs = new ArrayList<>();
        List<Height> steps = new ArrayList<>();
        for (int i = 0; i < platforms.size(); i++) {
            if (i == platformIndex) {
                continue;
            }
            Neighbour other = platforms.get(i);
            for (PlanLine along : stretches(side, other)) {
                Derived<List<Height>> ends = boardsTop.with(other.boardsTop(), (from, to) -> steps(from, to, along));
                needs.addAll(ends.needs());
                ends.optional().ifPresent(steps::addAll);
            }
        }
        if (!needs.isEmpty()) {
            return Optional.of(Derived.missing(needs));
        }
        return steps.isEmpty()
                ? Optional.empty()
                : Optional.of(Derived.known(Height.largestOf(steps)).map(h -> new Drop(Math.max(0, h.mm()), h.at())));
    }

    /** What a platform shares no more than the tolerance of lies beside the next stretch of the outline. */
    private static List<PlanLine> stretches(PlanLine side, Neighbour other) {
        return other.sides().stream()
                .flatMap(s -> SharedStretch.of(side, s, BESIDE_MM).stream())
                .filter(s -> s.lengthMm() > Tolerances.OUTLINE_MM)
                .map(s -> s.on(side))
                .toList();
    }

    /** Both planes are linear along a line, so its ends decide. */
    private static List<Height> steps(Plane from, Plane to, PlanLine line) {
        return List.of(step(from, to, line.from()), step(from, to, line.to()));
    }

    private static Height step(Plane from, Plane to, PlanPoint at) {
        return new Height(from.levelMm(at) - to.levelMm(at), at);
    }
}
