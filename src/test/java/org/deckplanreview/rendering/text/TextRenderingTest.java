package org.deckplanreview.rendering.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.report.FindingBuilder.finding;
import static org.deckplanreview.report.ReportBuilder.report;
import static org.deckplanreview.report.ReportBuilder.reportInInches;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.deckplanreview.assessment.TakenRow;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.report.FindingBuilder;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportBuilder;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.api.Test;

class TextRenderingTest {
    private static final Need BOARDS_LEVEL =
            new Need(Pointer.of("/platforms/0/level"), "the finished level of the boards");

    private static List<WorkingStep> bending() {
        Sheet working = Sheet.blank();
        Pointer joist = Pointer.of("/timbers/0");
        working.given("M_d", 1.35e6, MeasureUnit.NEWTON_MILLIMETRE, "design moment", "");
        working.given("b", 47, MeasureUnit.MILLIMETRE, "breadth of the joist", "", joist.child("breadth"));
        working.given("h", 147, MeasureUnit.MILLIMETRE, "depth of the joist", "", joist.child("depth"));
        working.calculate(Formula.of("W = b * h^2 / 6", MeasureUnit.CUBIC_MILLIMETRE, ""));
        working.calculate(Formula.of("σ_m,d = M_d / W", MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, "(6.11)"));
        return working.steps();
    }

    private static Report everyForm() {
        return report(
                finding("guard.height")
                        .order(20)
                        .title("Height of a guard at an edge above ground")
                        .doesNotComply()
                        .compares(Measure.mm(900), Sense.AT_LEAST, Measure.mm(1100))
                        .utilisation(1.25)
                        .sentence("The guard at edge 1 of the terrace is 900 mm high; at least 1100 mm is asked for.")
                        .also("edge 2 of the terrace", "/platforms/0/edges/1")
                        .also("edge 3 of the terrace", "/platforms/0/edges/2")
                        .caution("A fall from this edge can kill."),
                finding("joist.bending")
                        .order(1)
                        .title("Bending of joists")
                        .concern(Concern.SPAN)
                        .compares(
                                Measure.of(7.97564, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE),
                                Sense.AT_MOST,
                                Measure.of(11.0769, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE))
                        .utilisation(0.72002)
                        .on("joist 4 of the terrace", "/platforms/0/joists")
                        .also("joist 5 of the terrace", "/platforms/0/joists")
                        .working(bending()),
                finding("joist.shear")
                        .order(2)
                        .title("Shear of joists")
                        .concern(Concern.SPAN)
                        .fromMemory()
                        .utilisation(0.3125)
                        .on("joist 4 of the terrace", "/platforms/0/joists")
                        .working(bending()),
                finding("fall.frame")
                        .order(10)
                        .title("Fall of the frame")
                        .concern(Concern.FALL)
                        .undetermined(BOARDS_LEVEL)
                        .on("the terrace", "/platforms/0")
                        .sentence("The fall cannot be told."),
                finding("guard.opening")
                        .order(21)
                        .title("Openings of a guard")
                        .undetermined(BOARDS_LEVEL)
                        .sentence("The drop at edge 1 of the terrace cannot be told."),
                finding("joist.deflection")
                        .order(3)
                        .title("Deflection of joists")
                        .concern(Concern.SPAN)
                        .undetermined()
                        .on("joist 4 of the terrace", "/platforms/0/joists")
                        .sentence("A joist with a notch in its span is beyond the rules (6.5.2).")
                        .referral("Show the notch to a licensed engineer."),
                finding("fall.boards")
                        .order(11)
                        .title("Grooves run with the fall")
                        .concern(Concern.FALL)
                        .should()
                        .doesNotComply()
                        .on("boards of the terrace", "/platforms/0/boards")
                        .sentence("The grooves run across the fall."),
                finding("guard.climbing")
                        .order(22)
                        .title("Guards that children climb")
                        .notApplicable());
    }

    /** The whole layout, looked at by people: a change here must be one that a reader of reports wants. */
    @Test
    void a_report_reads_from_the_top_down() throws IOException {
        try (InputStream expected = TextRenderingTest.class.getResourceAsStream("every-form.txt")) {
            assertThat(TextRendering.render(everyForm(), WorkingShown.GOVERNING))
                    .isEqualTo(new String(expected.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void no_line_is_longer_than_80_characters() {
        Report report = report(finding("x".repeat(100))
                .doesNotComply()
                .title("y ".repeat(100))
                .on("z".repeat(300), "/" + "p".repeat(200))
                .sentence("w".repeat(500))
                .working(bending()));

        assertThat(TextRendering.render(report, WorkingShown.ALL).lines()).allMatch(l -> l.length() <= 80);
    }

    @Test
    void all_words_survive_wrapping() {
        String sentence =
                String.join(" ", IntStream.range(0, 200).mapToObj(i -> "w" + i).toList());
        String text = TextRendering.render(report(finding("a").doesNotComply().sentence(sentence)), WorkingShown.NONE);

        assertThat(text.replaceAll("\\s+", " ")).contains(sentence);
    }

    @Test
    void beyond_a_table_the_calculation_and_its_provision_are_told() {
        FindingBuilder table = finding("span.table").undetermined();

        assertThat(TextRendering.render(
                        report(table.calculated(finding("span.bending").title("Bending"), 0.8304)), WorkingShown.NONE))
                .containsPattern("Calculated +0\\.831 \\(at most 1 carries\\), Bending \\(span\\.bending\\)");
    }

    @Test
    void governing_shows_the_calculation_of_the_most_utilised_complying_finding_of_a_concern() {
        FindingBuilder more = finding("more").utilisation(0.9).working(step("more_w"));
        FindingBuilder less = finding("less").utilisation(0.8).working(step("less_w"));

        assertThat(TextRendering.render(report(less, more), WorkingShown.GOVERNING))
                .contains("more_w = ")
                .doesNotContain("less_w = ");
    }

    @Test
    void governing_shows_the_calculation_of_whatever_does_not_comply() {
        Report report = report(
                finding("a").doesNotComply().utilisation(1.5).working(step("a_w")),
                finding("b").doesNotComply().utilisation(1.2).working(step("b_w")));

        assertThat(TextRendering.render(report, WorkingShown.GOVERNING)).contains("a_w = ", "b_w = ");
    }

    @Test
    void all_shows_every_calculation_and_none_shows_none() {
        Report report = report(
                finding("a").utilisation(0.9).working(step("a_w")),
                finding("b").utilisation(0.8).working(step("b_w")));

        assertThat(TextRendering.render(report, WorkingShown.ALL)).contains("a_w = ", "b_w = ");
        assertThat(TextRendering.render(report, WorkingShown.NONE)).doesNotContain("a_w", "b_w");
    }

    @Test
    void in_inches_a_step_tells_its_length_in_feet_and_inches_too() {
        assertThat(TextRendering.render(
                        reportInInches(finding("a").utilisation(0.9).working(step("l"))), WorkingShown.ALL))
                .contains("l = 1 mm (1/16\")");
    }

    @Test
    void in_inches_found_and_allowed_are_in_feet_and_inches_beside_what_the_ruleset_writes() {
        assertThat(TextRendering.render(
                        reportInInches(finding("a")
                                .doesNotComply()
                                .compares(Measure.mm(1000), Sense.AT_LEAST, Measure.mm(1100))),
                        WorkingShown.NONE))
                .containsPattern("Found +.* 3'-3 3/8\"")
                .containsPattern("Allowed +at least 3'-7 5/16\" \\(1100 mm\\)");
    }

    @Test
    void a_length_is_not_broken_before_its_fraction() {
        String words = ("word ".repeat(14) + "12'-10 15/16\" ").repeat(3);
        Page page = new Page();
        page.paragraph(0, words);

        assertThat(page.text().lines())
                .noneMatch(line -> line.endsWith("12'-10"))
                .allMatch(l -> l.length() <= 80);
    }

    @Test
    void one_other_alike_is_told_in_the_singular() {
        assertThat(TextRendering.render(report(finding("a").also("edge 2", "/e")), WorkingShown.NONE))
                .containsPattern("edge 1 of the terrace\\s+and\\s+1\\s+other\\s+alike");
    }

    @Test
    void a_hostile_label_can_neither_forge_a_line_nor_steer_a_terminal() {
        String hostile = "deck\u001b[2J\r\nOutcome      COMPLIES\u202e\u009b31m";
        Report report = report(hostile, finding("a").doesNotComply().on(hostile, "/platforms/0"));

        String text = TextRendering.render(report, WorkingShown.ALL);

        assertThat(text.codePoints())
                .noneMatch(c -> c != '\n' && (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT));
        assertThat(text.lines()).noneMatch(l -> l.startsWith("Outcome") && l.contains("COMPLIES["));
        assertThat(text).contains("[U+001B]", "[U+202E]", "[U+009B]").contains("Outcome      DOES NOT COMPLY");
    }

    @Test
    void the_text_is_the_same_in_any_locale() {
        String first = TextRendering.render(everyForm(), WorkingShown.ALL);
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(TextRendering.render(everyForm(), WorkingShown.ALL)).isEqualTo(first);
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void what_findings_rest_on_from_memory_is_listed_once_and_no_finding_is_marked() {
        Rule bending = new Rule.Calculation("en1995.bending", ReportBuilder.parameters());
        Report report = report(finding("a").rule(bending), finding("b").rule(bending), finding("c"));

        assertThat(TextRendering.render(report, WorkingShown.NONE))
                .contains("(a, shall): edge 1 of the terrace\n")
                .contains("(b, shall): edge 1 of the terrace\n")
                .contains("(c, shall): edge 1 of the terrace\n")
                .containsOnlyOnce("- Modification factors (a, b): source of kmod\n")
                .doesNotContain("artial factor");
    }

    @Test
    void rows_of_a_look_up_that_were_recalled_are_listed_and_a_step_may_be_a_word() {
        Report report = report(finding("a")
                .takes(
                        new TakenRow("irc.joists", "size 2x6", "Code, Table 6", Confirmation.MEMORY),
                        new TakenRow("irc.sizes", "depth 5.5 in", "Sizes, Table 1", Confirmation.PAGE))
                .working(List.of(WorkingStep.ofWord("size", "2x6", "Sizes, Table 1", "from section depth 5.5 in"))));

        assertThat(TextRendering.render(report, WorkingShown.ALL))
                .contains("(a, shall): edge 1 of the terrace\n")
                .contains("size = 2x6 [from section depth 5.5 in; Sizes, Table 1]\n")
                .contains("- Row of size 2x6 (a): Code, Table 6\n")
                .doesNotContain("depth 5.5 in (a)");
    }

    private static List<WorkingStep> step(String symbol) {
        return List.of(WorkingStep.given(symbol, 1, MeasureUnit.MILLIMETRE, "", "", List.of()));
    }
}
