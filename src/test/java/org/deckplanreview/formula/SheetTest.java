package org.deckplanreview.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.KILOGRAM_PER_CUBIC_METRE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_FOOT;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_FOOT;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Map;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetTest {
    private static final Formula LINE_LOAD = Formula.of("w = q * t", NEWTON_PER_MILLIMETRE, "");

    private final Sheet sheet = Sheet.blank();

    private void give(String symbol, double value, MeasureUnit unit) {
        sheet.given(symbol, value, unit, "", "");
    }

    private WorkingStep last() {
        List<WorkingStep> steps = sheet.steps();
        return steps.get(steps.size() - 1);
    }

    @Test
    void what_is_shown_is_what_was_calculated() {
        give("M_d", 2e6, NEWTON_MILLIMETRE);
        give("b", 47, MILLIMETRE);
        give("h", 150, MILLIMETRE);
        sheet.calculate(Formula.of("W_y = b * h^2 / 6", CUBIC_MILLIMETRE, ""));
        assertThat(last().value()).isEqualTo(176_250);
        double stress = sheet.calculate(Formula.of("σ_m,d = M_d / W_y", NEWTON_PER_SQUARE_MILLIMETRE, "(6.11)"));

        assertThat(stress).isCloseTo(2e6 / 176_250, within(1e-12));
        assertThat(last().expression().orElseThrow().text()).isEqualTo("M_d / W_y");
        assertThat(last().substituted().orElseThrow().text()).isEqualTo("2000000 / 176250");
        assertThat(last().equation()).isEqualTo("(6.11)");
    }

    @Test
    void a_load_in_kilonewtons_a_square_metre_times_a_width_in_millimetres_is_a_line_load() {
        give("q", 1.5, KILONEWTON_PER_SQUARE_METRE);
        give("t", 600, MILLIMETRE);

        assertThat(sheet.calculate(LINE_LOAD)).isCloseTo(0.9, within(1e-15));
        assertThat(last().substituted().orElseThrow().text()).isEqualTo("1.5 kN/m² * 600 mm");
    }

    /** 40 psf over 16 in are 53.33 lb on a foot. */
    @Test
    void pounds_and_inches_mix_with_feet() {
        give("q", 40, POUND_FORCE_PER_SQUARE_FOOT);
        give("t", 16, MeasureUnit.INCH);
        assertThat(sheet.calculate(Formula.of("w = q * t", POUND_FORCE_PER_FOOT, "")))
                .isCloseTo(160.0 / 3, within(1e-12));
    }

    @Test
    void the_same_formula_takes_other_units_the_next_time() {
        give("q", 1.5, KILONEWTON_PER_SQUARE_METRE);
        give("t", 600, MILLIMETRE);
        sheet.calculate(LINE_LOAD);
        give("q", 0.0015, NEWTON_PER_SQUARE_MILLIMETRE);
        assertThat(sheet.calculate(LINE_LOAD)).isCloseTo(0.9, within(1e-15));
        assertThat(last().substituted().orElseThrow().text()).isEqualTo("0.0015 * 600");
    }

    @Test
    void a_stress_that_is_no_stress_is_refused() {
        give("M_d", 2e6, NEWTON_MILLIMETRE);
        give("b", 47, MILLIMETRE);
        assertThatThrownBy(() -> sheet.calculate(Formula.of("σ = M_d / b", NEWTON_PER_SQUARE_MILLIMETRE, "")))
                .hasMessage("'σ = M_d / b' does not come to N/mm2");
    }

    @Test
    void a_length_and_a_force_do_not_add_up() {
        give("F", 2, NEWTON_);
        give("b", 47, MILLIMETRE);
        assertThatThrownBy(() -> sheet.calculate(Formula.of("x = F + b", NEWTON_, "")))
                .hasMessage("'F + b' brings together what measures different things");
    }

    @Test
    void nought_fits_every_unit() {
        give("F", -2, NEWTON_);
        assertThat(sheet.calculate(Formula.of("N = max(0, F)", NEWTON_, ""))).isZero();
        assertThat(last().substituted().orElseThrow().text()).isEqualTo("max(0, (-2))");
    }

    @Test
    void a_symbol_that_was_not_given_is_refused() {
        give("f_m,k", 24, NEWTON_PER_SQUARE_MILLIMETRE);
        assertThatThrownBy(() -> sheet.calculate(Formula.of("f = f_m", NEWTON_PER_SQUARE_MILLIMETRE, "")))
                .hasMessage("'f_m' in 'f = f_m' was not given before");
    }

    /** EN 1995-1-1:2004, (3.1): the depth against 150 mm, whatever unit the depth is in. */
    @ParameterizedTest
    @CsvSource({"75, MILLIMETRE", "0.075, METRE_"})
    void a_constant_with_a_unit_holds_for_every_unit(double depth, MeasureUnit unit) {
        give("h", depth, unit);
        assertThat(sheet.calculate(Formula.of("k_h = min((150 [mm] / h)^0.2, 1.3)", RATIO, "(3.1)")))
                .isCloseTo(StrictMath.pow(2, 0.2), within(1e-12));
    }

    /** EN 1995-1-1:2004, (6.34). */
    @ParameterizedTest
    @CsvSource({"0.5, 1, 1", "0.75, 1, 1", "1, 0.81, 1.56 - 0.75 * λ", "1.4, 0.51, 1.56 - 0.75 * λ", "2, 0.25, 1 / λ^2"
    })
    void of_a_formula_in_pieces_the_piece_that_counts_is_shown(double slenderness, double factor, String shown) {
        give("λ", slenderness, RATIO);
        Formula formula = Formula.of("k = 1 if λ <= 0.75; 1.56 - 0.75 * λ if λ <= 1.4; 1 / λ^2", RATIO, "(6.34)");
        assertThat(sheet.calculate(formula)).isCloseTo(factor, within(1e-12));
        assertThat(last().expression().orElseThrow().text()).isEqualTo(shown);
    }

    /** EN 1995-1-1:2004, 6.3.2(2): up to 0.3 a column does not buckle. */
    @ParameterizedTest
    @CsvSource({"0.3, 6.3.2(2)", "0.4, (6.25)"})
    void of_a_formula_in_pieces_the_clause_of_the_piece_that_counts_is_shown(double slenderness, String clause) {
        give("λ", slenderness, RATIO);
        sheet.calculate(Formula.of("k_c = 1 if λ <= 0.3; 1 / λ", RATIO, "6.3.2(2); (6.25)"));
        assertThat(last().equation()).isEqualTo(clause);
    }

    /** EN 1995-1-1:2004, (8.32) is written for millimetres and kilograms a cubic metre. */
    @Test
    void an_empirical_equation_takes_its_numbers_in_its_own_units() {
        give("d", 0.012, MeasureUnit.METRE_);
        give("ρ_k", 350, KILOGRAM_PER_CUBIC_METRE);
        Formula formula = Formula.ofNumbers(
                "f_h,0,k = 0.082 * (1 - 0.01 * d) * ρ_k",
                NEWTON_PER_SQUARE_MILLIMETRE,
                "(8.32)",
                Map.of("d", MILLIMETRE, "ρ_k", KILOGRAM_PER_CUBIC_METRE));
        assertThat(sheet.calculate(formula)).isCloseTo(0.082 * 0.88 * 350, within(1e-9));
    }

    /** cos 60 = sin 30 = 1/2. */
    @Test
    void sine_and_cosine_take_angles_in_degrees() {
        give("l", 600, MILLIMETRE);
        give("α", 60, MeasureUnit.DEGREE);
        assertThat(sheet.calculate(Formula.of("s = l * cos(α)", MILLIMETRE, "")))
                .isCloseTo(300, within(1e-12));
        assertThat(last().substituted().orElseThrow().text()).isEqualTo("600 mm * cos(60 °)");
        give("α", 30, MeasureUnit.DEGREE);
        assertThat(sheet.calculate(Formula.of("s = l * sin(α)", MILLIMETRE, "")))
                .isCloseTo(300, within(1e-12));
    }

    @Test
    void the_sine_of_what_is_no_angle_is_refused() {
        give("x", 0.5, RATIO);
        assertThatThrownBy(() -> sheet.calculate(Formula.of("y = sin(x)", RATIO, "")))
                .hasMessage("'sin(x)' is not of an angle");
    }

    @Test
    void a_measure_is_a_value_with_its_unit_and_leaves_the_sheet_as_it_is() {
        give("P", 100, POUND_FORCE);
        assertThat(sheet.measure("P")).isEqualTo(Measure.of(100, POUND_FORCE));
        assertThat(sheet.measure(Formula.of("R = P / 4", POUND_FORCE, ""))).isEqualTo(Measure.of(25, POUND_FORCE));
        assertThat(sheet.steps()).hasSize(1);
    }

    @Test
    void a_sheet_that_goes_on_begins_with_what_stood_before() {
        give("P", 100, POUND_FORCE);
        Sheet more = Sheet.on(sheet);
        more.given("n", 4, RATIO, "", "");
        assertThat(more.calculate(Formula.of("R = P / n", POUND_FORCE, ""))).isEqualTo(25);
        assertThat(more.steps()).extracting(WorkingStep::symbol).containsExactly("P", "n", "R");
        assertThat(sheet.steps()).extracting(WorkingStep::symbol).containsExactly("P");
    }

    @Test
    void nothing_is_put_into_words_before_somebody_reads_it() {
        sheet.given(
                "P",
                100,
                POUND_FORCE,
                () -> {
                    throw new IllegalStateException("was asked");
                },
                "");
        assertThat(sheet.calculate(Formula.of("R = P / 4", POUND_FORCE, ""))).isEqualTo(25);
        assertThat(sheet.value("R")).isEqualTo(25);
    }

    @Test
    void a_formula_comes_to_another_unit_where_its_values_are_in_it() {
        Formula half = Formula.of("s = l / 2", MILLIMETRE, "");
        give("l", 3, MeasureUnit.FOOT);
        assertThat(sheet.calculate(half.in(MeasureUnit.FOOT))).isEqualTo(1.5);
        assertThat(sheet.measure("s")).isEqualTo(Measure.of(1.5, MeasureUnit.FOOT));
        assertThat(sheet.calculate(half.by("note 3"))).isCloseTo(457.2, within(1e-9));
        assertThat(sheet.steps().get(2).equation()).isEqualTo("note 3");
    }

    /** 1/3 of a circle's angle, of which the cosine is 1/2. */
    @Test
    void the_angle_of_a_cosine_is_in_radians() {
        give("e", 50, MILLIMETRE);
        give("r", 100, MILLIMETRE);
        assertThat(sheet.calculate(Formula.of("α = acos(e / r)", RATIO, ""))).isCloseTo(Math.PI / 3, within(1e-12));
    }

    /** 150 mm divided by 25.4 and multiplied again may come out beside it in the last digit. */
    @Test
    void noise_of_another_unit_takes_no_other_branch() {
        Formula formula = Formula.of("k = 1 if h < 150 [mm]; 2", RATIO, "");
        give("h", 150 * (1 - 1e-12), MILLIMETRE);
        assertThat(sheet.calculate(formula)).isEqualTo(2);
        give("h", 149.99, MILLIMETRE);
        assertThat(sheet.calculate(formula)).isEqualTo(1);
    }

    @Test
    void a_power_of_a_value_with_its_unit_is_of_both() {
        give("d", 355.6, MILLIMETRE);
        sheet.calculate(Formula.of("A = d^2", MeasureUnit.SQUARE_METRE_, ""));
        assertThat(sheet.steps().get(1).substituted().orElseThrow().text()).isEqualTo("(355.6 mm)^2");
    }
}
