package org.deckplanreview.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.report.FindingBuilder.finding;
import static org.deckplanreview.report.ReportBuilder.report;
import static org.deckplanreview.report.ReportBuilder.reportInInches;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Expression;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Word;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReportsTest {
    @Test
    void findings_stand_by_determination_obligation_utilisation_place_and_pointer() {
        Report report = report(
                finding("n").notApplicable(),
                finding("c2").order(8).utilisation(0.5),
                finding("c1").order(9).utilisation(0.9),
                finding("u").undetermined(),
                finding("d4").doesNotComply().order(2).on("edge 11", "/platforms/0/edges/10"),
                finding("d3").doesNotComply().order(2).on("edge 3", "/platforms/0/edges/2"),
                finding("d2").doesNotComply().order(1),
                finding("d5").doesNotComply().should().utilisation(9),
                finding("d1").doesNotComply().order(7).utilisation(1.2));

        assertThat(report.findings())
                .extracting(ReportedFinding::provision)
                .containsExactly("d1", "d2", "d3", "d4", "d5", "u", "c1", "c2", "n");
    }

    @Test
    void counts_are_by_determination_in_all_and_by_concern() {
        Report report = report(
                finding("a").doesNotComply().concern(Concern.SPAN),
                finding("b").concern(Concern.SPAN),
                finding("c").concern(Concern.SPAN),
                finding("d").undetermined().concern(Concern.GUARDING),
                finding("e").notApplicable().concern(Concern.GUARDING));

        assertThat(report.counts().byDetermination()).isEqualTo(new Counts.Tally(1, 1, 2, 1));
        assertThat(report.counts().byConcern())
                .containsExactly(
                        new Counts.ConcernTally(Concern.SPAN, new Counts.Tally(1, 0, 2, 0)),
                        new Counts.ConcernTally(Concern.GUARDING, new Counts.Tally(0, 1, 0, 1)));
    }

    @Test
    void the_notice_says_that_nothing_is_approved_and_who_prevails() {
        assertThat(report().notice()).contains("grants no approval", "Local codes", "licensed engineer prevail");
    }

    @Test
    void cautions_are_the_editions_and_those_of_what_is_open_once_each() {
        Report report = report(
                finding("a").caution("complies: unsaid"),
                finding("b").doesNotComply().caution("It may collapse."),
                finding("c").doesNotComply().caution("It may collapse."),
                finding("d").undetermined().caution("It may rot."),
                finding("e").notApplicable().caution("not applicable: unsaid"));

        assertThat(report.cautions()).containsExactly("Wet boards are slippery.", "It may collapse.", "It may rot.");
    }

    @Test
    void referrals_are_the_editions_and_those_of_what_is_open() {
        Report report = report(
                finding("a").referral("complies: unsaid"),
                finding("b").undetermined().referral("An engineer must look at it."));

        assertThat(report.referrals())
                .containsExactly("Ask the authority whether the deck needs a permit.", "An engineer must look at it.");
    }

    @Test
    void advice_is_given_for_what_is_open_alone() {
        Report report = report(
                finding("a").doesNotComply(),
                finding("b").undetermined(),
                finding("c"),
                finding("d").notApplicable());

        assertThat(report.findings()).extracting(f -> f.advice().isPresent()).containsExactly(true, true, false, false);
    }

    @Test
    void a_source_recalled_from_memory_is_told_once_for_all_findings_that_rest_on_it() {
        Report report = report(
                finding("a").order(1),
                finding("b").order(2).fromMemory(),
                finding("b").order(2).fromMemory().doesNotComply());

        assertThat(report.findings())
                .extracting(f -> f.citation().confirmed().by())
                .containsExactly(Confirmation.MEMORY, Confirmation.PAGE, Confirmation.MEMORY);
        assertThat(report.recalledFromMemory())
                .containsExactly(
                        new RecalledValue("A requirement", "Protection from falling, 2013, Diagram 3.1", List.of("b")));
    }

    /** What is recalled may be the very figure for which it does not apply. */
    @Test
    void a_provision_that_a_recalled_condition_rules_out_is_told_too() {
        assertThat(report(finding("a").fromMemory().notApplicable()).recalledFromMemory())
                .extracting(RecalledValue::provisions)
                .containsExactly(List.of("a"));
    }

    @Test
    void a_provision_whose_subjects_the_deck_lacks_rests_on_nothing() {
        assertThat(report(finding("a").fromMemory().onTheDeck().notApplicable()).recalledFromMemory())
                .isEmpty();
    }

    @Test
    void a_report_without_recalled_values_lists_none() {
        assertThat(report(finding("a")).recalledFromMemory()).isEmpty();
    }

    @Test
    void a_calculation_tells_where_each_parameter_comes_from_and_how_it_was_confirmed() {
        Rule bending = new Rule.Calculation("en1995.bending", ReportBuilder.parameters());
        Report report = report(finding("a").rule(bending), finding("b").rule(bending));

        assertThat(report.findings().get(0).citation().setBy())
                .containsExactly(
                        new ReportedCitation.SetBy("gammaM", "source of gammaM", Confirmation.PAGE),
                        new ReportedCitation.SetBy("kmod", "source of kmod", Confirmation.MEMORY));
        assertThat(report.recalledFromMemory())
                .containsExactly(new RecalledValue("Modification factors", "source of kmod", List.of("a", "b")));
    }

    @Test
    void found_and_allowed_carry_number_and_unit() {
        ReportedFinding finding = report(
                        finding("a").doesNotComply().compares(Measure.mm(1099.99951), Sense.AT_LEAST, Measure.mm(1100)))
                .findings()
                .get(0);

        assertThat(finding.found().orElseThrow().unit()).contains(MeasureUnit.MILLIMETRE);
        assertThat(finding.allowed().orElseThrow().sense()).isEqualTo(Sense.AT_LEAST);
        assertThat(finding.allowed().orElseThrow().values())
                .extracting(ShownValue::text)
                .containsExactly("1100");
    }

    /** Six digits would show the limit itself, as if the value complied. */
    @ParameterizedTest
    @CsvSource({
        "599.999998, AT_LEAST, 600, 599.999998",
        "600.000002, AT_MOST, 600, 600.000002",
        "599.99951, AT_LEAST, 600, 599.9995",
        "590.123456, AT_LEAST, 600, 590.123",
        "600, OVER, 600, 600",
        "600, UNDER, 600, 600"
    })
    void a_value_that_fails_never_looks_as_if_it_complied(double found, Sense sense, double limit, String shown) {
        ReportedFinding finding = report(
                        finding("a").doesNotComply().compares(Measure.mm(found), sense, Measure.mm(limit)))
                .findings()
                .get(0);

        assertThat(finding.found().orElseThrow().value().orElseThrow().text()).startsWith(shown);
    }

    @Test
    void a_failing_value_is_compared_with_a_limit_in_another_unit() {
        ReportedFinding finding = report(finding("a")
                        .doesNotComply()
                        .compares(Measure.mm(999.999998), Sense.AT_LEAST, Measure.of(1, MeasureUnit.METRE_)))
                .findings()
                .get(0);

        assertThat(finding.found().orElseThrow().value().orElseThrow().text()).startsWith("999.9999");
    }

    @Test
    void a_limit_in_inches_is_shown_in_millimetres_beside_what_the_ruleset_writes() {
        Allowed allowed = report(
                        finding("a").compares(Measure.mm(914.4), Sense.AT_LEAST, Measure.of(36, MeasureUnit.INCH)))
                .findings()
                .get(0)
                .allowed()
                .orElseThrow();

        assertThat(allowed.values()).extracting(ShownValue::text).containsExactly("914.4");
        assertThat(allowed.unit()).contains(MeasureUnit.MILLIMETRE);
        assertThat(allowed.text()).isEmpty();
        assertThat(allowed.asWritten()).contains("36 in");
    }

    @Test
    void a_report_in_inches_shows_a_limit_in_millimetres_in_inches() {
        Report report = reportInInches(finding("a").compares(Measure.mm(1200), Sense.AT_LEAST, Measure.mm(1100)));
        ReportedFinding finding = report.findings().get(0);

        assertThat(report.units()).contains(LengthUnit.INCH);
        assertThat(finding.found().orElseThrow().value()).contains(new ShownValue.Number(new BigDecimal("47.2441")));
        assertThat(finding.found().orElseThrow().unit()).contains(MeasureUnit.INCH);
        assertThat(finding.found().orElseThrow().text()).contains("3'-11 1/4\"");
        assertThat(finding.allowed().orElseThrow().unit()).contains(MeasureUnit.INCH);
        assertThat(finding.allowed().orElseThrow().text()).contains("3'-7 5/16\"");
        assertThat(finding.allowed().orElseThrow().asWritten()).contains("1100 mm");
    }

    @Test
    void a_report_in_inches_shows_a_limit_in_inches_as_the_ruleset_writes_it() {
        Allowed allowed = reportInInches(
                        finding("a").compares(Measure.mm(914.4), Sense.AT_LEAST, Measure.of(36, MeasureUnit.INCH)))
                .findings()
                .get(0)
                .allowed()
                .orElseThrow();

        assertThat(allowed.values()).extracting(ShownValue::text).containsExactly("36");
        assertThat(allowed.text()).contains("3'-0\"");
        assertThat(allowed.asWritten()).isEmpty();
    }

    @Test
    void a_report_in_millimetres_names_no_unit_and_a_step_in_metric_units_has_no_text_there() {
        Report report = report(finding("a").working(steps()));

        assertThat(report.units()).isEmpty();
        assertThat(report.findings().get(0).working())
                .extracting(ReportedStep::text)
                .containsOnly(Optional.empty());
    }

    @Test
    void a_report_in_inches_tells_each_step_in_inch_pound_units_beside_those_of_its_equation() {
        assertThat(reportInInches(finding("a").working(steps()))
                        .findings()
                        .get(0)
                        .working())
                .extracting(s -> s.value().orElseThrow() + " " + s.unit().symbol() + ": "
                        + s.text().orElse("the same"))
                .containsExactly("914.4 mm: 3'-0\"", "24 N/mm2: 3480.91 psi", "1.3 1: the same");
    }

    private static List<WorkingStep> steps() {
        Sheet sheet = Sheet.blank();
        sheet.given("l", 914.4, MeasureUnit.MILLIMETRE, "span", "");
        sheet.given("f", 24, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, "strength", "");
        sheet.given("γ", 1.3, MeasureUnit.RATIO, "partial factor", "");
        return sheet.steps();
    }

    @Test
    void words_and_flags_have_no_unit() {
        Report report = report(
                finding("a")
                        .order(1)
                        .compares(new Word("grooved"), Sense.ONE_OF, new Word("smooth"), new Word("grooved")),
                finding("b").order(2).compares(new Flag(true), Sense.EQUAL, new Flag(true)));

        ReportedFinding words = report.findings().get(0);
        assertThat(words.found().orElseThrow().unit()).isEmpty();
        assertThat(words.allowed().orElseThrow().values())
                .extracting(ShownValue::text)
                .containsExactly("smooth", "grooved");
        assertThat(report.findings().get(1).found().orElseThrow().value()).contains(new ShownValue.Flag(true));
    }

    @Test
    void utilisation_is_rounded_away_from_compliance() {
        Report report = report(
                finding("a").doesNotComply().utilisation(1.0000001),
                finding("b").utilisation(0.8721));

        assertThat(report.findings())
                .extracting(f -> f.utilisation().orElseThrow().toPlainString())
                .containsExactly("1.001", "0.873");
    }

    @Test
    void what_is_not_finite_is_left_out() {
        Report report = report(finding("a")
                .doesNotComply()
                .utilisation(Double.POSITIVE_INFINITY)
                .working(List.of(
                        WorkingStep.given("eta", Double.POSITIVE_INFINITY, MeasureUnit.RATIO, "", "", List.of()))));

        assertThat(report.findings().get(0).utilisation()).isEmpty();
        assertThat(report.findings().get(0).working().get(0).value()).isEmpty();
    }

    @Test
    void a_step_of_the_working_keeps_symbols_numbers_equation_and_pointers() {
        Sheet sheet = Sheet.blank();
        Pointer depth = Pointer.of("/timbers/0/depth");
        sheet.given("h", 147, MeasureUnit.MILLIMETRE, "depth", "", depth);
        sheet.calculate(Formula.of("W = h^2 / 6", MeasureUnit.SQUARE_MILLIMETRE, "(1)"));

        List<ReportedStep> steps =
                report(finding("a").working(sheet.steps())).findings().get(0).working();

        assertThat(steps.get(0).expression()).isEmpty();
        assertThat(steps.get(0).from()).containsExactly(depth);
        assertThat(steps.get(1).expression().map(Expression::text)).contains("h^2 / 6");
        assertThat(steps.get(1).substituted().map(Expression::text)).contains("147^2 / 6");
        assertThat(steps.get(1).value().orElseThrow()).isEqualByComparingTo("3601.5");
        assertThat(steps.get(1).equation()).contains("(1)");
    }

    @Test
    void needs_and_those_alike_are_kept() {
        Need need = new Need(Pointer.of("/platforms/0/level"), "the level of the boards");
        ReportedFinding finding = report(finding("a").undetermined(need).also("edge 2", "/platforms/0/edges/1"))
                .findings()
                .get(0);

        assertThat(finding.needs()).containsExactly(need);
        assertThat(finding.subject().also())
                .containsExactly(new ReportedSubject.Also("edge 2", Pointer.of("/platforms/0/edges/1")));
    }
}
