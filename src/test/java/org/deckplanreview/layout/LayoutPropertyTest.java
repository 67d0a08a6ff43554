package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Submission;

/**
 * Laws that hold for any deck: joists share out the whole outline and no more (the area by the shoelace formula), and a
 * deck does not change by being turned, moved, mirrored or named otherwise.
 */
class LayoutPropertyTest {

    private static final double SAME_MM = 1e-6;

    @Property(tries = 60)
    void the_joists_share_out_a_rectilinear_outline(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        List<PlanPoint> outline = rectilinear(random);
        assertSharedOut(outline, random.nextBoolean() ? 0 : 90);
    }

    @Property(tries = 60)
    void the_joists_share_out_a_star_shaped_outline(
            @ForAll @IntRange(max = 1_000_000) int seed, @ForAll @IntRange(max = 359) int degrees) {
        assertSharedOut(star(new Random(seed)), degrees);
    }

    private static void assertSharedOut(List<PlanPoint> outline, double degrees) {
        double angle = StrictMath.toRadians(degrees);
        PlatformLayout p = Decks.outline(outline)
                .joists(StrictMath.cos(angle), StrictMath.sin(angle), 400)
                .heavyItem("all", 1, -9e4, -9e4, 9e4, -9e4, 9e4, 9e4, -9e4, 9e4)
                .heavyItem("half", 1, -9e4, -9e4, 700, -9e4, 700, 9e4, -9e4, 9e4)
                .heavyItem("rest", 1, 700, -9e4, 9e4, -9e4, 9e4, 9e4, 700, 9e4)
                .platform();
        double area = shoelace(outline);
        assertThat(p.areaMm2()).isCloseTo(area, within(area * 1e-12));
        double own = stripsArea(p, Optional.empty());
        assertThat(own).isCloseTo(area, within(area * 1e-9));
        assertThat(stripsArea(p, Optional.of(0))).isCloseTo(area, within(area * 1e-9));
        assertThat(stripsArea(p, Optional.of(1)) + stripsArea(p, Optional.of(2)))
                .isCloseTo(area, within(area * 1e-9));
        for (JoistLine j : p.joists()) {
            // An item that covers the deck lies on each joist as the deck itself does.
            assertThat(stripsArea(j, Optional.of(0))).isCloseTo(stripsArea(j, Optional.empty()), within(area * 1e-9));
            assertThat(j.strips()).allSatisfy(s -> {
                assertThat(s.fromMm()).isBetween(0.0, s.toMm());
                assertThat(s.toMm()).isLessThanOrEqualTo(j.lengthMm());
                assertThat(s.areaMm2()).isPositive();
            });
        }
    }

    private static double stripsArea(PlatformLayout p, Optional<Integer> item) {
        return p.joists().stream().mapToDouble(j -> stripsArea(j, item)).sum();
    }

    private static double stripsArea(JoistLine j, Optional<Integer> item) {
        return j.strips().stream()
                .filter(s -> s.heavyItem().equals(item))
                .mapToDouble(AreaStrip::areaMm2)
                .sum();
    }

    private static double shoelace(List<PlanPoint> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            PlanPoint p = corners.get(i);
            PlanPoint q = corners.get((i + 1) % corners.size());
            twice += p.xMm() * q.yMm() - p.yMm() * q.xMm();
        }
        return Math.abs(twice) / 2;
    }

    @Property(tries = 30)
    void a_deck_turned_by_90_degrees_has_the_same_figures(@ForAll @IntRange(max = 1_000_000) int seed) {
        assertSameFigures(deck(rectilinear(new Random(seed))), Motion.quarterTurn());
    }

    @Property(tries = 30)
    void a_deck_turned_and_moved_has_the_same_figures(
            @ForAll @IntRange(max = 1_000_000) int seed,
            @ForAll @IntRange(max = 359) int degrees,
            @ForAll @IntRange(min = -20_000, max = 20_000) int dx) {
        assertSameFigures(withWall(rectilinear(new Random(seed))), Motion.turn(degrees + 0.37, dx, -dx / 3.0));
        assertSameFigures(withWall(star(new Random(seed))), Motion.turn(degrees + 0.37, dx, -dx / 3.0));
    }

    @Property(tries = 30)
    void a_mirrored_deck_has_the_same_figures(@ForAll @IntRange(max = 1_000_000) int seed) {
        assertSameFigures(withWall(rectilinear(new Random(seed))), Motion.mirror());
        assertSameFigures(withWall(star(new Random(seed))), Motion.mirror());
    }

    @Property(tries = 10)
    void a_renamed_deck_has_the_same_figures(@ForAll @IntRange(max = 1_000_000) int seed) {
        List<PlanPoint> outline = rectilinear(new Random(seed));
        PlatformLayout renamed = Layout.derive(deck(outline).label("garden").submission())
                .platforms()
                .get(0);
        assertThat(figures(renamed)).isEqualTo(figures(deck(outline).platform()));
    }

    @Property(tries = 20)
    void an_outline_may_start_at_any_corner_and_run_either_way(@ForAll @IntRange(max = 1_000_000) int seed) {
        List<PlanPoint> outline = new ArrayList<>(rectilinear(new Random(seed)));
        List<Figures> before = figures(deck(outline).platform());
        Collections.rotate(outline, 3);
        Collections.reverse(outline);
        assertClose(figures(deck(outline).platform()), before);
    }

    private record Figures(String of, List<Double> sorted) {}

    private static void assertSameFigures(Decks deck, Motion motion) {
        Submission moved = motion.apply(deck.submission());
        assertClose(figures(Layout.derive(moved).platforms().get(0)), figures(deck.platform()));
    }

    private static void assertClose(List<Figures> actual, List<Figures> expected) {
        for (int i = 0; i < expected.size(); i++) {
            Figures e = expected.get(i);
            Figures a = actual.get(i);
            assertThat(a.sorted()).as(e.of()).hasSameSizeAs(e.sorted());
            for (int k = 0; k < e.sorted().size(); k++) {
                double value = e.sorted().get(k);
                assertThat(a.sorted().get(k))
                        .as(e.of() + " " + k)
                        .isCloseTo(value, within(SAME_MM * Math.max(1, Math.abs(value) / 1000)));
            }
        }
    }

    private static List<Figures> figures(PlatformLayout p) {
        return List.of(
                sorted("joist lengths", p.joists(), JoistLine::lengthMm),
                sorted("spacings", p.joists(), JoistLine::spacingMm),
                sorted("field sizes", p.joists(), JoistLine::fieldSize),
                sorted("spans of joists", p.joists().stream().flatMap(j -> j.spans().stream()), Span::lengthMm),
                sorted("areas of joists", p.joists(), j -> stripsArea(j, Optional.empty())),
                sorted("items on joists", p.joists(), j -> stripsArea(j, Optional.of(0))),
                sorted(
                        "contact lengths",
                        p.joists().stream().flatMap(j -> j.supports().stream()),
                        s -> s.contactLengthMm().orElse(0)),
                sorted("joists on beams", p.beams().stream(), b -> b.joists().size()),
                sorted("spans of beams", p.beams().stream().flatMap(b -> b.spans().stream()), Span::lengthMm),
                sorted(
                        "clearances of beams",
                        p.beams().stream(),
                        b -> b.groundClearanceMm().get()),
                sorted(
                        "clearances of joists",
                        p.joists(),
                        j -> j.groundClearanceMm().get()),
                sorted(
                        "clearance of boards",
                        p.boards().stream(),
                        b -> b.groundClearanceMm().get()),
                sorted("span of boards", p.boards().stream(), b -> b.spanMm().get()),
                sorted(
                        "overhang of boards",
                        p.boards().stream(),
                        b -> b.overhangMm().get()),
                sorted(
                        "angle to the fall",
                        p.boards().stream(),
                        b -> b.angleToFallDegrees().get()),
                sorted("heights of posts", p.posts().stream(), o -> o.heightMm().get()),
                sorted("drops", p.edges().stream(), e -> e.drop().get().largestMm()),
                sorted("largest drop", Stream.of(p), l -> l.largestDropMm().get()));
    }

    private static Figures sorted(String of, List<JoistLine> joists, ToDoubleFunction<JoistLine> figure) {
        return sorted(of, joists.stream(), figure);
    }

    private static <T> Figures sorted(String of, Stream<T> all, ToDoubleFunction<T> figure) {
        return new Figures(of, all.mapToDouble(figure).sorted().boxed().toList());
    }

    /** With beams, posts, a heavy item and a fall over ground surveyed on a grid, whose squares have two equal diagonals. */
    private static Decks deck(List<PlanPoint> outline) {
        Decks deck = Decks.outline(outline)
                .level(150, 250, 900)
                .fall(80, 1, 3)
                .boards(1, 1)
                .joists(0, 1, 400)
                .beam("b", 2, line(-4000, 450, 8000, 450), "a", "m", "z")
                .beam("c", 1, line(-4000, 2750, 8000, 2750), "m")
                .post("a", -300, 450)
                .post("m", 1200, 450)
                .post("z", 3900, 450)
                .pad("a", 400, 300, 50)
                .pad("m", 400, 300, 50)
                .pad("z", 400, 300, 50)
                .heavyItem("planter", 2, 350, 130, 1110, 130, 1110, 960, 350, 960);
        for (int x = -6000; x <= 9000; x += 1500) {
            for (int y = -6000; y <= 9000; y += 1500) {
                deck.ground(x, y, -(x * 7 + y * 13) / 1000.0 + (x / 1500 * 31 + y / 1500 * 17) % 11 * 9);
            }
        }
        return deck;
    }

    private static Decks withWall(List<PlanPoint> outline) {
        return deck(outline).edge(EdgeKind.WALL, new PlanLine(outline.get(0), outline.get(1)));
    }

    /** Columns side by side, each overlapping the one before; all coordinates are multiples of 100. */
    private static List<PlanPoint> rectilinear(Random random) {
        int columns = 1 + random.nextInt(5);
        List<PlanPoint> lower = new ArrayList<>();
        List<PlanPoint> upper = new ArrayList<>();
        double x = 0;
        double low = 0;
        double high = 1000 + 100 * random.nextInt(20);
        for (int i = 0; i < columns; i++) {
            double next = x + 300 + 100 * random.nextInt(15);
            lower.add(new PlanPoint(x, low));
            lower.add(new PlanPoint(next, low));
            upper.add(new PlanPoint(x, high));
            upper.add(new PlanPoint(next, high));
            x = next;
            double from = low + 100 * random.nextInt((int) ((high - low) / 100));
            low = from - 100 * random.nextInt(15);
            high = from + 300 + 100 * random.nextInt(15);
        }
        Collections.reverse(upper);
        lower.addAll(upper);
        return withoutRepeats(lower);
    }

    private static List<PlanPoint> withoutRepeats(List<PlanPoint> corners) {
        List<PlanPoint> kept = new ArrayList<>();
        for (PlanPoint p : corners) {
            if (kept.isEmpty() || !kept.get(kept.size() - 1).equals(p)) {
                kept.add(p);
            }
        }
        return kept;
    }

    /** Around (1000, 1000), corners in order of their angle, 700 to 3700 away. */
    private static List<PlanPoint> star(Random random) {
        int corners = 5 + random.nextInt(7);
        List<PlanPoint> outline = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * StrictMath.PI * (i + random.nextDouble() * 0.8) / corners;
            double radius = 700 + random.nextInt(3000);
            outline.add(new PlanPoint(1000 + radius * StrictMath.cos(angle), 1000 + radius * StrictMath.sin(angle)));
        }
        return outline;
    }
}
