package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.Edge;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.Need;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.Tolerances;

/** The outline's sides split by the edges that the submission describes; what it leaves out is a run of its own. */
final class EdgeRuns {

    private final Platform platform;
    private final int platformIndex;
    private final Pointer pointer;
    private final Derived<Plane> boardsTop;
    private final GroundSurface ground;
    private final Neighbours neighbours;

    private EdgeRuns(
            Platform platform,
            int platformIndex,
            Pointer pointer,
            Derived<Plane> boardsTop,
            GroundSurface ground,
            Neighbours neighbours) {
        this.platform = platform;
        this.platformIndex = platformIndex;
        this.pointer = pointer;
        this.boardsTop = boardsTop;
        this.ground = ground;
        this.neighbours = neighbours;
    }

    /** In the order of the outline. */
    static List<EdgeRun> of(
            Platform platform,
            int platformIndex,
            Pointer pointer,
            Outline outline,
            Derived<Plane> boardsTop,
            GroundSurface ground,
            Neighbours neighbours) {
        EdgeRuns runs = new EdgeRuns(platform, platformIndex, pointer, boardsTop, ground, neighbours);
        return outline.sides().stream().flatMap(s -> runs.split(s).stream()).toList();
    }

    /** The largest drop over all runs that have no wall beside them; 0 where all have. */
    static Derived<Double> largestDropMm(List<EdgeRun> runs) {
        List<Need> needs = new ArrayList<>();
        double largest = Double.NEGATIVE_INFINITY;
        for (EdgeRun run : runs) {
            if (run.edgeKind().filter(EdgeKind.WALL::equals).isEmpty()) {
                needs.addAll(run.drop().needs());
                largest = Math.max(
                        largest, run.drop().optional().map(Drop::largestMm).orElse(Double.NEGATIVE_INFINITY));
            }
        }
        if (!needs.isEmpty()) {
            return Derived.missing(needs);
        }
        return Derived.known(largest == Double.NEGATIVE_INFINITY ? 0 : largest);
    }

    /** The part of a side that an edge describes. */
    private record Described(SharedStretch stretch, int edge) {

        double from() {
            return stretch.fromMm();
        }

        double to() {
            return stretch.toMm();
        }
    }

    private List<EdgeRun> split(PlanLine side) {
        double length = Axis.length(side);
        List<EdgeRun> runs = new ArrayList<>();
        double reached = 0;
        for (Described s : described(side)) {
            double from = Math.max(reached, s.from());
            if (s.to() - from < SharedStretch.SHORTEST_MM) {
                continue;
            }
            if (from - reached > Tolerances.OUTLINE_MM) {
                runs.add(run(part(side, reached, from), OptionalInt.empty()));
            } else {
                from = reached;
            }
            double to = length - s.to() <= Tolerances.OUTLINE_MM ? length : s.to();
            runs.add(run(part(side, from, to), OptionalInt.of(s.edge())));
            reached = to;
        }
        if (reached < length) {
            runs.add(run(part(side, reached, length), OptionalInt.empty()));
        }
        return runs;
    }

    private List<Described> described(PlanLine side) {
        List<Described> stretches = new ArrayList<>();
        for (int i = 0; i < platform.edges().size(); i++) {
            int edge = i;
            SharedStretch.of(side, platform.edges().get(i).line(), Tolerances.OUTLINE_MM)
                    .ifPresent(s -> stretches.add(new Described(s, edge)));
        }
        return stretches.stream()
                .sorted(Comparator.comparingDouble(Described::from).thenComparingInt(Described::edge))
                .toList();
    }

    private static PlanLine part(PlanLine side, double from, double to) {
        return new SharedStretch(from, to).on(side);
    }

    private EdgeRun run(PlanLine line, OptionalInt index) {
        Pointer edges = pointer.child("edges");
        if (index.isEmpty()) {
            String label = "edge of " + platform.displayLabel() + " from " + text(line.from()) + " to "
                    + text(line.to()) + " mm";
            return new EdgeRun(
                    platformIndex,
                    edges,
                    label,
                    line,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    toGround(line));
        }
        int i = index.getAsInt();
        Edge edge = platform.edges().get(i);
        OptionalInt guard = guardIndex(edge);
        return new EdgeRun(
                platformIndex,
                edges.child(i),
                edge.label().orElse("edge " + (i + 1) + " of " + platform.displayLabel()),
                line,
                Optional.of(edge.kind()),
                guard.isPresent() ? Optional.of(platform.guards().get(guard.getAsInt())) : Optional.empty(),
                guard.isPresent() ? Optional.of(pointer.child("guards").child(guard.getAsInt())) : Optional.empty(),
                edge.kind() == EdgeKind.PLATFORM ? toPlatform(line) : toGround(line));
    }

    private Derived<Drop> toGround(PlanLine line) {
        return Height.largest(boardsTop, ground, line).map(h -> new Drop(h.mm(), h.at()));
    }

    /** Where no platform is found beside the run, what lies there is the ground. */
    private Derived<Drop> toPlatform(PlanLine line) {
        return neighbours.largestStep(platformIndex, line).orElseGet(() -> toGround(line));
    }

    private OptionalInt guardIndex(Edge edge) {
        for (int i = 0; i < platform.guards().size(); i++) {
            Guard guard = platform.guards().get(i);
            if (edge.guard().filter(guard.id()::equals).isPresent()) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static String text(PlanPoint p) {
        return "(" + Numbers.plain(p.xMm()) + ", " + Numbers.plain(p.yMm()) + ")";
    }
}
