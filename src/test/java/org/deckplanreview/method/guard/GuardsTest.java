package org.deckplanreview.method.guard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.method.TimberParameters.parameters;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Decks;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.TimberParameters;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.GuardInfill;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.submission.Occupancy;
import org.deckplanreview.submission.Stating;
import org.deckplanreview.submission.SubjectKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Guards with posts 100 x 100, rail 44 x 95, balusters 44 x 44, all C24. Loads are those of BS 6180:2011, Table 2 (0.74 kN/m
 * and 0.5 kN read on secondary pages that quote BS 6399-1:1996, Table 4; 3.0 and 1.5 from memory), deflection 25 mm of its
 * 6.4.1; strength by EN 1995-1-1 (2.14), (3.1), (6.11) with k_mod 0.7 (service class 3, short-term) and γ_M 1.3. Expected
 * values by hand.
 */
class GuardsTest {

    private static final double SPACING = 1200;
    private static final double HEIGHT = 1100;
    private static final String GUARD = "/platforms/0/guards/0";

    private Occupancy occupancy = Occupancy.SINGLE_DWELLING;
    private double spacing = SPACING;
    private Optional<Length> height = Optional.of(new Length(HEIGHT));
    private Optional<Length> leverArm = Optional.of(new Length(150));
    private Optional<Measure> resistance = Optional.of(Measure.of(12, MeasureUnit.KILONEWTON));
    private Optional<GuardInfill> infill = Optional.of(GuardInfill.BALUSTERS);
    private boolean posts = true;
    private Optional<String> rail = Optional.of("rail");
    private Optional<String> infillTimber = Optional.of("baluster");
    private double postDepth = 100;
    private Optional<Boolean> notched = Optional.empty();
    private Optional<Length> notchDepth = Optional.empty();

    private Evaluation evaluate(String method) {
        Layout layout = Decks.rectangle(4000, 3000)
                .occupancy(occupancy)
                .section("post", 100, postDepth)
                .section("rail", 44, 95)
                .section("baluster", 44, 44)
                .guard(Stating.a(Guard.class)
                        .with("id", "G1")
                        .with("height", height)
                        .with("infill", infill)
                        .with(
                                "posts",
                                posts
                                        ? Optional.of(new GuardPosts("post", new Length(spacing), leverArm, resistance))
                                        : Optional.empty())
                        .with("rail", rail)
                        .with("infillTimber", infillTimber)
                        .with("postsNotched", notched)
                        .with("postNotchDepth", notchDepth)
                        .made())
                .edge(EdgeKind.OPEN, Decks.line(0, 0, 4000, 0), Optional.of("G1"))
                .layout();
        ReviewContext context = new ReviewContext(layout, TimberParameters.NO_LOADS, List.of(Derived.known("A")));
        return Guards.methods().stream()
                .filter(m -> m.description().name().equals(method))
                .findFirst()
                .orElseThrow()
                .evaluate(layout.subjects(SubjectKind.GUARDS).get(0), parameters(), context);
    }

    private Evaluation.Measured measured(String method) {
        Evaluation e = evaluate(method);
        assertThat(e).isInstanceOf(Evaluation.Measured.class);
        Evaluation.Measured m = (Evaluation.Measured) e;
        assertThat(m.working().get(m.working().size() - 1).value()).isEqualTo(m.utilisation());
        return m;
    }

    private static double number(Evaluation.Measured m) {
        return ((Measure) m.found()).value();
    }

    private void asksFor(String method, String... pointers) {
        assertThat(evaluate(method))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        missing -> assertThat(missing.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly(pointers));
    }

    @Test
    void a_post_bends_under_the_line_load_of_one_spacing() {
        Evaluation.Measured m = measured("guard.postBending");
        assertThat(number(m)).as("1.5 x 0.74 x 1200 x 1100 x 6 / 100^3").isCloseTo(8.7912, within(1e-9));
        assertThat(((Measure) m.allowed()).value())
                .as("0.7 x 24 / 1.3 x 1.5^0.2")
                .isCloseTo(14.01466, within(1e-4));
    }

    /** 100 - 20.8 mm: (79.2 / 100)^2 = 0.6273 of 14.0147 N/mm2 is 8.791; 8.7912 is reached at 20.799 mm. */
    @ParameterizedTest
    @CsvSource({"20.79, true", "20.81, false"})
    void what_a_notch_leaves_of_a_post_bends(double depth, boolean complies) {
        notched = Optional.of(true);
        notchDepth = Optional.of(new Length(depth));
        assertThat(measured("guard.postBending").utilisation() <= 1).isEqualTo(complies);
    }

    @Test
    void a_notch_of_unknown_depth_leaves_the_post_open() {
        notched = Optional.of(true);
        asksFor("guard.postBending", GUARD + "/postNotchDepth");
    }

    @Test
    void a_notch_through_the_whole_post_is_out_of_scope() {
        notched = Optional.of(true);
        notchDepth = Optional.of(new Length(100));
        assertThat(evaluate("guard.postBending")).isInstanceOf(Evaluation.OutOfScope.class);
    }

    @Test
    void a_guard_that_does_not_say_is_taken_as_not_notched_and_the_report_says_so() {
        assertThat(measured("guard.postBending").assumptions()).anyMatch(a -> a.contains("not notched"));
        notched = Optional.of(false);
        assertThat(measured("guard.postBending").assumptions()).noneMatch(a -> a.contains("not notched"));
    }

    @ParameterizedTest
    @CsvSource({"1913, true", "1914, false"})
    void posts_of_100_mm_may_stand_1913_mm_apart(double apart, boolean complies) {
        spacing = apart;
        assertThat(measured("guard.postBending").utilisation() <= 1).isEqualTo(complies);
    }

    @Test
    void the_line_load_of_a_higher_guard_still_acts_at_1100_mm() {
        height = Optional.of(new Length(1500));
        assertThat(number(measured("guard.postBending"))).isCloseTo(8.7912, within(1e-9));
        height = Optional.of(new Length(900));
        assertThat(number(measured("guard.postBending"))).isCloseTo(8.7912 * 900 / 1100, within(1e-9));
    }

    @Test
    void a_public_guard_carries_3_kN_a_metre() {
        occupancy = Occupancy.PUBLIC;
        assertThat(number(measured("guard.postBending"))).isCloseTo(8.7912 * 3 / 0.74, within(1e-9));
    }

    @Test
    void a_post_needs_its_description_and_the_guards_height() {
        height = Optional.empty();
        asksFor("guard.postBending", GUARD + "/height");
        posts = false;
        asksFor("guard.postBending", GUARD + "/height", GUARD + "/posts");
        asksFor("guard.deflection", GUARD + "/height", GUARD + "/posts");
        asksFor("guard.railBending", GUARD + "/posts");
    }

    @Test
    void the_top_gives_way_by_the_post_and_the_rail() {
        assertThat(number(measured("guard.deflection")))
                .as("888 x 1100^3 / (3 x 11000 x 100^4 / 12) + 5 x 0.74 x 1200^4 / (384 x 11000 x 44 x 95^3 / 12)")
                .isCloseTo(4.29792 + 0.57777, within(1e-4));
    }

    @Test
    void above_the_load_a_post_leans_on_straight() {
        height = Optional.of(new Length(1300));
        assertThat(number(measured("guard.deflection")))
                .as("888 x 1100^2 x (3 x 1300 - 1100) / (6 x 11000 x 100^4 / 12) + 0.57777")
                .isCloseTo(5.47008 + 0.57777, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"56.2, true", "56.0, false"})
    void a_guard_gives_way_by_25_mm_at_most(double depth, boolean complies) {
        // 888 x 1100^3 x 12 / (3 x 11000 x 100 x d^3) = 24.422 at d = 56.03.
        postDepth = depth;
        assertThat(measured("guard.deflection").utilisation() <= 1).isEqualTo(complies);
    }

    @Test
    void deflection_needs_the_rail() {
        rail = Optional.empty();
        asksFor("guard.deflection", GUARD + "/rail");
        asksFor("guard.railBending", GUARD + "/rail");
    }

    @ParameterizedTest
    @CsvSource({"11.11, true", "11.1, true", "11.09, false"})
    void the_upper_fixing_holds_the_couple_and_the_load(double kN, boolean complies) {
        resistance = Optional.of(Measure.of(kN, MeasureUnit.KILONEWTON));
        Evaluation.Measured m = measured("guard.postFixing");
        assertThat(number(m)).as("1.332 x (1100 / 150 + 1)").isCloseTo(11.1, within(1e-9));
        assertThat(m.utilisation() <= 1 + 1e-12).isEqualTo(complies);
    }

    @Test
    void a_fixing_of_unknown_resistance_is_told_what_it_needs() {
        resistance = Optional.empty();
        assertThat(evaluate("guard.postFixing"))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        missing -> assertThat(missing.needs()).singleElement().satisfies(n -> {
                            assertThat(n.pointer().value()).isEqualTo(GUARD + "/posts/fixingResistance");
                            assertThat(n.what()).endsWith("in kN; it complies from 11.1 kN");
                        }));
        leverArm = Optional.empty();
        asksFor("guard.postFixing", GUARD + "/posts/fixingResistance", GUARD + "/posts/leverArm");
    }

    @ParameterizedTest
    @CsvSource({"2598, true", "2599, false"})
    void a_rail_of_44_by_95_spans_2598_mm(double apart, boolean complies) {
        spacing = apart;
        Evaluation.Measured m = measured("guard.railBending");
        assertThat(number(m)).isCloseTo(1.5 * 0.74 * apart * apart / 8 / (44 * 95 * 95 / 6.0), within(1e-9));
        assertThat(m.utilisation() <= 1).isEqualTo(complies);
    }

    @Test
    void a_baluster_takes_the_whole_load_on_one_place() {
        assertThat(number(measured("guard.infillBending")))
                .as("1.5 x 500 x 1100 / 4 x 6 / 44^3")
                .isCloseTo(14.52738, within(1e-4));
        infill = Optional.of(GuardInfill.HORIZONTAL_RAILS);
        assertThat(number(measured("guard.infillBending"))).isCloseTo(14.52738 * 1200 / 1100, within(1e-4));
    }

    @Test
    void infill_is_asked_for_refused_or_not_there() {
        infill = Optional.empty();
        asksFor("guard.infillBending", GUARD + "/infill");
        infill = Optional.of(GuardInfill.PANEL);
        assertThat(evaluate("guard.infillBending")).isInstanceOf(Evaluation.OutOfScope.class);
        infill = Optional.of(GuardInfill.NONE);
        assertThat(evaluate("guard.infillBending")).isInstanceOf(Evaluation.NotApplicable.class);
        infill = Optional.of(GuardInfill.BALUSTERS);
        infillTimber = Optional.empty();
        asksFor("guard.infillBending", GUARD + "/infillTimber");
    }

    @Test
    void needs_say_what_to_give() {
        posts = false;
        Evaluation.Missing missing = (Evaluation.Missing) evaluate("guard.postFixing");
        assertThat(missing.needs())
                .extracting(Need::what)
                .containsExactly("the posts of guard G1: their timber, spacing and fixing");
    }
}
