package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.deckplanreview.formula.Sheet;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.method.en1995.Combination.State;
import org.junit.jupiter.api.Test;

/** Single equations of EN 1995-1-1:2004+A1+A2, with the values of the standards' files, against hand calculations. */
class EquationsTest {

    private static final StandardParameters PARAMETERS = StandardParameters.ofEurocodes();

    /** (3.1): (150/97)^0.2 = 1.0911. */
    @Test
    void a_depth_of_97_mm_raises_the_strength_by_9_percent() {
        assertThat(sizeFactor(97, 350)).isCloseTo(1.0911, within(5e-5));
    }

    /** (3.1): from (150/h)^0.2 = 1.3, h = 40.4 mm. */
    @Test
    void a_depth_of_40_mm_and_less_has_the_cap_of_k_h() {
        assertThat(sizeFactor(40, 350)).isEqualTo(1.3);
        assertThat(sizeFactor(41, 350)).isLessThan(1.3);
    }

    /** 3.2(3): for depths below 150 mm and characteristic densities of at most 700 kg/m3. */
    @Test
    void size_counts_only_below_150_mm_and_up_to_700_kg_per_m3() {
        assertThat(sizeFactor(150, 350)).isEqualTo(1);
        assertThat(sizeFactor(97, 700)).isGreaterThan(1);
        assertThat(sizeFactor(97, 701)).isEqualTo(1);
    }

    private static double sizeFactor(double depthMm, double density) {
        Sheet sheet = Sheet.blank();
        sheet.given("h", depthMm, MeasureUnit.MILLIMETRE, "", "");
        sheet.given("ρ_k", density, MeasureUnit.KILOGRAM_PER_CUBIC_METRE, "", "");
        return sheet.calculate(Material.SIZE_FACTOR);
    }

    /** Table 3.1, solid timber, service class 3; 3.1.3(2): the shortest action decides. */
    @Test
    void the_shortest_action_decides_the_modification_factor() {
        assertThat(Modification.of(PARAMETERS, new ActionFactors(1.35, 0, 0, 0)))
                .isEqualTo(new Modification("permanent", 0.50));
        assertThat(Modification.of(PARAMETERS, new ActionFactors(1.35, 1.5, 0, 0)))
                .isEqualTo(new Modification("medium-term", 0.65));
        assertThat(Modification.of(PARAMETERS, new ActionFactors(1.35, 0, 1.5, 0)))
                .isEqualTo(new Modification("medium-term", 0.65));
        assertThat(Modification.of(PARAMETERS, new ActionFactors(1.35, 1.05, 0, 1.5)))
                .isEqualTo(new Modification("short-term", 0.70));
    }

    /** (6.32): 0.78 * 47^2 * 7400 / (195 * (0.9 * 3600 + 2 * 195)) = 18.013 N/mm2; (6.30): sqrt(24/18.013) = 1.15427. */
    @Test
    void a_softwood_joist_of_47_by_195_has_the_critical_stress_of_a_hand_calculation() {
        Sheet sheet = slender(47, 195, 0.9 * 3600 + 2 * 195);
        sheet.given("f_m,k", 24, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, "", "");
        assertThat(sheet.calculate(LateralBuckling.SOLID.softwoodStress())).isCloseTo(18.013, within(5e-4));
        assertThat(sheet.calculate(LateralBuckling.RELATIVE_SLENDERNESS)).isCloseTo(1.15427, within(5e-5));
    }

    private static Sheet slender(double breadthMm, double depthMm, double effectiveLengthMm) {
        Sheet sheet = Sheet.blank();
        sheet.given("b", breadthMm, MeasureUnit.MILLIMETRE, "", "");
        sheet.given("h", depthMm, MeasureUnit.MILLIMETRE, "", "");
        sheet.given("l_ef", effectiveLengthMm, MeasureUnit.MILLIMETRE, "", "");
        sheet.given("E_0,05", 7400, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, "", "");
        return sheet;
    }

    /** (6.32) follows from (6.31) with E/G = 16 for softwood and the torsion of a thin rectangle, a common derivation. */
    @Test
    void both_equations_of_the_critical_stress_agree_for_a_thin_softwood_section() {
        Sheet thin = slender(20, 400, 3000);
        double softwood = thin.calculate(LateralBuckling.SOLID.softwoodStress());
        thin.given("G_0,05", 7400.0 / 16, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, "", "");
        thin.calculate(LateralBuckling.SOLID.secondMoment());
        thin.calculate(LateralBuckling.SOLID.torsionConstant());
        double general = thin.calculate(LateralBuckling.SOLID.generalStress());
        assertThat(softwood).isCloseTo(general, within(0.02 * general));
    }

    /** (6.34): 1 up to 0.75; 1.56 - 0.75 * 1.0 = 0.81; 1/2^2 beyond 1.4, where both branches meet at 0.51. */
    @Test
    void k_crit_has_three_branches_that_meet() {
        assertThat(kcrit(0.75)).isEqualTo(1);
        assertThat(kcrit(0.7501)).isCloseTo(1, within(0.003));
        assertThat(kcrit(1.0)).isCloseTo(0.81, within(1e-12));
        assertThat(kcrit(1.4)).isCloseTo(0.51, within(1e-12));
        assertThat(kcrit(1.4001)).isCloseTo(0.51, within(0.001));
        assertThat(kcrit(2)).isEqualTo(0.25);
    }

    private static double kcrit(double relativeSlenderness) {
        Sheet sheet = Sheet.blank();
        sheet.given("λ_rel,m", relativeSlenderness, MeasureUnit.RATIO, "", "");
        return sheet.calculate(LateralBuckling.FACTOR);
    }

    /**
     * (6.62) for h = 200, h_ef = 150, x = 100, square: 5 / (14.1421 * (0.433013 + 0.8 * 0.5 * 0.877971)) = 0.45085.
     */
    @Test
    void a_square_notch_of_a_quarter_of_the_depth_has_the_k_v_of_a_hand_calculation() {
        assertThat(notchFactor(200, 150, 0, 100)).isCloseTo(0.45085, within(5e-5));
    }

    /** (6.62): the slope of 1:3 multiplies by 1 + 1.1 * 3^1.5 / sqrt(200) = 1.40417. */
    @Test
    void a_sloped_notch_is_better_than_a_square_one() {
        assertThat(notchFactor(200, 150, 3, 100) / notchFactor(200, 150, 0, 100))
                .isCloseTo(1.40417, within(5e-5));
    }

    /** (6.62): k_v is at most 1, and without a notch nothing is lost. */
    @Test
    void k_v_is_never_more_than_1() {
        assertThat(notchFactor(200, 200, 0, 0)).isEqualTo(1);
        assertThat(notchFactor(20, 19, 10, 0)).isEqualTo(1);
    }

    private static double notchFactor(double depthMm, double leftMm, double slope, double distanceMm) {
        Sheet sheet = Sheet.blank();
        sheet.given("h", depthMm, MeasureUnit.MILLIMETRE, "", "");
        sheet.given("h_ef", leftMm, MeasureUnit.MILLIMETRE, "", "");
        sheet.given("i", slope, MeasureUnit.RATIO, "", "");
        sheet.given("x", distanceMm, MeasureUnit.MILLIMETRE, "", "");
        sheet.given("k_n", PARAMETERS.number("kn", MeasureUnit.RATIO), MeasureUnit.RATIO, "", "");
        sheet.calculate(MemberNotch.LEFT_SHARE);
        return sheet.calculate(MemberNotch.FACTOR);
    }

    /** EN 1990, (6.10) with Tables A1.1 and A1.2(B): 1.35 G + 1.5 Q + 1.5 * 0.5 S, and 1.35 G + 1.5 S + 1.5 * 0.7 Q. */
    @Test
    void variable_actions_that_do_not_lead_are_reduced() {
        Psi psi = Psi.find(PARAMETERS, "A").orElseThrow();
        assertThat(Combination.of(PARAMETERS, State.ULTIMATE, psi, true))
                .extracting(Combination::factors)
                .contains(new ActionFactors(1.35, 1.5, 0, 0.75), new ActionFactors(1.35, 1.5 * 0.7, 0, 1.5));
    }

    @Test
    void combinations_with_snow_count_only_where_there_is_snow() {
        Psi psi = Psi.find(PARAMETERS, "A").orElseThrow();
        assertThat(Combination.of(PARAMETERS, State.ULTIMATE, psi, false))
                .isNotEmpty()
                .allSatisfy(c -> assertThat(c.factors().snow()).isZero());
    }

    /** EN 1995-1-1 (2.3), (2.4) with k_def 2.0 and psi2 0.3: 1 + 2 = 3 and 1 + 0.3 * 2 = 1.6; category C: 2.2. */
    @Test
    void creep_in_service_class_3_triples_the_permanent_deflection() {
        Combination imposed = new Combination("6.14b imposed", new ActionFactors(1, 1, 0, 0));
        assertThat(crept(imposed, "A")).isEqualTo(new ActionFactors(3, 1.6, 0, 0));
        assertThat(crept(imposed, "C").imposed()).isCloseTo(2.2, within(1e-12));
    }

    /** (2.5): an accompanying variable action has psi0 + psi2 k_def. */
    @Test
    void an_accompanying_load_creeps_by_its_quasi_permanent_part() {
        Combination snow = new Combination("6.14b snow leading imposed", new ActionFactors(1, 0.7, 0, 1));
        ActionFactors last = crept(snow, "A");
        assertThat(last.imposed()).isCloseTo(0.7 + 0.3 * 2.0, within(1e-12));
        assertThat(last.snow()).isEqualTo(1);
    }

    /** With k_def 2.0. */
    private static ActionFactors crept(Combination combination, String category) {
        Sheet sheet = Sheet.blank();
        sheet.given("k_def", 2, MeasureUnit.RATIO, "", "");
        Psi psi = Psi.find(PARAMETERS, category).orElseThrow();
        return new Creep(PARAMETERS, null, null).factors(sheet, combination, psi);
    }
}
