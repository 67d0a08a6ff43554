package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.submission.BoardProfile;
import org.junit.jupiter.api.Test;

/**
 * Boards of 145 x 28 mm, C24, on joists at 400 mm. By hand: W = 18 946.7 mm3, f_m,d = 0.65 * 1.3 * 24 / 1.3 = 15.6 N/mm2
 * with the cap of k_h; f_v,d = 0.65 * 4.0 / 1.3 = 2.0 N/mm2.
 */
class BoardsTest {

    private static final Method BENDING = new BoardBending();
    private static final Method SHEAR = new BoardShear();
    private static final Method DEFLECTION = new BoardDeflection();

    private static DeckPiece boards() {
        return DeckPiece.joist().section(145, 28);
    }

    private static StandardParameters parameters() {
        return StandardParameters.ofEurocodes().with("spanRatio", 250);
    }

    private static StandardParameters concentrated() {
        return parameters().with("loading", "concentrated");
    }

    private static Evaluation.Measured measured(DeckPiece piece, Method method, StandardParameters parameters) {
        return (Evaluation.Measured) piece.evaluateBoards(method, parameters);
    }

    private static double utilisation(DeckPiece piece, Method method, StandardParameters parameters) {
        return measured(piece, method, parameters).utilisation();
    }

    /** (6.11): 1.5 q 400^2 / 8 = 15.6 * 18 946.7, so q = 9.8523 N/mm. */
    @Test
    void bending_under_uniform_load_at_the_limit_of_a_hand_calculation() {
        assertThat(utilisation(boards().boardLoads(0, 9.8523, 0), BENDING, parameters()))
                .isCloseTo(1, within(1e-5));
        assertThat(utilisation(boards().boardLoads(0, 9.8, 0), BENDING, parameters()))
                .isLessThan(1);
        assertThat(utilisation(boards().boardLoads(0, 9.9, 0), BENDING, parameters()))
                .isGreaterThan(1);
    }

    /** 1.5 P 400 / 4 = 15.6 * 18 946.7, so P = 1970.5 N. */
    @Test
    void bending_under_a_concentrated_load_at_the_limit_of_a_hand_calculation() {
        assertThat(utilisation(boards().boardLoads(0, 9, 1970.5), BENDING, concentrated()))
                .isCloseTo(1, within(5e-5));
        assertThat(utilisation(boards().boardLoads(0, 9, 1960), BENDING, concentrated()))
                .isLessThan(1);
        assertThat(utilisation(boards().boardLoads(0, 9, 1980), BENDING, concentrated()))
                .isGreaterThan(1);
    }

    @Test
    void half_a_share_is_half_the_stress() {
        DeckPiece piece = boards().boardLoads(0, 0, 2000);
        assertThat(utilisation(piece, BENDING, concentrated().with("concentratedShareOnBoard", 0.5)))
                .isCloseTo(utilisation(piece, BENDING, concentrated()) / 2, within(1e-12));
    }

    /** P * 110 over the last joist is more than P * 400 / 4. */
    @Test
    void a_long_overhang_governs() {
        assertThat(measured(boards().overhang(110).boardLoads(0, 0, 1000), BENDING, concentrated())
                        .remark())
                .startsWith("over the last joist");
        assertThat(measured(boards().overhang(90).boardLoads(0, 0, 1000), BENDING, concentrated())
                        .remark())
                .startsWith("between joists");
    }

    /** (28 / 25)^2 for grooves of 3 mm. */
    @Test
    void grooves_are_taken_off_the_thickness() {
        DeckPiece piece = boards().boardLoads(0, 5, 0);
        double smooth = utilisation(piece, BENDING, parameters());
        assertThat(utilisation(piece.profile(BoardProfile.GROOVED), BENDING, parameters()))
                .isCloseTo(smooth * 28 * 28 / (25 * 25), within(1e-12));
    }

    @Test
    void a_profile_that_is_not_given_is_taken_as_grooved_and_said_so() {
        DeckPiece grooved = boards().boardLoads(0, 5, 0).profile(BoardProfile.GROOVED);
        DeckPiece unknown = boards().boardLoads(0, 5, 0).profile(null);
        assertThat(utilisation(unknown, BENDING, parameters())).isEqualTo(utilisation(grooved, BENDING, parameters()));
        assertThat(measured(unknown, BENDING, parameters()).assumptions()).anyMatch(a -> a.contains("as grooved"));
        assertThat(measured(grooved, BENDING, parameters()).assumptions()).noneMatch(a -> a.contains("as grooved"));
    }

    /** (6.13): V = 2.0 * 0.67 * 145 * 28 / 1.5 = 3626.9 N beside a joist; P = 2417.96 N. */
    @Test
    void shear_at_the_limit_of_a_hand_calculation() {
        assertThat(utilisation(boards().boardLoads(0, 0, 2417.96), SHEAR, concentrated()))
                .isCloseTo(1, within(1e-5));
        assertThat(utilisation(boards().boardLoads(0, 0, 2400), SHEAR, concentrated()))
                .isLessThan(1);
        assertThat(utilisation(boards().boardLoads(0, 0, 2500), SHEAR, concentrated()))
                .isGreaterThan(1);
        assertThat(utilisation(boards().boardLoads(0, 3626.9 / 1.5 / 200, 0), SHEAR, parameters()))
                .isCloseTo(1, within(1e-4));
    }

    /** 5 * 1.6 q 400^4 / (384 * 11000 * 265 253) = 1.6 mm, so q = 8.7535 N/mm. */
    @Test
    void sag_at_the_limit_of_a_hand_calculation() {
        assertThat(utilisation(boards().boardLoads(0, 8.7535, 0), DEFLECTION, parameters()))
                .isCloseTo(1, within(1e-4));
        assertThat(utilisation(boards().boardLoads(0, 8.7, 0), DEFLECTION, parameters()))
                .isLessThan(1);
        assertThat(utilisation(boards().boardLoads(0, 8.8, 0), DEFLECTION, parameters()))
                .isGreaterThan(1);
    }

    @Test
    void the_permanent_part_of_the_sag_triples() {
        double imposed = ((Measure) measured(boards().boardLoads(0, 1, 0), DEFLECTION, parameters())
                        .found())
                .value();
        double permanent = ((Measure) measured(boards().boardLoads(1, 0, 0), DEFLECTION, parameters())
                        .found())
                .value();
        assertThat(permanent / imposed).isCloseTo(3 / 1.6, within(1e-12));
    }

    @Test
    void boards_of_unknown_class_or_load_leave_it_open() {
        assertThat(boards().boardLoads(0, 1, 0).ofUnknownClass().evaluateBoards(BENDING, parameters()))
                .isInstanceOf(Evaluation.Missing.class);
        assertThat(boards().evaluateBoards(SHEAR, parameters())).isInstanceOf(Evaluation.Missing.class);
        assertThat(boards().boardLoads(0, 1, 0).of("C50").evaluateBoards(DEFLECTION, parameters()))
                .isInstanceOf(Evaluation.OutOfScope.class);
    }
}
