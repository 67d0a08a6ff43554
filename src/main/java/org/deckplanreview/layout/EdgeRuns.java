package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.submission.Edge;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.Tolerances;

/**
 * The outline's sides split by the edges that the submission describes; what it leaves out is a run of its own. Where a
 * stair leaves, all but walls are cut: that stretch belongs to the stair.
 */
final class EdgeRuns {

    private final UnitSystem units;
    private final Platform platform;
    private final int platformIndex;
    private final Pointer pointer;
    private final Derived<Plane> boardsTop;
    private final GroundSurface ground;
    private final Neighbours neighbours;

    private EdgeRuns(
            UnitSystem units,
            Platform platform,
            int platformIndex,
            Pointer pointer,
            Derived<Plane> boardsTop,
            GroundSurface ground,
            Neighbours neighbours) {
        this.units = units;
        this.platform = platform;
        this.platformIndex = platformIndex;
        this.pointer = pointer;
        this.boardsTop = boardsTop;
        this.ground = ground;
        this.neighbours = neighbours;
    }

    /** In the order of the outline. */
    static List<EdgeRun> of(
            UnitSystem units,
            Platform platform,
            int platformIndex,
            Pointer pointer,
            Outline outline,
            Derived<Plane> boardsTop,
            GroundSurface ground,
            Neighbours neighbours) {
        EdgeRuns runs = new EdgeRuns(units, platform, platformIndex, pointer, boardsTop, ground, neighbours);
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

    /** A part of a side, and the index of the edge or stair that is drawn there; empty where nothing is. */
    private record Stretch(double from, double to, OptionalInt index) {}

    private List<EdgeRun> split(PlanLine side) {
        List<Stretch> stairs = along(side, lines(platform.stairs(), Stair::line));
        return edges(side).stream()
                .flatMap(s -> cut(side, s, isWall(s) ? List.of() : stairs).stream())
                .toList();
    }

    private boolean isWall(Stretch edge) {
        return kind(edge.index()).filter(EdgeKind.WALL::equals).isPresent();
    }

    private Optional<EdgeKind> kind(OptionalInt edge) {
        return edge.isPresent()
                ? Optional.of(platform.edges().get(edge.getAsInt()).kind())
                : Optional.empty();
    }

    /** The whole side, edge by edge. */
    private List<Stretch> edges(PlanLine side) {
        double length = Axis.length(side);
        List<Stretch> all = new ArrayList<>();
        double reached = 0;
        for (Stretch s : along(side, lines(platform.edges(), Edge::line))) {
            double from = Math.max(reached, s.from());
            if (s.to() - from < SharedStretch.SHORTEST_MM) {
                continue;
            }
            if (from - reached > Tolerances.OUTLINE_MM) {
                all.add(new Stretch(reached, from, OptionalInt.empty()));
            } else {
                from = reached;
            }
            double to = length - s.to() <= Tolerances.OUTLINE_MM ? length : s.to();
            all.add(new Stretch(from, to, s.index()));
            reached = to;
        }
        if (reached < length) {
            all.add(new Stretch(reached, length, OptionalInt.empty()));
        }
        return all;
    }

    /** One edge, cut where stairs leave it; what would be left beside a stair within the tolerance belongs to the stair. */
    private List<EdgeRun> cut(PlanLine side, Stretch edge, List<Stretch> stairs) {
        List<EdgeRun> runs = new ArrayList<>();
        double reached = edge.from();
        for (Stretch stair : stairs) {
            double from = Math.max(reached, stair.from());
            double to = Math.min(edge.to(), stair.to());
            if (to - from < SharedStretch.SHORTEST_MM) {
                continue;
            }
            if (from - reached > Tolerances.OUTLINE_MM) {
                runs.add(run(part(side, reached, from), edge.index()));
            } else {
                from = reached;
            }
            to = edge.to() - to <= Tolerances.OUTLINE_MM ? edge.to() : to;
            runs.add(head(part(side, from, to), edge.index(), stair.index().getAsInt()));
            reached = to;
        }
        if (reached < edge.to()) {
            runs.add(run(part(side, reached, edge.to()), edge.index()));
        }
        return runs;
    }

    private static <T> List<PlanLine> lines(List<T> drawn, Function<T, PlanLine> line) {
        return drawn.stream().map(line).toList();
    }

    /** Where lines lie along a side, in order. */
    private static List<Stretch> along(PlanLine side, List<PlanLine> lines) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            OptionalInt index = OptionalInt.of(i);
            SharedStretch.of(side, lines.get(i), Tolerances.OUTLINE_MM)
                    .ifPresent(s -> stretches.add(new Stretch(s.fromMm(), s.toMm(), index)));
        }
        return stretches.stream()
                .sorted(Comparator.comparingDouble(Stretch::from)
                        .thenComparingInt(s -> s.index().getAsInt()))
                .toList();
    }

    private static PlanLine part(PlanLine side, double from, double to) {
        return new SharedStretch(from, to).on(side);
    }

    private EdgeRun head(PlanLine line, OptionalInt edge, int stair) {
        return new EdgeRun(
                platformIndex,
                pointer.child("stairs").child(stair),
                "the head of " + platform.stairs().get(stair).displayLabel(),
                line,
                Optional.of(EdgeKind.STAIR),
                Optional.empty(),
                Optional.empty(),
                drop(line, kind(edge)));
    }

    private EdgeRun run(PlanLine line, OptionalInt index) {
        Pointer edges = pointer.child("edges");
        if (index.isEmpty()) {
            String label = "edge of " + platform.displayLabel() + " from " + stretch(line);
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
                drop(line, Optional.of(edge.kind())));
    }

    private Derived<Drop> drop(PlanLine line, Optional<EdgeKind> kind) {
        return kind.filter(EdgeKind.PLATFORM::equals).isPresent() ? toPlatform(line) : toGround(line);
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

    private String stretch(PlanLine line) {
        return switch (units) {
            case METRIC -> text(line, Numbers::plain) + " mm";
            case INCH_POUND -> text(line, mm -> Phrases.of(Measure.mm(mm), units));
        };
    }

    private static String text(PlanLine line, DoubleFunction<String> length) {
        return text(line.from(), length) + " to " + text(line.to(), length);
    }

    private static String text(PlanPoint p, DoubleFunction<String> length) {
        return "(" + length.apply(p.xMm()) + ", " + length.apply(p.yMm()) + ")";
    }
}
