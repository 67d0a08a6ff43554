package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Tolerances;

/**
 * What of a platform's frame holds a line along its edge, such as the head of a stair or a guard: the beam that runs along
 * it there; else the joists whose ends lie at it, each what is nearer to it than to its neighbours; else the joist that
 * runs along it.
 */
public final class EdgeFrame {

    /** Joists that cross the line at a smaller angle than this run along it. */
    private static final double ALONG_SINE = 0.5;

    private static final double SAME_PLACE_MM = 1e-6;

    private final PlatformLayout platform;

    private EdgeFrame(PlatformLayout platform) {
        this.platform = platform;
    }

    public static EdgeFrame of(PlatformLayout platform) {
        return new EdgeFrame(platform);
    }

    /**
     * The part of what stands on the line that one member takes, evenly between two places along it, or at one place.
     *
     * @param share of the whole, 0 to 1
     */
    public record Held(Member member, double fromMm, double toMm, double share) {}

    /** What holds a load that is spread evenly over a line; the shares add up to 1, except where there is no frame at all. */
    public List<Held> evenly(PlanLine line) {
        double length = Axis.length(line);
        List<Held> held = new ArrayList<>();
        double reached = 0;
        for (BeamStretch b : beamsAlong(line)) {
            double from = Math.max(reached, b.stretch().fromMm());
            double to = b.stretch().toMm();
            if (to - from < SharedStretch.SHORTEST_MM) {
                continue;
            }
            held.addAll(byJoists(line, reached, from));
            held.add(held(b.beam(), point(line, from), point(line, to), (to - from) / length));
            reached = to;
        }
        held.addAll(byJoists(line, reached, length));
        return List.copyOf(held);
    }

    /**
     * What holds a load at one place of a line, as a fraction of its length. Between two joists' ends it goes to both by the
     * law of the lever.
     */
    public List<Held> at(PlanLine line, double fraction) {
        PlanPoint p = Axis.pointAt(line, fraction);
        double at = fraction * Axis.length(line);
        for (BeamStretch b : beamsAlong(line)) {
            if (b.stretch().fromMm() <= at && at <= b.stretch().toMm()) {
                return List.of(held(b.beam(), p, p, 1));
            }
        }
        Optional<JoistLine> nearest = nearest(p);
        if (nearest.isEmpty()) {
            return List.of();
        }
        Axis joists = Axis.of(nearest.get().line());
        double off = joists.across(p) - across(joists, nearest.get());
        Optional<JoistLine> other = Axis.of(line).sineTo(joists) < ALONG_SINE || Math.abs(off) < SAME_PLACE_MM
                ? Optional.empty()
                : onOtherSide(p, nearest.get(), joists, off);
        if (other.isEmpty()) {
            return List.of(held(nearest.get(), p, p, 1));
        }
        double between = Math.abs(across(joists, other.get()) - across(joists, nearest.get()));
        double share = Math.abs(off) / between;
        return List.of(held(nearest.get(), p, p, 1 - share), held(other.get(), p, p, share));
    }

    /**
     * Whether the frame lies at each end and the middle of the line: a beam no farther from it than it is broad, or a
     * joist on two supports or more, no farther to its side than one spacing and no farther beyond its end than a rim is thick.
     */
    public boolean reaches(PlanLine line) {
        return DoubleStream.of(0, 0.5, 1)
                .mapToObj(f -> Axis.pointAt(line, f))
                .allMatch(p -> platform.joists().stream().anyMatch(j -> isAt(j, p))
                        || platform.beams().stream().anyMatch(b -> distanceMm(b, p) <= besideMm(b)));
    }

    /** Whether any joist of the platform lies on two supports or more; where none does, its supports are not described. */
    public boolean isCarried() {
        return platform.joists().stream().anyMatch(EdgeFrame::carries);
    }

    private static boolean carries(JoistLine joist) {
        return joist.supports().size() > 1;
    }

    private static boolean isAt(JoistLine joist, PlanPoint p) {
        return carries(joist)
                && distanceMm(joist, p) <= joist.spacingMm()
                && alongGapMm(joist, p) <= joist.timber().breadth().mm() + Tolerances.OUTLINE_MM;
    }

    private record BeamStretch(BeamLine beam, SharedStretch stretch) {}

    /** Beams that run along the line no farther from it than they are broad, in order. */
    private List<BeamStretch> beamsAlong(PlanLine line) {
        List<BeamStretch> along = new ArrayList<>();
        for (BeamLine beam : platform.beams()) {
            SharedStretch.of(line, beam.line(), besideMm(beam)).ifPresent(s -> along.add(new BeamStretch(beam, s)));
        }
        along.sort(Comparator.comparingDouble(b -> b.stretch().fromMm()));
        return along;
    }

    private static double besideMm(BeamLine beam) {
        return beam.plies() * beam.timber().breadth().mm() + Tolerances.OUTLINE_MM;
    }

    private List<Held> byJoists(PlanLine line, double fromMm, double toMm) {
        List<Held> held = new ArrayList<>();
        if (toMm - fromMm < SAME_PLACE_MM || platform.joists().isEmpty()) {
            return held;
        }
        double length = Axis.length(line);
        double reached = fromMm;
        for (double cut : cuts(line, fromMm, toMm)) {
            if (cut - reached > SAME_PLACE_MM) {
                PlanPoint from = point(line, reached);
                PlanPoint to = point(line, cut);
                JoistLine joist = nearest(point(line, (reached + cut) / 2)).orElseThrow();
                held.add(held(joist, from, to, (cut - reached) / length));
                reached = cut;
            }
        }
        return held;
    }

    /** Where the joist that holds the line can change: halfway between two joists, and at joists' ends; the line's end last. */
    private List<Double> cuts(PlanLine line, double fromMm, double toMm) {
        Axis joists = Axis.of(platform.joists().get(0).line());
        TreeSet<Double> rows = new TreeSet<>();
        TreeSet<Double> ends = new TreeSet<>();
        for (JoistLine j : platform.joists()) {
            rows.add(across(joists, j));
            ends.add(joists.along(j.line().from()));
            ends.add(joists.along(j.line().to()));
        }
        TreeSet<Double> cuts = new TreeSet<>();
        double before = rows.first();
        for (double row : rows) {
            where(line, (before + row) / 2, joists.across(line.from()), joists.across(line.to()))
                    .ifPresent(cuts::add);
            before = row;
        }
        for (double end : ends) {
            where(line, end, joists.along(line.from()), joists.along(line.to())).ifPresent(cuts::add);
        }
        List<Double> within = new ArrayList<>(cuts.stream()
                .filter(c -> c > fromMm + SAME_PLACE_MM && c < toMm - SAME_PLACE_MM)
                .toList());
        within.add(toMm);
        return within;
    }

    /** Where along the line a coordinate that runs from one value to another takes a value. */
    private static Optional<Double> where(PlanLine line, double value, double from, double to) {
        return Math.abs(to - from) < SAME_PLACE_MM
                ? Optional.empty()
                : Optional.of((value - from) / (to - from) * Axis.length(line));
    }

    private Optional<JoistLine> nearest(PlanPoint p) {
        return platform.joists().stream().min(Comparator.comparingDouble(j -> distanceMm(j, p)));
    }

    /** The nearest joist on the other side of a place whose end lies as near to the line as one spacing. */
    private Optional<JoistLine> onOtherSide(PlanPoint p, JoistLine nearest, Axis joists, double off) {
        return platform.joists().stream()
                .filter(j -> off * (across(joists, j) - joists.across(p)) > 0)
                .filter(j -> alongGapMm(j, p) <= nearest.spacingMm())
                .min(Comparator.comparingDouble(j -> distanceMm(j, p)));
    }

    private static double across(Axis axis, JoistLine joist) {
        return axis.across(joist.line().from());
    }

    /** How far a place lies beyond the member's ends, along it. */
    private static double alongGapMm(Member member, PlanPoint p) {
        double at = along(member, p);
        return Math.max(0, Math.max(-at, at - member.lengthMm()));
    }

    private static double distanceMm(Member member, PlanPoint p) {
        Axis axis = Axis.of(member.line());
        double across = axis.across(p) - axis.across(member.line().from());
        double beyond = alongGapMm(member, p);
        return Math.sqrt(across * across + beyond * beyond);
    }

    private static double along(Member member, PlanPoint p) {
        Axis axis = Axis.of(member.line());
        return axis.along(p) - axis.along(member.line().from());
    }

    private static PlanPoint point(PlanLine line, double atMm) {
        return Axis.pointAt(line, atMm / Axis.length(line));
    }

    private static Held held(Member member, PlanPoint from, PlanPoint to, double share) {
        double a = onMember(member, from);
        double b = onMember(member, to);
        return new Held(member, Math.min(a, b), Math.max(a, b), share);
    }

    private static double onMember(Member member, PlanPoint p) {
        return Math.min(Math.max(along(member, p), 0), member.lengthMm());
    }
}
