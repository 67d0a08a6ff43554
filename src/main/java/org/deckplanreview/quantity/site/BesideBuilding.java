package org.deckplanreview.quantity.site;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.FrameLevels;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Tolerances;
import org.deckplanreview.submission.Wall;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** What the building beside the deck needs of it: its damp-proof course dry, its vents and flues open. */
public final class BesideBuilding {
    private static final Formula BELOW_COURSE = Formula.of("h = z_dpc - z_b", MeasureUnit.MILLIMETRE, "");

    private static final Pointer WALLS = Pointer.of("/site/walls");

    private BesideBuilding() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "boards below damp-proof course",
                        MeasureUnit.MILLIMETRE,
                        EdgeRun.class,
                        List.of(SubjectKind.EDGES),
                        "How far the boards along a wall lie below its damp-proof course, at the end of the edge where they lie"
                                + " higher; negative above it.",
                        BesideBuilding::belowDampProofCourse),
                flag(
                        "vents covered",
                        PlatformLayout.class,
                        List.of(SubjectKind.PLATFORMS),
                        "Whether the platform covers or closes in an airbrick, flue, vent or meter; not for a platform of which the"
                                + " submission does not say it.",
                        (platform, context) -> platform.platform()
                                .coversVents()
                                .map(covers -> Observations.flag(covers, ""))
                                .orElseGet(() -> Observations.notApplicable(
                                        "the submission does not say whether the platform covers airbricks, flues, vents or"
                                                + " meters"))));
    }

    private static Observation belowDampProofCourse(EdgeRun edge, ReviewContext context) {
        if (edge.edgeKind().filter(EdgeKind.WALL::equals).isEmpty()) {
            return Observations.notApplicable("no wall stands along the edge");
        }
        List<Wall> walls = context.submission().site().walls();
        Wall wall = wallAlong(edge, context, walls);
        Pointer pointer = WALLS.child(walls.indexOf(wall)).child("dampProofCourseLevel");
        if (wall.dampProofCourseLevel().isEmpty()) {
            return Observations.missing(
                    pointer,
                    "the level of the damp-proof course of "
                            + wall.label().orElse("wall " + wall.id()) + ", "
                            + context.submission().units().word());
        }
        FrameLevels levels = FrameLevels.of(context.layout(), context.layout().platformOf(edge));
        Derived<Double> boards = levels.boardsTopMm(edge.line().from())
                .with(levels.boardsTopMm(edge.line().to()), Math::max);
        if (!boards.isKnown()) {
            return Observations.missing(boards.needs());
        }
        Sheet working = Sheet.blank();
        double course = working.given(
                "z_dpc",
                wall.dampProofCourseLevel().get().mm(),
                MeasureUnit.MILLIMETRE,
                "level of the damp-proof course",
                "",
                pointer);
        working.given("z_b", boards.get(), MeasureUnit.MILLIMETRE, "highest level of the boards along the wall", "");
        double below = working.calculate(BELOW_COURSE);
        return Observations.found(below, MeasureUnit.MILLIMETRE, working);
    }

    /** The wall that the platform's ledger is fixed to, if it stands along the edge; else the nearest. */
    private static Wall wallAlong(EdgeRun edge, ReviewContext context, List<Wall> walls) {
        Optional<String> ofLedger =
                context.layout().platformOf(edge).platform().ledger().map(Ledger::wall);
        return walls.stream()
                .filter(w -> ofLedger.filter(w.id()::equals).isPresent())
                .filter(w -> farthestMm(edge.line(), w.line()) <= Tolerances.LEDGER_MM)
                .findFirst()
                .or(() -> walls.stream().min(Comparator.comparingDouble(w -> farthestMm(edge.line(), w.line()))))
                .orElseThrow();
    }

    /** How far the edge's farther end lies from a wall; the submission's checks see that one wall is near to both ends. */
    private static double farthestMm(PlanLine edge, PlanLine wall) {
        LineSegment face = new LineSegment(coordinate(wall.from()), coordinate(wall.to()));
        return Math.max(face.distance(coordinate(edge.from())), face.distance(coordinate(edge.to())));
    }

    private static Coordinate coordinate(PlanPoint point) {
        return new Coordinate(point.xMm(), point.yMm());
    }
}
