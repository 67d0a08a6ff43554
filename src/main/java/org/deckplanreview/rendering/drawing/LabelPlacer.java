package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds a place for each label: letters of symbols first, then dimensions, callouts and
 * notes. Of the places around what a label points at, the
 * one with the least line work under it and the shortest leader is taken. No label covers another one or another's leader;
 * a label that finds no such place is left out and told.
 */
final class LabelPlacer {

    /** Between labels, mm. */
    private static final double APART = 0.6;

    /** A leader is drawn where a label lies farther from its anchor than this, mm. */
    private static final double LEADER_FROM = 2.2;

    private static final double[] DISTANCES = {1.2, 4, 7, 10, 14, 18, 23, 29, 36, 44, 54, 66, 80};

    private static final double HALF = 0.7071067811865476;
    private static final double EIGHTH_SINE = 0.3826834323650898;
    private static final double EIGHTH_COSINE = 0.9238795325112867;

    /** To the right and left first, then above and below, then between. */
    private static final List<Vec> DIRECTIONS = List.of(
            new Vec(1, 0),
            new Vec(-1, 0),
            new Vec(0, -1),
            new Vec(0, 1),
            new Vec(HALF, -HALF),
            new Vec(-HALF, -HALF),
            new Vec(HALF, HALF),
            new Vec(-HALF, HALF),
            new Vec(EIGHTH_COSINE, -EIGHTH_SINE),
            new Vec(-EIGHTH_COSINE, -EIGHTH_SINE),
            new Vec(EIGHTH_COSINE, EIGHTH_SINE),
            new Vec(-EIGHTH_COSINE, EIGHTH_SINE),
            new Vec(EIGHTH_SINE, -EIGHTH_COSINE),
            new Vec(-EIGHTH_SINE, -EIGHTH_COSINE),
            new Vec(EIGHTH_SINE, EIGHTH_COSINE),
            new Vec(-EIGHTH_SINE, EIGHTH_COSINE));

    private static final double INK_COST = 0.6;
    private static final double CROSSING_COST = 1.5;
    private static final double OTHER_ANCHOR_COST = 0.7;
    private static final double SHIFT_COST = 6;
    private static final double LIFT_COST = 5;
    private static final int MOST_LIFTS = 4;

    /** Between a dimension line and its number, mm. */
    private static final double ABOVE = 0.5;

    private final Box area;
    private final Ink ink;
    private final List<Box> taken;
    private final List<Box> keptClear;
    /** What labels point at; a label on top of it would bar the way for the others' leaders. */
    private final List<Vec> pointedAt = new ArrayList<>();

    private final List<Segment> leaders = new ArrayList<>();
    private final List<PlacedLabel> placed = new ArrayList<>();
    private final List<Wanted> omitted = new ArrayList<>();

    /**
     * @param taken by text, which leaders do not cross either
     * @param keptClear where no label may lie but leaders may begin
     */
    LabelPlacer(Box area, List<Segment> strokes, List<Box> taken, List<Box> keptClear) {
        this.area = area;
        this.ink = new Ink(strokes);
        this.taken = new ArrayList<>(taken);
        this.keptClear = List.copyOf(keptClear);
    }

    /** A place that a label could have. */
    private record Candidate(PlacedLabel label, double cost) {}

    void place(List<Wanted> labels) {
        labels.stream()
                .filter(w -> w.kind() != Wanted.Kind.DIMENSION)
                .map(LabelPlacer::anchor)
                .forEach(pointedAt::add);
        labels.stream().sorted(Comparator.comparing(Wanted::kind)).forEach(this::place);
    }

    List<PlacedLabel> placed() {
        return List.copyOf(placed);
    }

    List<Wanted> omitted() {
        return List.copyOf(omitted);
    }

    private void place(Wanted wanted) {
        Optional<Candidate> best = Optional.empty();
        for (Candidate c : candidates(wanted)) {
            if ((best.isEmpty() || c.cost() < best.get().cost()) && isFree(c.label())) {
                double cost = c.cost() + lineWork(c.label());
                if (best.isEmpty() || cost < best.get().cost()) {
                    best = Optional.of(new Candidate(c.label(), cost));
                }
            }
        }
        best.map(Candidate::label).ifPresentOrElse(this::take, () -> omitted.add(wanted));
    }

    private void take(PlacedLabel label) {
        placed.add(label);
        taken.add(label.box());
        label.leader().ifPresent(leaders::add);
    }

    private boolean isFree(PlacedLabel label) {
        Box wide = label.box().grownBy(APART);
        return label.box().within(area)
                && taken.stream().noneMatch(wide::overlaps)
                && keptClear.stream().noneMatch(label.box()::overlaps)
                && pointedAt.stream().noneMatch(label.box()::contains)
                && leaders.stream().noneMatch(l -> wide.inside(l) > 0)
                && label.leader()
                        .filter(l -> taken.stream().anyMatch(t -> t.inside(l) > 0)
                                || leaders.stream().anyMatch(l::crosses))
                        .isEmpty();
    }

    private double lineWork(PlacedLabel label) {
        return INK_COST * ink.under(label.box())
                + label.leader().map(l -> CROSSING_COST * ink.crossedBy(l)).orElse(0.0);
    }

    private static List<Candidate> candidates(Wanted wanted) {
        return wanted.kind() == Wanted.Kind.DIMENSION ? besideLine(wanted) : around(wanted);
    }

    private static List<Candidate> around(Wanted wanted) {
        Box size = PlacedLabel.size(wanted);
        List<Candidate> all = new ArrayList<>();
        for (double distance : DISTANCES) {
            for (int i = 0; i < wanted.anchors().size(); i++) {
                Vec anchor = wanted.anchors().get(i);
                for (Vec d : DIRECTIONS) {
                    Vec centre = anchor.along(d, wanted.clearMm() + distance)
                            .plus(new Vec(d.x() * size.halfLength(), d.y() * size.halfHeight()));
                    Box box = new Box(centre, Vec.RIGHT, size.halfLength(), size.halfHeight());
                    Vec end = box.nearest(anchor);
                    boolean far = end.minus(anchor).length() > wanted.clearMm() + LEADER_FROM;
                    all.add(new Candidate(
                            new PlacedLabel(
                                    wanted, box, far ? Optional.of(new Segment(anchor, end)) : Optional.empty()),
                            distance + (far ? LEADER_FROM : 0) + i * OTHER_ANCHOR_COST));
                }
            }
        }
        return all;
    }

    /** Above the line's middle; else beside its ends, above or below it; else farther away with a leader. */
    private static List<Candidate> besideLine(Wanted wanted) {
        Box size = PlacedLabel.size(wanted);
        Vec along = wanted.along();
        Vec up = along.left();
        double lift = size.halfHeight() + ABOVE;
        double aside = wanted.clearMm() + size.halfLength() + APART;
        List<Candidate> all = new ArrayList<>(upright(wanted, size));
        all.add(on(wanted, size, 0, lift, size.halfLength() > wanted.clearMm() ? LIFT_COST : 0));
        all.add(on(wanted, size, 0, -lift, LIFT_COST));
        for (int n = 1; n <= MOST_LIFTS; n++) {
            for (int sign : new int[] {1, -1}) {
                double further = n * size.halfLength();
                all.add(on(wanted, size, sign * (aside + further - size.halfLength()), lift, SHIFT_COST * n));
                all.add(on(wanted, size, sign * (aside + further - size.halfLength()), -lift, SHIFT_COST * n));
                for (double shift : new double[] {0, size.halfLength(), 2 * size.halfLength()}) {
                    double raised = sign * (lift + n * 2 * size.halfHeight() + APART);
                    double cost = LIFT_COST * (n + 1) + shift / 2;
                    all.add(led(wanted, size, shift, raised, cost));
                    all.add(led(wanted, size, -shift, raised, cost));
                }
            }
        }
        return all;
    }

    /** Beside a line that is not level, read from below. */
    private static List<Candidate> upright(Wanted wanted, Box size) {
        List<Candidate> all = new ArrayList<>();
        if (!wanted.along().equals(Vec.RIGHT)) {
            for (int sign : new int[] {1, -1}) {
                Vec centre = anchor(wanted).plus(new Vec(sign * (size.halfLength() + 2 * APART), 0));
                Box box = new Box(centre, Vec.RIGHT, size.halfLength(), size.halfHeight());
                all.add(new Candidate(new PlacedLabel(wanted, box, Optional.empty()), LIFT_COST - 1));
            }
        }
        return all;
    }

    private static Vec anchor(Wanted wanted) {
        return wanted.anchors().get(0);
    }

    private static Candidate on(Wanted wanted, Box size, double shift, double lift, double cost) {
        Vec centre =
                anchor(wanted).along(wanted.along(), shift).along(wanted.along().left(), lift);
        Box box = new Box(centre, wanted.along(), size.halfLength(), size.halfHeight());
        return new Candidate(new PlacedLabel(wanted, box, Optional.empty()), cost);
    }

    private static Candidate led(Wanted wanted, Box size, double shift, double lift, double cost) {
        Candidate c = on(wanted, size, shift, lift, cost);
        Box box = c.label().box();
        Segment leader = new Segment(anchor(wanted), box.nearest(anchor(wanted)));
        return new Candidate(new PlacedLabel(wanted, box, Optional.of(leader)), cost);
    }
}
