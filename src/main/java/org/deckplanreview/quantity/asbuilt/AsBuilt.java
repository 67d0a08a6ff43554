package org.deckplanreview.quantity.asbuilt;

import static org.deckplanreview.quantity.DescribedQuantity.number;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FrameLevels;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.Fall;
import org.deckplanreview.submission.MeasuredDiagonal;
import org.deckplanreview.submission.MeasuredLevel;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.SiteMeasurements;
import org.deckplanreview.submission.SubjectKind;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;

/** What was measured on site, against what is drawn. A deck that is not measured yet lacks nothing. */
public final class AsBuilt {
    private static final Formula DIAGONAL_DEVIATION =
            Formula.of("Δd = max(d_measured - d_drawn, d_drawn - d_measured)", MeasureUnit.MILLIMETRE, "");
    private static final Formula LEVEL_DEVIATION =
            Formula.of("Δz = max(z_measured - z_drawn, z_drawn - z_measured)", MeasureUnit.MILLIMETRE, "");
    private static final Formula DIFFERENCE = Formula.of("Δd = max(d_1 - d_2, d_2 - d_1)", MeasureUnit.MILLIMETRE, "");
    private static final Formula GRADIENT = Formula.of("i = (z_up - z_down) / l", MeasureUnit.RATIO, "");

    private static final List<SubjectKind> PLATFORMS = List.of(SubjectKind.PLATFORMS);
    private static final Pointer MEASURED = Pointer.of("/siteMeasurements");
    /** Coordinates are drawn to whole millimetres. */
    private static final double DRAWN_MM = 1;

    private AsBuilt() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "difference of measured diagonals",
                        MeasureUnit.MILLIMETRE,
                        PlatformLayout.class,
                        PLATFORMS,
                        "The largest difference between the two measured diagonals of a rectangle of posts.",
                        AsBuilt::differenceOfDiagonals),
                number(
                        "deviation of measured diagonals",
                        MeasureUnit.MILLIMETRE,
                        PlatformLayout.class,
                        PLATFORMS,
                        "The largest difference between a measured diagonal and the same one on the drawing.",
                        AsBuilt::deviationOfDiagonals),
                number(
                        "deviation of measured levels",
                        MeasureUnit.MILLIMETRE,
                        PlatformLayout.class,
                        PLATFORMS,
                        "The largest difference between a measured level and that of the boards there on the drawing.",
                        AsBuilt::deviationOfLevels),
                number(
                        "measured fall",
                        MeasureUnit.RATIO,
                        PlatformLayout.class,
                        PLATFORMS,
                        "The least drop over run, downhill along the drawn fall, between measured levels; of those pairs"
                                + " of points that lie at least half as far apart along the fall as the farthest two.",
                        AsBuilt::fall));
    }

    private record Diagonal(Post from, Post to, double drawnMm, double measuredMm, Pointer pointer) {

        String label() {
            return from.displayLabel() + " to " + to.displayLabel();
        }

        /** The diagonals of a rectangle are as long as each other and halve each other. */
        boolean crossesInRectangle(Diagonal other) {
            return Math.abs(drawnMm - other.drawnMm) <= DRAWN_MM
                    && distance(middle(), other.middle()) <= DRAWN_MM
                    && distance(from.at(), other.from.at()) > DRAWN_MM
                    && distance(from.at(), other.to.at()) > DRAWN_MM;
        }

        private PlanPoint middle() {
            return new PlanPoint(
                    (from.at().xMm() + to.at().xMm()) / 2,
                    (from.at().yMm() + to.at().yMm()) / 2);
        }
    }

    private static double distance(PlanPoint a, PlanPoint b) {
        return StrictMath.hypot(b.xMm() - a.xMm(), b.yMm() - a.yMm());
    }

    /** Those between posts of the platform. */
    private static List<Diagonal> diagonals(PlatformLayout platform, ReviewContext context) {
        List<MeasuredDiagonal> given = context.submission()
                .siteMeasurements()
                .map(SiteMeasurements::diagonals)
                .orElse(List.of());
        List<Diagonal> diagonals = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            Optional<Post> from = post(platform, given.get(i).from());
            Optional<Post> to = post(platform, given.get(i).to());
            if (from.isPresent() && to.isPresent()) {
                diagonals.add(new Diagonal(
                        from.get(),
                        to.get(),
                        distance(from.get().at(), to.get().at()),
                        given.get(i).length().mm(),
                        MEASURED.child("diagonals").child(i).child("length")));
            }
        }
        return diagonals;
    }

    private static Optional<Post> post(PlatformLayout platform, String id) {
        return platform.platform().posts().stream()
                .filter(p -> p.id().equals(id))
                .findFirst();
    }

    private static Observation deviationOfDiagonals(PlatformLayout platform, ReviewContext context) {
        Optional<Diagonal> worst = diagonals(platform, context).stream()
                .max(Comparator.comparingDouble(d -> Math.abs(d.measuredMm() - d.drawnMm())));
        if (worst.isEmpty()) {
            return Observations.notApplicable("no diagonals were measured on it");
        }
        Diagonal d = worst.get();
        Sheet working = Sheet.blank();
        double measured = working.given(
                "d_measured", d.measuredMm(), MeasureUnit.MILLIMETRE, "diagonal as measured", "", d.pointer());
        double drawn = working.given(
                "d_drawn", d.drawnMm(), MeasureUnit.MILLIMETRE, "between the posts' centres as drawn", "");
        double deviation = working.calculate(DIAGONAL_DEVIATION);
        return new Observation.Found(Measure.of(deviation, MeasureUnit.MILLIMETRE), d.label(), working.steps());
    }

    private static Observation deviationOfLevels(PlatformLayout platform, ReviewContext context) {
        List<MeasuredLevel> given = context.submission()
                .siteMeasurements()
                .map(SiteMeasurements::levels)
                .orElse(List.of());
        FrameLevels levels = FrameLevels.of(context.layout(), platform);
        Optional<Observation> worst = Optional.empty();
        double largest = -1;
        for (int i = 0; i < given.size(); i++) {
            MeasuredLevel level = given.get(i);
            if (!isOn(platform, level.at())) {
                continue;
            }
            Derived<Double> drawn = levels.boardsTopMm(level.at());
            if (!drawn.isKnown()) {
                return Observations.missing(drawn.needs());
            }
            double deviation = Math.abs(level.z().mm() - drawn.get());
            if (deviation > largest) {
                largest = deviation;
                Sheet w = Sheet.blank();
                double measured = w.given(
                        "z_measured",
                        level.z().mm(),
                        MeasureUnit.MILLIMETRE,
                        "level as measured",
                        "",
                        MEASURED.child("levels").child(i).child("z"));
                w.given("z_drawn", drawn.get(), MeasureUnit.MILLIMETRE, "level of the boards as drawn", "");
                worst = Optional.of(Observations.found(w.calculate(LEVEL_DEVIATION), MeasureUnit.MILLIMETRE, w));
            }
        }
        return worst.orElseGet(() -> Observations.notApplicable("no levels were measured on it"));
    }

    private record Pair(Diagonal one, Diagonal other) {

        double differenceMm() {
            return Math.abs(one.measuredMm() - other.measuredMm());
        }
    }

    private static Observation differenceOfDiagonals(PlatformLayout platform, ReviewContext context) {
        List<Diagonal> all = diagonals(platform, context);
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int k = i + 1; k < all.size(); k++) {
                if (all.get(i).crossesInRectangle(all.get(k))) {
                    pairs.add(new Pair(all.get(i), all.get(k)));
                }
            }
        }
        Optional<Pair> worst = pairs.stream().max(Comparator.comparingDouble(Pair::differenceMm));
        if (worst.isEmpty()) {
            return Observations.notApplicable("no two diagonals of one rectangle were measured on it");
        }
        Diagonal one = worst.get().one();
        Diagonal other = worst.get().other();
        Sheet working = Sheet.blank();
        working.given("d_1", one.measuredMm(), MeasureUnit.MILLIMETRE, one.label(), "", one.pointer());
        double d2 =
                working.given("d_2", other.measuredMm(), MeasureUnit.MILLIMETRE, other.label(), "", other.pointer());
        double difference = working.calculate(DIFFERENCE);
        return new Observation.Found(
                Measure.of(difference, MeasureUnit.MILLIMETRE),
                one.label() + " against " + other.label(),
                working.steps());
    }

    /** A measured level, and how far downhill it lies. */
    private record Shot(double downhillMm, double levelMm, PlanPoint at, Pointer pointer) {}

    private static Observation fall(PlatformLayout platform, ReviewContext context) {
        Optional<Fall> fall = platform.platform().fall();
        List<MeasuredLevel> given = context.submission()
                .siteMeasurements()
                .map(SiteMeasurements::levels)
                .orElse(List.of());
        if (given.stream().noneMatch(l -> isOn(platform, l.at()))) {
            return Observations.notApplicable("no levels were measured on it");
        }
        if (fall.filter(f -> Double.isInfinite(f.oneIn())).isPresent()) {
            return Observations.notApplicable("the platform is level");
        }
        Optional<Direction> direction = fall.flatMap(Fall::direction);
        if (direction.isEmpty()) {
            return Observations.missing(
                    platform.pointer().child("fall"),
                    "the fall of " + platform.label() + " with its direction, downhill");
        }
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            MeasuredLevel level = given.get(i);
            if (isOn(platform, level.at())) {
                shots.add(new Shot(
                        downhillMm(direction.get(), level.at()),
                        level.z().mm(),
                        level.at(),
                        MEASURED.child("levels").child(i).child("z")));
            }
        }
        return leastFall(shots, platform, context);
    }

    private static Observation leastFall(List<Shot> shots, PlatformLayout platform, ReviewContext context) {
        double longest = shots.stream().mapToDouble(Shot::downhillMm).max().orElseThrow()
                - shots.stream().mapToDouble(Shot::downhillMm).min().orElseThrow();
        if (longest <= DRAWN_MM) {
            return Observations.missing(
                    MEASURED.child("levels"),
                    "a level of " + platform.label() + " further along its fall, "
                            + context.submission().units().word());
        }
        double least = Double.POSITIVE_INFINITY;
        Optional<Observation> found = Optional.empty();
        for (Shot upper : shots) {
            for (Shot lower : shots) {
                double run = lower.downhillMm() - upper.downhillMm();
                if (run >= longest / 2 - DRAWN_MM && run > 0 && (upper.levelMm() - lower.levelMm()) / run < least) {
                    least = (upper.levelMm() - lower.levelMm()) / run;
                    found = Optional.of(between(upper, lower, run, context));
                }
            }
        }
        return found.orElseThrow();
    }

    private static Observation between(Shot upper, Shot lower, double runMm, ReviewContext context) {
        Sheet working = Sheet.blank();
        working.given(
                "z_up",
                upper.levelMm(),
                MeasureUnit.MILLIMETRE,
                "level uphill, " + placed(upper, context),
                "",
                upper.pointer());
        working.given(
                "z_down",
                lower.levelMm(),
                MeasureUnit.MILLIMETRE,
                "level downhill, " + placed(lower, context),
                "",
                lower.pointer());
        double run = working.given("l", runMm, MeasureUnit.MILLIMETRE, "run along the fall", "");
        double i = working.calculate(GRADIENT);
        return new Observation.Found(
                Measure.of(i, MeasureUnit.RATIO),
                "from " + placed(upper, context) + " to " + placed(lower, context),
                working.steps());
    }

    private static String placed(Shot shot, ReviewContext context) {
        return "x = " + context.written(Measure.mm(shot.at().xMm())) + ", y = "
                + context.written(Measure.mm(shot.at().yMm()));
    }

    private static double downhillMm(Direction d, PlanPoint p) {
        return (p.xMm() * d.dx() + p.yMm() * d.dy()) / StrictMath.hypot(d.dx(), d.dy());
    }

    private static boolean isOn(PlatformLayout platform, PlanPoint p) {
        List<Coordinate> ring = new ArrayList<>();
        platform.platform().outline().forEach(c -> ring.add(new Coordinate(c.xMm(), c.yMm())));
        ring.add(ring.get(0).copy());
        return SimplePointInAreaLocator.locatePointInPolygon(
                        new Coordinate(p.xMm(), p.yMm()),
                        new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new)))
                != Location.EXTERIOR;
    }
}
