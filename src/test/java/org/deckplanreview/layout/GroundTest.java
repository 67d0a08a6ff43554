package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.GroundLevel;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.Stating;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

/** The ground's surface. Expected values by linear interpolation by hand. */
class GroundTest {

    private static final Need SURVEY = new Need(
            Pointer.of("/site/groundLevels"),
            "ground levels, one for level ground or three or more surveyed points that cover the deck");

    private static GroundSurface survey(double... xyz) {
        List<GroundLevel> levels = new ArrayList<>();
        for (int i = 0; i < xyz.length; i += 3) {
            levels.add(new GroundLevel(new Length(xyz[i]), new Length(xyz[i + 1]), new Length(xyz[i + 2])));
        }
        return survey(levels);
    }

    private static GroundSurface survey(List<GroundLevel> levels) {
        return GroundSurface.of(
                Stating.a(Site.class).with("groundLevels", levels).made());
    }

    private static double level(GroundSurface ground, double x, double y) {
        return ground.levelMm(new PlanPoint(x, y)).get();
    }

    @Test
    void one_level_holds_everywhere() {
        assertThat(level(survey(0, 0, -350), 1e6, -1e6)).isEqualTo(-350);
    }

    @Test
    void no_level_and_two_levels_leave_the_ground_unknown() {
        assertThat(survey().levelMm(new PlanPoint(0, 0)).needs()).containsExactly(SURVEY);
        assertThat(survey(0, 0, 0, 100, 0, 0).levelMm(new PlanPoint(0, 0)).needs())
                .containsExactly(SURVEY);
    }

    @Test
    void points_on_one_line_leave_the_ground_unknown() {
        assertThat(survey(0, 0, 0, 100, 100, 0, 300, 300, 0, 200, 200, 5)
                        .levelMm(new PlanPoint(100, 100))
                        .needs())
                .containsExactly(SURVEY);
    }

    @Test
    void ground_is_linear_between_three_points() {
        GroundSurface ground = survey(0, 0, 0, 4000, 0, -400, 0, 2000, 100);
        // A plane: -x / 10 + y / 20.
        assertThat(level(ground, 1000, 500)).isCloseTo(-100 + 25, within(1e-9));
        assertThat(level(ground, 0, 0)).isEqualTo(0);
        assertThat(level(ground, 2000, 1000)).isCloseTo(-200 + 50, within(1e-9));
    }

    @Test
    void ground_is_unknown_more_than_a_millimetre_outside_the_survey() {
        GroundSurface ground = survey(0, 0, 0, 4000, 0, -400, 0, 2000, 100);
        assertThat(level(ground, 1000, -0.9)).isCloseTo(-100, within(1e-9));
        assertThat(ground.levelMm(new PlanPoint(1000, -1.1)).needs()).containsExactly(SURVEY);
    }

    @Test
    void of_two_equal_diagonals_the_lower_one_is_taken() {
        // A square: one diagonal joins levels 0 and 0, the other -100 and 300. Midpoints 0 and 100: the first.
        assertThat(level(survey(0, 0, 0, 100, 0, -100, 100, 100, 0, 0, 100, 300), 50, 50))
                .isEqualTo(0);
        // Turned by 90 degrees, and with the other diagonal the lower one.
        assertThat(level(survey(0, 0, -100, 100, 0, 0, 100, 100, 300, 0, 100, 0), 50, 50))
                .isEqualTo(0);
        assertThat(level(survey(0, 0, 0, 100, 0, -500, 100, 100, 0, 0, 100, 300), 50, 50))
                .isEqualTo(-100);
    }

    @Test
    void of_two_levels_at_one_place_the_lower_is_taken() {
        assertThat(level(survey(0, 0, 7, 100, 0, 0, 0, 100, 0, 0, 0, 5), 0, 0)).isEqualTo(5);
    }

    @Test
    void the_order_of_the_survey_does_not_matter() {
        List<GroundLevel> levels = new ArrayList<>();
        for (int x = 0; x < 5; x++) {
            for (int y = 0; y < 4; y++) {
                levels.add(new GroundLevel(new Length(x * 1000), new Length(y * 1000), new Length(x * y * 37 % 100)));
            }
        }
        GroundSurface inOrder = survey(levels);
        Collections.shuffle(levels, new Random(7));
        GroundSurface shuffled = survey(levels);
        for (int i = 0; i < 40; i++) {
            PlanPoint p = new PlanPoint(i * 99.5, i * 74.25);
            assertThat(shuffled.levelMm(p)).isEqualTo(inOrder.levelMm(p));
        }
    }

    @Test
    void a_line_bends_where_it_crosses_the_triangles() {
        GroundSurface ground = survey(0, 0, 0, 4000, 0, 0, 4000, 4000, 0, 0, 4000, 0, 1000, 2000, 50);
        // Edges from (1000, 2000) to the corners: y = 1000 meets them at x = 500 and at 1000 + 3000 x 1000 / 2000.
        assertThat(ground.bends(line(0, 1000, 4000, 1000)).stream().map(PlanPoint::xMm))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b))
                .containsExactly(0.0, 500.0, 2500.0, 4000.0);
    }

    @Property(tries = 200)
    void levels_of_a_plane_are_found_again_between_the_points(
            @ForAll @IntRange(min = 0, max = 100_000) int seed,
            @ForAll @IntRange(min = -200, max = 200) int slopeX,
            @ForAll @IntRange(min = -200, max = 200) int slopeY) {
        Random random = new Random(seed);
        List<GroundLevel> levels = new ArrayList<>();
        for (double[] corner : new double[][] {{0, 0}, {6000, 0}, {6000, 5000}, {0, 5000}}) {
            levels.add(onPlane(corner[0], corner[1], slopeX, slopeY));
        }
        for (int i = 0; i < 12; i++) {
            levels.add(onPlane(random.nextInt(6000), random.nextInt(5000), slopeX, slopeY));
        }
        GroundSurface ground = survey(levels);
        for (int i = 0; i < 30; i++) {
            double x = random.nextDouble() * 6000;
            double y = random.nextDouble() * 5000;
            assertThat(level(ground, x, y)).isCloseTo(x * slopeX / 1000 + y * slopeY / 1000, within(1e-6));
        }
    }

    @Property(tries = 50)
    void a_survey_grid_turned_by_any_angle_is_the_same_ground(@ForAll @IntRange(max = 359_999) int thousandths) {
        // Points of a grid lie on lines and circles; turned, they do so but for rounding.
        Motion motion = Motion.turn(thousandths / 1000.0, 13_000, -4_333);
        List<GroundLevel> grid = new ArrayList<>();
        List<GroundLevel> turned = new ArrayList<>();
        for (int x = 0; x < 8; x++) {
            for (int y = 0; y < 6; y++) {
                Length z = new Length((x * 31 + y * 17) % 11 * 9);
                PlanPoint p = new PlanPoint(x * 1500, y * 1500);
                grid.add(new GroundLevel(new Length(p.xMm()), new Length(p.yMm()), z));
                turned.add(new GroundLevel(
                        new Length(motion.apply(p).xMm()),
                        new Length(motion.apply(p).yMm()),
                        z));
            }
        }
        GroundSurface before = survey(grid);
        GroundSurface after = survey(turned);
        for (int i = 0; i <= 60; i++) {
            PlanPoint p = new PlanPoint(i * 175, i * 731 % 7500);
            assertThat(after.levelMm(motion.apply(p)).get())
                    .isCloseTo(before.levelMm(p).get(), within(1e-6));
        }
    }

    /** Reference: the incremental Delaunay triangulation of the JTS Topology Suite 1.20, for points in general position. */
    @Property(tries = 50)
    void the_triangles_are_those_of_a_reference_library(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        List<Coordinate> points = Stream.generate(
                        () -> new Coordinate(random.nextDouble() * 9000, random.nextDouble() * 7000, 0))
                .limit(3 + random.nextInt(40))
                .sorted()
                .toList();
        DelaunayTriangulationBuilder reference = new DelaunayTriangulationBuilder();
        reference.setSites(points);
        Geometry expected = reference.getTriangles(new GeometryFactory());
        assertThat(Triangulation.of(points).stream()
                        .map(t -> corners(points.get(t.a()), points.get(t.b()), points.get(t.c()))))
                .containsExactlyInAnyOrderElementsOf(IntStream.range(0, expected.getNumGeometries())
                        .mapToObj(expected::getGeometryN)
                        .map(Geometry::getCoordinates)
                        .map(c -> corners(c[0], c[1], c[2]))
                        .toList());
    }

    private static List<Coordinate> corners(Coordinate a, Coordinate b, Coordinate c) {
        return Stream.of(a, b, c).sorted().toList();
    }

    private static GroundLevel onPlane(double x, double y, double slopeX, double slopeY) {
        return new GroundLevel(new Length(x), new Length(y), new Length(x * slopeX / 1000 + y * slopeY / 1000));
    }
}
