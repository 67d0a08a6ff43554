package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
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
import org.deckplanreview.submission.Stair;

/**
 * The outline's sides split by the edges that the submission describes; what it leaves out is a run of its own. Where a
 * stair leaves, what is open or not described is cut: that stretch belongs to the stair.
 */
final class EdgeRuns {

    /** An edge drawn this far off the outline still lies on it. */
    private static final double ON_OUTLINE_MM = 10;
    /** A shorter run is none. */
    private static final double SHORTEST_MM = 1;

    private final Platform platform;
    private final int platformIndex;
    private final Pointer pointer;
    private final Derived<Plane> boardsTop;
    private final GroundSurface ground;

    private EdgeRuns(
            Platform platform, int platformIndex, Pointer pointer, Derived<Plane> boardsTop, GroundSurface ground) {
        this.platform = platform;
        this.platformIndex = platformIndex;
        this.pointer = pointer;
        this.boardsTop = boardsTop;
        this.ground = ground;
    }

    /** In the order of the outline. */
    static List<EdgeRun> of(
            Platform platform,
            int platformIndex,
            Pointer pointer,
            Outline outline,
            Derived<Plane> boardsTop,
            GroundSurface ground) {
        EdgeRuns runs = new EdgeRuns(platform, platformIndex, pointer, boardsTop, ground);
        return outline.sides().stream().flatMap(s -> runs.split(s).stream()).toList();
    }

    /** The largest drop over all runs that have ground beside them; 0 where none has. */
    static Derived<Double> largestDropMm(List<EdgeRun> runs) {
        List<Need> needs = new ArrayList<>();
        double largest = Double.NEGATIVE_INFINITY;
        for (EdgeRun run : runs) {
            EdgeKind kind = run.edgeKind().orElse(EdgeKind.OPEN);
            if (kind == EdgeKind.OPEN || kind == EdgeKind.STAIR) {
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

    /** A part of a side, from and to in mm along it, and the index of what is drawn there; empty where nothing is. */
    private record Stretch(double from, double to, OptionalInt index) {}

    private List<EdgeRun> split(PlanLine side) {
        double length = Axis.length(side);
        List<Stretch> stairs = along(side, length, lines(platform.stairs(), Stair::line));
        List<EdgeRun> runs = new ArrayList<>();
        for (Stretch s : edges(side, length)) {
            runs.addAll(cut(side, length, s, isClosed(s) ? List.of() : stairs));
        }
        return runs;
    }

    /** A stair does not leave through a wall, nor onto another platform. */
    private boolean isClosed(Stretch edge) {
        return edge.index().isPresent()
                && platform.edges().get(edge.index().getAsInt()).kind() != EdgeKind.OPEN;
    }

    /** The whole side, edge by edge. */
    private List<Stretch> edges(PlanLine side, double length) {
        List<Stretch> all = new ArrayList<>();
        double reached = 0;
        for (Stretch s : along(side, length, lines(platform.edges(), Edge::line))) {
            double from = Math.max(reached, s.from());
            if (s.to() - from < SHORTEST_MM) {
                continue;
            }
            if (from - reached > ON_OUTLINE_MM) {
                all.add(new Stretch(reached, from, OptionalInt.empty()));
            } else {
                from = reached;
            }
            double to = length - s.to() <= ON_OUTLINE_MM ? length : s.to();
            all.add(new Stretch(from, to, s.index()));
            reached = to;
        }
        if (reached < length) {
            all.add(new Stretch(reached, length, OptionalInt.empty()));
        }
        return all;
    }

    /** One edge, cut where stairs leave it; what would be left beside a stair within the tolerance belongs to the stair. */
    private List<EdgeRun> cut(PlanLine side, double length, Stretch edge, List<Stretch> stairs) {
        List<EdgeRun> runs = new ArrayList<>();
        double reached = edge.from();
        for (Stretch stair : stairs) {
            double from = Math.max(reached, stair.from());
            double to = Math.min(edge.to(), stair.to());
            if (to - from < SHORTEST_MM) {
                continue;
            }
            if (from - reached > ON_OUTLINE_MM) {
                runs.add(run(part(side, reached, from, length), edge.index()));
            } else {
                from = reached;
            }
            to = edge.to() - to <= ON_OUTLINE_MM ? edge.to() : to;
            runs.add(head(part(side, from, to, length), stair.index().getAsInt()));
            reached = to;
        }
        if (reached < edge.to()) {
            runs.add(run(part(side, reached, edge.to(), length), edge.index()));
        }
        return runs;
    }

    private static <T> List<PlanLine> lines(List<T> drawn, Function<T, PlanLine> line) {
        return drawn.stream().map(line).toList();
    }

    /** Where lines lie along a side, in order. */
    private static List<Stretch> along(PlanLine side, double length, List<PlanLine> lines) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            overlap(side, length, lines.get(i), i).ifPresent(stretches::add);
        }
        return stretches.stream()
                .sorted(Comparator.comparingDouble(Stretch::from)
                        .thenComparingInt(s -> s.index().getAsInt()))
                .toList();
    }

    private static Optional<Stretch> overlap(PlanLine side, double length, PlanLine line, int index) {
        Axis axis = Axis.of(side);
        double start = axis.along(side.from());
        double across = axis.across(side.from());
        boolean forwards = axis.along(line.from()) <= axis.along(line.to());
        PlanPoint first = forwards ? line.from() : line.to();
        PlanPoint last = forwards ? line.to() : line.from();
        double from = axis.along(first) - start;
        double to = axis.along(last) - start;
        double cutFrom = Math.max(0, from);
        double cutTo = Math.min(length, to);
        if (cutTo - cutFrom < SHORTEST_MM) {
            return Optional.empty();
        }
        double slope = (axis.across(last) - axis.across(first)) / (to - from);
        double offFrom = axis.across(first) - across + slope * (cutFrom - from);
        double offTo = axis.across(first) - across + slope * (cutTo - from);
        return Math.max(Math.abs(offFrom), Math.abs(offTo)) <= ON_OUTLINE_MM
                ? Optional.of(new Stretch(cutFrom, cutTo, OptionalInt.of(index)))
                : Optional.empty();
    }

    private static PlanLine part(PlanLine side, double from, double to, double length) {
        return new PlanLine(Axis.pointAt(side, from / length), Axis.pointAt(side, to / length));
    }

    private Derived<Drop> drop(PlanLine line) {
        return Height.largest(boardsTop, ground, line).map(h -> new Drop(h.mm(), h.at()));
    }

    private EdgeRun head(PlanLine line, int stair) {
        return new EdgeRun(
                platformIndex,
                pointer.child("stairs").child(stair),
                "the head of " + platform.stairs().get(stair).displayLabel(),
                line,
                Optional.of(EdgeKind.STAIR),
                Optional.empty(),
                Optional.empty(),
                drop(line));
    }

    private EdgeRun run(PlanLine line, OptionalInt index) {
        Pointer edges = pointer.child("edges");
        Derived<Drop> drop = drop(line);
        if (index.isEmpty()) {
            String label = "edge of " + platform.displayLabel() + " from " + text(line.from()) + " to "
                    + text(line.to()) + " mm";
            return new EdgeRun(
                    platformIndex, edges, label, line, Optional.empty(), Optional.empty(), Optional.empty(), drop);
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
                drop);
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
