package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SubmissionReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Posts and braces. Formulas by EN 1995-1-1:2004+A1+A2, 6.2.4 and 6.3.2; the column factor of a slender stud by a worked
 * example of a Eurocode 5 textbook (secondary page); forces by plain statics.
 */
class PostsAndBracesTest {

    private static final Method POST = new PostCompression();
    private static final Method SWAY = new PostSway();
    private static final Method SLENDERNESS = new Slenderness();
    private static final Method BRACE = new BraceCompression();
    private static final Method FIXING = new BraceFixing();

    private static final StandardParameters PARAMETERS = StandardParameters.ofEurocodes()
            .with("notionalShare", 0.025)
            .with("crowdShare", 0)
            .with("twistShare", 0)
            .with("unstatedWindPressure", 0, MeasureUnit.KILONEWTON_PER_SQUARE_METRE)
            .with("windFactor", 1.5)
            .with("windDuration", "instantaneous");

    /** f_c,0,d of C24, service class 3, medium term: 0.65 * 21 / 1.3. */
    private static final double FC0D = 0.65 * 21 / 1.3;

    /** f_m,d of C24 at a depth of 100 mm: 0.65 * 24 / 1.3 times k_h = (150 / 100)^0.2. */
    private static final double FMD_100 = 0.65 * 24 / 1.3 * StrictMath.pow(1.5, 0.2);

    private static StrengthClass classOf(String name) {
        return StrengthClass.find(PARAMETERS, name).orElseThrow();
    }

    private static Evaluation.Measured measured(Evaluation e) {
        assertThat(e).isInstanceOf(Evaluation.Measured.class);
        return (Evaluation.Measured) e;
    }

    private static double use(PostPiece piece, Method method) {
        return measured(piece.evaluate(method, PARAMETERS)).utilisation();
    }

    private static void assertMissing(Evaluation e, String pointer) {
        assertThat(e)
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly(pointer));
    }

    /** Textbook stud 44 x 100 of C16, slenderness 129.9: 2.32, 3.39 and, by (6.25), 0.170. */
    @Test
    void a_slender_stud_has_the_column_factor_of_the_textbook() {
        Sheet stud = buckled(1650, "C16", 44);
        assertThat(stud.value("λ_z")).isCloseTo(129.9, within(0.05));
        assertThat(stud.value("λ_rel,z")).isCloseTo(2.32, within(0.005));
        assertThat(stud.value("k_z")).isCloseTo(3.39, within(0.005));
        assertThat(stud.value("k_c,z")).isCloseTo(0.170, within(0.0005));
    }

    /** 6.3.2(2): up to 0.3 a column does not buckle; (6.25) goes on from 1 there. */
    @Test
    void a_column_of_relative_slenderness_0_3_is_still_stocky() {
        double length = 0.3 * Math.PI / Math.sqrt(21.0 / 7400) * 100 / Math.sqrt(12);
        assertThat(buckled(length * (1 - 1e-9), "C24", 100).value("k_c,z")).isEqualTo(1);
        assertThat(buckled(length * (1 + 1e-9), "C24", 100).value("k_c,z"))
                .isLessThan(1)
                .isCloseTo(1, within(1e-8));
    }

    private static Sheet buckled(double lengthMm, String strengthClass, double sideMm) {
        Material material = new Material(classOf(strengthClass), Pointer.of("/timbers/0/strengthClass"), PARAMETERS);
        Sheet sheet = Sheet.blank();
        sheet.given("l_ef,z", lengthMm, MeasureUnit.MILLIMETRE, "", "");
        sheet.given("b", sideMm, MeasureUnit.MILLIMETRE, "", "");
        material.enter(sheet, Strength.COMPRESSION_ALONG);
        material.enterLowStiffness(sheet);
        Buckling.ABOUT_Z.calculate(sheet);
        return sheet;
    }

    /** (6.24) with no moment: N / A against k_c,z f_c,0,d, by hand for 1.5 times an imposed load. */
    @ParameterizedTest
    @CsvSource({"0.99, 0.99", "1, 1", "1.01, 1.01"})
    void a_post_carries_its_column_load_and_no_more(double load, double utilisation) {
        double lambda = 2000 / (100 / Math.sqrt(12));
        double rel = lambda / Math.PI * Math.sqrt(21.0 / 7400);
        double k = 0.5 * (1 + 0.2 * (rel - 0.3) + rel * rel);
        double kc = 1 / (k + Math.sqrt(k * k - rel * rel));
        double resistance = kc * FC0D * 100 * 100;
        PostPiece post = PostPiece.post(100, 100).onLedger().loads(0, load * resistance / 1.5);
        assertThat(use(post, POST)).isCloseTo(utilisation, within(1e-9));
    }

    /** (6.19): 100 x 100 of 250 mm; 1.5 * 8 kN at (100 + 47) / 2 mm from its axis. */
    @Test
    void a_beam_on_one_side_bends_the_post() {
        PostPiece post = PostPiece.post(100, 100).onLedger().height(250).loads(0, 8000);
        double axial = 12_000 / 1e4 / FC0D;
        double bending = 12_000 * 73.5 / (1e6 / 6) / FMD_100;
        assertThat(use(post.seated(BeamSeating.BOTH_SIDES, 47), POST)).isCloseTo(axial * axial, within(1e-12));
        assertThat(use(post.seated(BeamSeating.ONE_SIDE, 47), POST)).isCloseTo(axial * axial + bending, within(1e-12));
    }

    /** (6.19): 100 x 100 of 250 mm; 1.5 * 8 kN at 20 mm from its axis. */
    @Test
    void a_beam_that_rests_off_the_axis_bends_the_post() {
        PostPiece post = PostPiece.post(100, 100)
                .onLedger()
                .height(250)
                .loads(0, 8000)
                .seated(BeamSeating.ON_POST, 94)
                .offBeam(20);
        double axial = 12_000 / 1e4 / FC0D;
        double bending = 12_000 * 20 / (1e6 / 6) / FMD_100;
        assertThat(use(post, POST)).isCloseTo(axial * axial + bending, within(1e-12));
    }

    /** 1.35 times a permanent load of 10 kN and a weight of 1 kN, permanent duration. */
    @Test
    void a_post_carries_its_own_weight_too() {
        PostPiece post =
                PostPiece.post(100, 100).onLedger().height(250).loads(10_000, 0).weight(1_000);
        double axial = 1.35 * 11_000 / 1e4 / (0.5 * 21 / 1.3);
        assertThat(use(post, POST)).isCloseTo(axial * axial, within(1e-12));
    }

    /** BS 5268-2:2002, Table 18 (from memory): 1.0, 0.85 and 2.0; a brace halves the height. */
    @Test
    void foot_head_and_braces_make_the_effective_length() {
        assertThat(slenderness(PostPiece.post(100, 100).onLedger())).isCloseTo(69.282, within(1e-3));
        assertThat(slenderness(PostPiece.post(100, 100).onLedger().foot(FootingKind.EMBEDDED_POST)))
                .isCloseTo(0.85 * 69.282, within(1e-3));
        assertThat(slenderness(PostPiece.post(100, 100).foot(FootingKind.EMBEDDED_POST)))
                .isCloseTo(2 * 69.282, within(1e-3));
        PostPiece braced =
                PostPiece.post(100, 100).brace("P1", 1, 0, 1000, 1000).brace("P1", 0, 1, 1000, 1000);
        assertThat(slenderness(braced)).isCloseTo(69.282 / 2, within(1e-3));
    }

    /** Braced along the beam alone, the post still leans across it. */
    @Test
    void a_brace_holds_one_direction_only() {
        PostPiece braced = PostPiece.post(100, 100).brace("P1", 1, 0, 1000, 1000);
        Evaluation.Measured m = measured(braced.evaluate(SLENDERNESS, PARAMETERS));
        assertThat(m.utilisation()).isCloseTo(2 * 69.282 / 180, within(1e-5));
        assertThat(m.remark()).isEqualTo(PostBasis.ACROSS);
    }

    private static double slenderness(PostPiece piece) {
        return ((Measure) measured(piece.evaluate(SLENDERNESS, PARAMETERS)).found()).value();
    }

    /** 180 (BS 5268-2:2002, 2.11.4, from memory): a side of 100 mm and 180 / sqrt(12) of it as length. */
    @ParameterizedTest
    @CsvSource({"-1, false", "0, false", "1, true"})
    void a_post_may_be_180_times_as_long_as_its_radius_of_gyration(double moreMm, boolean fails) {
        double height = 180 * 100 / Math.sqrt(12) + moreMm;
        double utilisation = use(PostPiece.post(100, 150).onLedger().height(height), SLENDERNESS);
        assertThat(utilisation > 1 + 1e-12).isEqualTo(fails);
        assertThat(utilisation).isCloseTo(height / (180 * 100 / Math.sqrt(12)), within(1e-12));
    }

    @Test
    void a_brace_is_as_slender_as_its_thinner_side_lets_it_be() {
        PostPiece piece = PostPiece.post(100, 100).brace("P1", 1, 0, 600, 800);
        assertThat(measured(piece.evaluateBrace(0, SLENDERNESS, PARAMETERS)).utilisation())
                .isCloseTo(1000 * Math.sqrt(12) / 47 / 180, within(1e-12));
    }

    /** Four embedded posts share 2.5 % of 4 * 1.5 * 10 kN = 1.5 kN: 375 N over 1 m each, with 15 kN, (6.23), (6.24). */
    @Test
    void embedded_posts_bend_out_of_the_ground() {
        PostPiece post = PostPiece.post(100, 100)
                .foot(FootingKind.EMBEDDED_POST)
                .height(1000)
                .loads(0, 10_000);
        double axial = use(post, POST);
        double bending = 375 * 1000 / (1e6 / 6) / FMD_100;
        assertThat(use(post, SWAY)).isCloseTo(axial + bending, within(1e-9));
    }

    /** 0.6 kN/m2 with a factor of 1.5 on nothing but the frame's edge, which cannot be known without boards and joists. */
    @Test
    void wind_needs_the_depth_of_the_frame() {
        PostPiece post =
                PostPiece.post(100, 100).foot(FootingKind.EMBEDDED_POST).wind("0.6 kN/m2");
        assertThat(post.evaluate(SWAY, PARAMETERS))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly("/platforms/0/boards", "/platforms/0/joists"));
    }

    /** (32 + 220 + 220) * 3600 of frame and 1100 * 3600 of guard on both sides: 9.6192 m2, by hand. */
    @Test
    void wind_blows_on_the_frames_edge_and_on_guards_on_both_sides() throws IOException {
        ReadResult read =
                new SubmissionReader().read(Files.readAllBytes(Path.of("sample-submissions/braced-deck.json")));
        Layout layout = Layout.derive(((ReadResult.Read) read).submission());
        ReviewContext context = new ReviewContext(
                layout, PostPiece.post(150, 150).loads(0, 10_000).statedLoads(), List.of());
        HorizontalLoad load = HorizontalLoad.of(layout.platforms().get(0), new Direction(1, 0), PARAMETERS, context)
                .get();
        assertThat(load.windAreaMm2()).isCloseTo(9_619_200, within(1e-6));
        Combination.Psi psi = Combination.Psi.find(PARAMETERS, "A").orElseThrow();
        Combination imposed = Combination.of(PARAMETERS, Combination.State.ULTIMATE, psi, false)
                .get(1);
        HorizontalLoad people = load.alternatives(psi).get(0);
        HorizontalLoad wind = load.alternatives(psi).get(1);
        double atGuards = 1.5 * 0.74 * 3600;
        assertThat(newtons(people, imposed)).isCloseTo(0.025 * 9 * 15_000 + atGuards, within(1e-6));
        assertThat(newtons(wind, imposed))
                .isCloseTo(0.025 * 9 * 15_000 + 0.7 * atGuards + 1.5 * 0.6e-3 * 9_619_200, within(1e-6));
        assertThat(wind.modification(imposed, PARAMETERS).kmod()).isEqualTo(0.9);
        assertThat(people.modification(imposed, PARAMETERS).kmod()).isEqualTo(0.65);
    }

    private static double newtons(HorizontalLoad load, Combination combination) {
        return load.calculate(Sheet.blank(), combination, PARAMETERS, "along the beam", Pointer.of("/platforms/0"));
    }

    /** One brace at its foot, at 45 degrees: (2.5 % + 5 %) of 4 * 1.5 * 10 kN, times sqrt(2). */
    @Test
    void people_who_sway_together_push_with_a_part_of_their_weight() {
        StandardParameters swaying = StandardParameters.ofEurocodes()
                .with("notionalShare", 0.025)
                .with("crowdShare", 0.05)
                .with("twistShare", 0)
                .with("unstatedWindPressure", 0, MeasureUnit.KILONEWTON_PER_SQUARE_METRE)
                .with("windFactor", 1.5)
                .with("windDuration", "instantaneous");
        PostPiece piece = PostPiece.post(100, 100).loads(0, 10_000).brace("P1", 1, 0, 2000, 2000);
        Evaluation.Measured m = measured(piece.evaluateBrace(0, BRACE, swaying));
        assertThat(((Measure) m.found()).value()).isCloseTo(0.075 * 60_000 * Math.sqrt(2), within(1e-6));
    }

    /** What the ruleset takes where no pressure is stated acts like one that is. */
    @Test
    void wind_that_is_not_stated_is_taken_from_the_ruleset() {
        StandardParameters windy = StandardParameters.ofEurocodes()
                .with("notionalShare", 0.025)
                .with("crowdShare", 0)
                .with("twistShare", 0)
                .with("unstatedWindPressure", 1, MeasureUnit.KILONEWTON_PER_SQUARE_METRE)
                .with("windFactor", 1.5)
                .with("windDuration", "instantaneous");
        assertThat(PostPiece.post(100, 100).foot(FootingKind.EMBEDDED_POST).evaluate(SWAY, windy))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly("/platforms/0/boards", "/platforms/0/joists"));
    }

    /** Braces along y at x = 0 and 3000 on a deck of 4000: the push, at 2000 and 10 % of 4000 more, is 900 off their middle. */
    @Test
    void the_brace_on_the_heavier_side_takes_the_twist() {
        PostPiece piece = PostPiece.post(100, 100)
                .loads(0, 10_000)
                .brace("P1", 0, 1, 2000, 2000)
                .brace("P4", 0, 1, 2000, 2000);
        StandardParameters off = StandardParameters.ofEurocodes()
                .with("notionalShare", 0.025)
                .with("crowdShare", 0)
                .with("twistShare", 0.1)
                .with("unstatedWindPressure", 0, MeasureUnit.KILONEWTON_PER_SQUARE_METRE)
                .with("windFactor", 1.5)
                .with("windDuration", "instantaneous");
        double even = 1500.0 / 2 * Math.sqrt(2);
        assertThat(((Measure) measured(piece.evaluateBrace(1, BRACE, off)).found()).value())
                .isCloseTo(even * (1 + 900.0 / 1500), within(1e-6));
        assertThat(((Measure) measured(piece.evaluateBrace(0, BRACE, off)).found()).value())
                .isCloseTo(even, within(1e-6));
    }

    @Test
    void a_ledger_takes_sideways_load_away_from_posts_and_braces() {
        PostPiece tied = PostPiece.post(100, 100)
                .foot(FootingKind.EMBEDDED_POST)
                .onLedger()
                .brace("P1", 1, 0, 600, 600);
        assertThat(tied.evaluate(SWAY, PARAMETERS)).isInstanceOf(Evaluation.NotApplicable.class);
        assertThat(tied.evaluateBrace(0, BRACE, PARAMETERS)).isInstanceOf(Evaluation.NotApplicable.class);
        assertThat(tied.evaluateBrace(0, FIXING, PARAMETERS)).isInstanceOf(Evaluation.NotApplicable.class);
    }

    @Test
    void posts_on_pads_hold_nothing_sideways_by_themselves() {
        assertThat(PostPiece.post(100, 100).evaluate(SWAY, PARAMETERS)).isInstanceOf(Evaluation.NotApplicable.class);
        PostPiece braced = PostPiece.post(100, 100).brace("P1", 1, 0, 600, 600).loads(0, 10_000);
        assertThat(braced.evaluatePost(1, SWAY, PARAMETERS)).isInstanceOf(Evaluation.NotApplicable.class);
        assertThat(braced.evaluate(SWAY, PARAMETERS)).isInstanceOf(Evaluation.Measured.class);
    }

    /** Moments about the post's head: 1.5 kN / 2 braces over 2000 mm against 800 mm, at 45 degrees: 2652 N. */
    @Test
    void a_brace_takes_the_push_over_the_posts_height() {
        PostPiece piece = PostPiece.post(100, 100)
                .loads(0, 10_000)
                .brace("P1", 1, 0, 800, 800)
                .brace("P4", -1, 0, 800, 800);
        double force = 1500.0 / 2 * 2000 / 800 * Math.sqrt(2);
        Evaluation.Measured m = measured(piece.evaluateBrace(0, BRACE, PARAMETERS));
        assertThat(((Measure) m.found()).value()).isCloseTo(force, within(1e-6));
        double rel = 800 * Math.sqrt(2) * Math.sqrt(12) / 47 / Math.PI * Math.sqrt(21.0 / 7400);
        double k = 0.5 * (1 + 0.2 * (rel - 0.3) + rel * rel);
        double kc = 1 / (k + Math.sqrt(k * k - rel * rel));
        assertThat(m.utilisation()).isCloseTo(force / (kc * FC0D * 47 * 97), within(1e-9));
    }

    /** A brace over the whole height leaves the post straight: H / (n cos), and no lever under it. */
    @Test
    void a_brace_down_to_the_foot_is_a_plain_diagonal() {
        PostPiece piece = PostPiece.post(100, 100).loads(0, 10_000).brace("P1", 1, 0, 2000, 1500);
        Evaluation.Measured m = measured(piece.evaluateBrace(0, BRACE, PARAMETERS));
        assertThat(((Measure) m.found()).value()).isCloseTo(1500 / 0.6, within(1e-6));
        assertThat(use(piece, SWAY)).isCloseTo(use(piece, POST), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"100, true", "4, false"})
    void a_thin_brace_fails(double breadth, boolean complies) {
        PostPiece piece =
                PostPiece.post(100, 100).loads(0, 10_000).braceBreadth(breadth).brace("P1", 1, 0, 800, 800);
        assertThat(measured(piece.evaluateBrace(0, BRACE, PARAMETERS)).utilisation() <= 1)
                .isEqualTo(complies);
    }

    /** One brace, at its foot, at 45 degrees: 1.5 kN * sqrt(2) = 2.1213 kN. */
    @ParameterizedTest
    @CsvSource({"2.13, true", "2.12132034356, true", "2.12, false"})
    void a_fixing_carries_the_force_of_its_brace(double kN, boolean complies) {
        PostPiece piece =
                PostPiece.post(100, 100).loads(0, 10_000).fixingResistance(kN).brace("P1", 1, 0, 2000, 2000);
        assertThat(measured(piece.evaluateBrace(0, FIXING, PARAMETERS)).utilisation() <= 1)
                .isEqualTo(complies);
    }

    @Test
    void a_fixing_without_stated_resistance_is_told_what_would_do() {
        PostPiece piece = PostPiece.post(100, 100).loads(0, 10_000).brace("P1", 1, 0, 2000, 2000);
        Evaluation e = piece.evaluateBrace(0, FIXING, PARAMETERS);
        assertMissing(e, "/platforms/0/braces/0/fixingResistance");
        assertThat(((Evaluation.Missing) e).needs())
                .extracting(Need::what)
                .singleElement()
                .asString()
                .endsWith("in kN; from 2.2 kN on it complies");
    }

    @Test
    void a_fixing_that_holds_nothing_is_out_of_scope() {
        PostPiece piece = PostPiece.post(100, 100).fixingResistance(0).brace("P1", 1, 0, 600, 600);
        assertThat(piece.evaluateBrace(0, FIXING, PARAMETERS)).isInstanceOf(Evaluation.OutOfScope.class);
    }

    @Test
    void what_is_missing_is_asked_for() {
        for (Method method : List.of(POST, SLENDERNESS)) {
            assertMissing(
                    PostPiece.post(100, 100).foot(null).evaluate(method, PARAMETERS), "/platforms/0/posts/0/footing");
            assertMissing(
                    PostPiece.post(100, 100).ofUnknownHeight().evaluate(method, PARAMETERS), "/site/groundLevels");
            assertMissing(PostPiece.post(100, 100).withoutBeam().evaluate(method, PARAMETERS), "/platforms/0/beams");
        }
        assertMissing(PostPiece.post(100, 100).of(null).evaluate(POST, PARAMETERS), "/timbers/0/strengthClass");
        assertMissing(
                PostPiece.post(100, 100).count(1).foot(null).evaluate(SWAY, PARAMETERS),
                "/platforms/0/posts/0/footing");
        PostPiece embedded = PostPiece.post(100, 100).foot(FootingKind.EMBEDDED_POST);
        assertMissing(embedded.ofUnknownHeight().evaluate(SWAY, PARAMETERS), "/site/groundLevels");
        PostPiece braced = PostPiece.post(100, 100).ofUnknownHeight().brace("P1", 1, 0, 600, 600);
        assertMissing(braced.evaluateBrace(0, BRACE, PARAMETERS), "/site/groundLevels");
    }

    @Test
    void what_the_tables_lack_is_out_of_scope() {
        PostPiece post = PostPiece.post(100, 100).brace("P1", 1, 0, 600, 600);
        assertThat(PostPiece.post(100, 100).of("C99").evaluate(POST, PARAMETERS))
                .isInstanceOf(Evaluation.OutOfScope.class);
        assertThat(post.category("Z").evaluate(POST, PARAMETERS)).isInstanceOf(Evaluation.OutOfScope.class);
        assertThat(post.evaluateBrace(0, BRACE, PARAMETERS)).isInstanceOf(Evaluation.OutOfScope.class);
    }

    private record Frame(
            double side, double height, boolean embedded, boolean ledger, boolean oneSide, List<double[]> braces) {
        PostPiece piece() {
            PostPiece piece = PostPiece.post(side, side)
                    .height(height)
                    .foot(embedded ? FootingKind.EMBEDDED_POST : FootingKind.PAD)
                    .loads(2_000, 8_000)
                    .weight(50)
                    .fixingResistance(5)
                    .seated(oneSide ? BeamSeating.ONE_SIDE : BeamSeating.ON_POST, 47);
            if (ledger) {
                piece.onLedger();
            }
            braces.forEach(b -> piece.brace("P" + (int) b[0], b[1], b[2], b[3] * height, b[3] * height));
            return piece;
        }

        Frame taller(double mm) {
            return new Frame(side, height + mm, embedded, ledger, oneSide, braces);
        }

        Frame with(double[] brace) {
            List<double[]> more = new ArrayList<>(braces);
            more.add(brace);
            return new Frame(side, height, embedded, ledger, oneSide, more);
        }
    }

    private static double[] brace(int post, int direction, double part) {
        double radians = StrictMath.toRadians(direction * 15);
        return new double[] {post, StrictMath.cos(radians), StrictMath.sin(radians), part};
    }

    @Property(tries = 200)
    void a_taller_post_never_carries_more(
            @ForAll @DoubleRange(min = 75, max = 200) double side,
            @ForAll @DoubleRange(min = 200, max = 4000) double height,
            @ForAll @DoubleRange(min = 1, max = 2000) double taller,
            @ForAll boolean embedded,
            @ForAll boolean ledger,
            @ForAll boolean oneSide) {
        Frame frame = new Frame(side, height, embedded, ledger, oneSide, List.of());
        for (Method method : List.of(POST, SLENDERNESS)) {
            assertThat(use(frame.taller(taller).piece(), method))
                    .isGreaterThanOrEqualTo(use(frame.piece(), method) * (1 - 1e-12));
        }
        if (embedded && !ledger) {
            assertThat(use(frame.taller(taller).piece(), SWAY)).isGreaterThan(use(frame.piece(), SWAY));
        }
    }

    /**
     * Of posts as columns and of the braces that were there before; a brace does bend the post that it pushes, and one on another
     * post may let the deck twist.
     */
    @Property(tries = 200)
    void an_added_brace_never_raises_a_utilisation(
            @ForAll @DoubleRange(min = 75, max = 200) double side,
            @ForAll @DoubleRange(min = 500, max = 4000) double height,
            @ForAll boolean embedded,
            @ForAll boolean ledger,
            @ForAll boolean oneSide,
            @ForAll @IntRange(max = 11) int first,
            @ForAll @IntRange(min = 1, max = 2) int post,
            @ForAll @IntRange(max = 11) int second,
            @ForAll @DoubleRange(min = 0.1, max = 1) double part) {
        Frame none = new Frame(side, height, embedded, ledger, oneSide, List.of());
        Frame one = none.with(brace(1, first, 0.3));
        Frame two = one.with(brace(post, second, part));
        for (Method method : List.of(POST, SLENDERNESS)) {
            assertThat(use(one.piece(), method)).isLessThanOrEqualTo(use(none.piece(), method) * (1 + 1e-12));
            assertThat(use(two.piece(), method)).isLessThanOrEqualTo(use(one.piece(), method) * (1 + 1e-12));
        }
        if (!ledger && post == 1) {
            for (Method method : List.of(BRACE, FIXING, SLENDERNESS)) {
                double before = measured(one.piece().evaluateBrace(0, method, PARAMETERS))
                        .utilisation();
                double after = measured(two.piece().evaluateBrace(0, method, PARAMETERS))
                        .utilisation();
                assertThat(after).isLessThanOrEqualTo(before * (1 + 1e-12));
            }
        }
    }

    @Test
    void every_line_of_a_working_gives_its_value_when_computed_again() {
        for (Evaluation e : workings()) {
            Evaluation.Measured m = measured(e);
            for (WorkingStep step : m.working()) {
                if (step.substituted().isPresent()) {
                    assertThat(Arithmetic.of(step))
                            .as(step.symbol() + " = " + step.substituted().get().text())
                            .isCloseTo(step.value(), within(2e-5 * Math.max(1e-6, Math.abs(step.value()))));
                }
            }
            WorkingStep last = m.working().get(m.working().size() - 1);
            assertThat(last.symbol()).isEqualTo("utilisation");
            assertThat(last.value()).isEqualTo(m.utilisation());
        }
    }

    private static List<Evaluation> workings() {
        List<Evaluation> all = new ArrayList<>();
        for (double height : new double[] {250, 1300, 3100}) {
            for (boolean oneSide : new boolean[] {false, true}) {
                for (boolean ledger : new boolean[] {false, true}) {
                    Frame plain = new Frame(97, height, true, ledger, oneSide, List.of());
                    Frame braced = plain.with(brace(1, 0, 0.4)).with(brace(1, 6, 0.3));
                    for (Frame frame : List.of(plain, braced)) {
                        all.add(frame.piece().evaluate(POST, PARAMETERS));
                        all.add(frame.piece().evaluate(SLENDERNESS, PARAMETERS));
                        if (!ledger) {
                            all.add(frame.piece().evaluate(SWAY, PARAMETERS));
                        }
                    }
                    if (!ledger) {
                        for (Method method : List.of(BRACE, FIXING, SLENDERNESS)) {
                            all.add(braced.piece().evaluateBrace(1, method, PARAMETERS));
                        }
                    }
                }
            }
        }
        return all;
    }
}
