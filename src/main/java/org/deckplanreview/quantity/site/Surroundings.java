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
import org.deckplanreview.layout.Deck;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.FrameLevels;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.GuardInfill;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Wall;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** What stands beside a deck and lies on it: walls with their foundations, snow, and guards beside flights. */
public final class Surroundings {
    private static final Formula BELOW_TOP = Formula.of("h = z_wall - z", MeasureUnit.MILLIMETRE, "");
    private static final Formula EDGE_TO_EDGE = Formula.of("e = d - f - a", MeasureUnit.MILLIMETRE, "");
    private static final Formula SNOW_OVER_GROUND_SNOW = Formula.of("μ = s / s_k", MeasureUnit.RATIO, "");

    private static final Pointer WALLS = Pointer.of("/site/walls");

    private Surroundings() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "wall top above boards",
                        MeasureUnit.MILLIMETRE,
                        EdgeRun.class,
                        List.of(SubjectKind.EDGES),
                        "The height of the top of the wall beside an edge above the boards there, where the top's level is"
                                + " stated.",
                        Surroundings::wallTop),
                number(
                        "footing below the line from a foundation",
                        MeasureUnit.MILLIMETRE,
                        FootingPlace.class,
                        List.of(SubjectKind.FOOTINGS),
                        "How far the underside of the footing lies below the line that falls at 45 degrees from the underside"
                                + " of a wall's foundation; negative above it, and of the walls whose foundations are stated.",
                        Surroundings::belowFoundationLine),
                number(
                        "snow on deck over snow on ground",
                        MeasureUnit.RATIO,
                        Deck.class,
                        List.of(SubjectKind.DECK),
                        "The snow load on the deck over that on the ground, where both are stated.",
                        (deck, context) -> snow(context.submission().site())),
                flag(
                        "flight guard climbable",
                        StairRun.class,
                        List.of(SubjectKind.STAIRS),
                        "Whether the guard beside the flight gives a foothold; horizontal rails always do.",
                        Surroundings::climbable));
    }

    private static Observation wallTop(EdgeRun edge, ReviewContext context) {
        if (edge.edgeKind().filter(EdgeKind.WALL::equals).isEmpty()) {
            return Observations.notApplicable("no wall lies along the edge");
        }
        List<Wall> walls = context.submission().site().walls();
        Optional<Wall> nearest = walls.stream().min(Comparator.comparingDouble(w -> farthestMm(edge.line(), w)));
        if (nearest.flatMap(Wall::topLevel).isEmpty()) {
            return Observations.notApplicable("the level of the wall's top is not stated");
        }
        PlatformLayout platform = context.layout().platformOf(edge);
        FrameLevels levels = FrameLevels.of(context.layout(), platform);
        Derived<Double> boards = levels.boardsTopMm(edge.line().from())
                .with(levels.boardsTopMm(edge.line().to()), Math::max);
        if (!boards.isKnown()) {
            return Observations.missing(boards.needs());
        }
        Sheet w = Sheet.blank();
        double top = w.given(
                "z_wall",
                nearest.get().topLevel().orElseThrow().mm(),
                MeasureUnit.MILLIMETRE,
                "level of the wall's top",
                "",
                WALLS.child(walls.indexOf(nearest.get())).child("topLevel"));
        double z = w.given("z", boards.get(), MeasureUnit.MILLIMETRE, "highest level of the boards along the edge", "");
        return Observations.found(w.calculate(BELOW_TOP), MeasureUnit.MILLIMETRE, w);
    }

    /** Of the edge's farther end; an edge along a wall lies within the tolerance of one. */
    private static double farthestMm(PlanLine edge, Wall wall) {
        LineSegment face = segment(wall.line());
        return Math.max(face.distance(coordinate(edge.from())), face.distance(coordinate(edge.to())));
    }

    private static Observation belowFoundationLine(FootingPlace footing, ReviewContext context) {
        List<Wall> walls = context.submission().site().walls().stream()
                .filter(wall -> wall.foundationDepth().isPresent())
                .toList();
        if (walls.isEmpty()) {
            return Observations.notApplicable("no wall's foundation is stated");
        }
        Optional<Double> depth = footing.footing().depth().map(d -> d.mm());
        Optional<PlanPoint> centre = footing.footing().at().or(() -> post(footing, context));
        if (depth.isEmpty() || centre.isEmpty()) {
            return Observations.missing(
                    footing.pointer().child(depth.isEmpty() ? "depth" : "at"),
                    (depth.isEmpty() ? "the depth of " : "the place of ") + footing.label());
        }
        Wall nearest = walls.stream()
                .min(Comparator.comparingDouble(wall ->
                        wall.foundationDepth().orElseThrow().mm() + asideMm(footing.footing(), centre.get(), wall)))
                .orElseThrow();
        Sheet w = Sheet.blank();
        double d = w.given(
                "d",
                depth.get(),
                MeasureUnit.MILLIMETRE,
                "depth of the footing",
                "",
                footing.pointer().child("depth"));
        double f = w.given(
                "f",
                nearest.foundationDepth().orElseThrow().mm(),
                MeasureUnit.MILLIMETRE,
                "depth of the wall's foundation",
                "",
                WALLS.child(context.submission().site().walls().indexOf(nearest))
                        .child("foundationDepth"));
        double a = w.given(
                "a",
                asideMm(footing.footing(), centre.get(), nearest),
                MeasureUnit.MILLIMETRE,
                "from the wall's face to the footing's nearer side",
                "");
        return Observations.found(w.calculate(EDGE_TO_EDGE), MeasureUnit.MILLIMETRE, w);
    }

    private static Optional<PlanPoint> post(FootingPlace footing, ReviewContext context) {
        return context.layout().platformOf(footing).platform().posts().stream()
                .filter(p -> footing.posts().contains(p.id()))
                .map(Post::at)
                .findFirst();
    }

    private static double asideMm(Footing footing, PlanPoint centre, Wall wall) {
        double half = Math.max(
                        footing.breadth().mm(),
                        footing.length().map(l -> l.mm()).orElse(0.0))
                / 2;
        return Math.max(0, segment(wall.line()).distance(coordinate(centre)) - half);
    }

    private static LineSegment segment(PlanLine line) {
        return new LineSegment(coordinate(line.from()), coordinate(line.to()));
    }

    private static Coordinate coordinate(PlanPoint p) {
        return new Coordinate(p.xMm(), p.yMm());
    }

    private static Observation snow(Site site) {
        Optional<Measure> deck = site.snowLoad();
        Optional<Measure> ground = site.groundSnowLoad();
        if (deck.isEmpty() || ground.filter(g -> g.value() > 0).isEmpty()) {
            return Observations.notApplicable("snow on the deck and on the ground are not both stated");
        }
        Sheet w = Sheet.blank();
        double s = w.given(
                "s",
                deck.get().in(MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
                MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                "snow load on the deck",
                "",
                Pointer.of("/site/snowLoad"));
        w.given(
                "s_k",
                ground.get().in(MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
                MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                "snow load on the ground",
                "",
                Pointer.of("/site/groundSnowLoad"));
        return Observations.found(w.calculate(SNOW_OVER_GROUND_SNOW), MeasureUnit.RATIO, w);
    }

    private static Observation climbable(StairRun stair, ReviewContext context) {
        if (stair.guard().isEmpty()) {
            return Observations.notApplicable("no guard stands beside the flight");
        }
        PlatformLayout platform = context.layout().platformOf(stair);
        return stair.guard()
                        .get()
                        .infill()
                        .filter(GuardInfill.HORIZONTAL_RAILS::equals)
                        .isPresent()
                ? Observations.flag(true, "horizontal rails")
                : Observations.flag(
                        stair.guard().get().climbable(),
                        platform.pointer()
                                .child("guards")
                                .child(platform.platform()
                                        .guards()
                                        .indexOf(stair.guard().get()))
                                .child("climbable"),
                        "whether " + stair.guard().get().displayLabel() + " gives a foothold to climb");
    }
}
