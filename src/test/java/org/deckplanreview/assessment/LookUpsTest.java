package org.deckplanreview.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.assessment.Determination.COMPLIES;
import static org.deckplanreview.assessment.Determination.DOES_NOT_COMPLY;
import static org.deckplanreview.assessment.Determination.NOT_APPLICABLE;
import static org.deckplanreview.assessment.Determination.UNDETERMINED;

import java.util.List;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;
import org.deckplanreview.ruleset.Confirmation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Determinations by invented tables: what a row of the CSV file says is what is allowed. */
class LookUpsTest {

    private static final String JOISTS = "joist.span";
    private static final String BEAMS = "beam.span";
    private static final String FOOTINGS = "footing.side";

    private static final FoundOnDeck USUAL = FoundOnDeck.usual();

    private static Measure inches(double value) {
        return Measure.of(value, MeasureUnit.INCH);
    }

    private static Result joists(String quantity, String token) {
        return USUAL.with(quantity, token).assess(JOISTS);
    }

    /** The row for group A, 2x6 at 16 in is 9-0, or 2743.2 mm. */
    @ParameterizedTest
    @CsvSource({
        "2743.2 mm,COMPLIES",
        "108 in,COMPLIES",
        "9 ft,COMPLIES",
        "2743.1 mm,COMPLIES",
        "2743.3 mm,DOES_NOT_COMPLY"
    })
    void a_span_is_held_against_the_row(String span, Determination determination) {
        Result result = joists("joist span", span);
        assertThat(result.determination()).isEqualTo(determination);
        assertThat(result.allowed()).containsExactly(inches(108));
    }

    @ParameterizedTest
    @CsvSource({
        "1 in,119",
        "11.9 in,119",
        "12 in,119",
        "12.1 in,108",
        "16 in,108",
        "400 mm,108",
        "410 mm,91",
        "24 in,91"
    })
    void a_spacing_between_rows_takes_the_next_larger_one(String spacing, double allowed) {
        assertThat(joists("joist spacing", spacing).allowed()).containsExactly(inches(allowed));
    }

    /** Every spacing by sixteenths of an inch, given in mm, finds the row of its inches. */
    @Test
    void a_key_in_millimetres_finds_the_row_in_inches() {
        for (int sixteenths = 1; sixteenths <= 24 * 16; sixteenths++) {
            double allowed = sixteenths <= 12 * 16 ? 119 : sixteenths <= 16 * 16 ? 108 : 91;
            Measure spacing = Measure.mm(Math.rint(sixteenths / 16.0 * 25.4 * 1e6) / 1e6);
            assertThat(USUAL.with("joist spacing", spacing).assess(JOISTS).allowed())
                    .as("%d/16 in", sixteenths)
                    .containsExactly(inches(allowed));
        }
    }

    @Test
    void a_section_in_millimetres_is_the_size_in_inches() {
        Result result = USUAL.with("section breadth", "38.1 mm")
                .with("section depth", "139.7 mm")
                .assess(JOISTS);
        assertThat(result.determination()).isEqualTo(COMPLIES);
        assertThat(result.rows())
                .extracting(TakenRow::row)
                .containsExactly(
                        "species oak",
                        "section breadth 1.5 in, section depth 5.5 in",
                        "species oak, size 2x6, joist spacing 16 in");
    }

    @Test
    void beyond_the_last_row_it_is_undetermined_with_the_reason_and_the_clause() {
        Result result = joists("joist spacing", "24.1 in");
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.needs()).isEmpty();
        assertThat(result.allowed()).isEmpty();
        assertThat(result.found()).isPresent();
        assertThat(result.sentence())
                .isEqualTo("Joist span: 2743.2 mm. The table has no row for the joist spacing 612.14 mm"
                        + " (Handbook 7, Table 3).");
    }

    @Test
    void a_value_below_the_least_one_has_no_row() {
        assertThat(joists("joist spacing", "-1 mm").determination()).isEqualTo(UNDETERMINED);
        assertThat(joists("joist spacing", "0 mm").determination()).isEqualTo(COMPLIES);
    }

    @Test
    void a_size_that_no_row_of_the_translating_table_has_is_undetermined() {
        Result result = joists("section depth", "6 in");
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.sentence())
                .contains(
                        "There is no size for section breadth 38.1 mm, section depth 152.4 mm in Handbook 7, Table 2");
    }

    @Test
    void what_the_translating_table_gives_may_have_no_row() {
        Result result = USUAL.with("species", new Word("willow")).assess(JOISTS);
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.sentence()).contains("No row is known for species willow (Handbook 7, Table 3).");
    }

    /**
     * The table knows 1.5 in by 5.5 in, 9-0 at 16 in and 7-7 at 24 in, and 1.5 in by 7.25 in, 11-10 at 16 in and not known
     * at 24 in. Sections are held against each other up to 4 in of breadth.
     */
    @ParameterizedTest
    @CsvSource({
        "2.5 in,7.25 in,16 in,142 in,COMPLIES",
        "2.5 in,7.25 in,16 in,142.1 in,UNDETERMINED",
        "2.5 in,7.24 in,16 in,108 in,COMPLIES",
        "2.5 in,7.24 in,16 in,108.1 in,UNDETERMINED",
        "2.5 in,7.25 in,24 in,91 in,COMPLIES",
        "2.5 in,7.25 in,24 in,91.1 in,UNDETERMINED",
        "1.5 in,6 in,16 in,108 in,COMPLIES",
        "4 in,5.5 in,16 in,108 in,COMPLIES",
        "4.01 in,5.5 in,16 in,60 in,UNDETERMINED",
        "1.49 in,7.25 in,16 in,60 in,UNDETERMINED",
        "3.5 in,5.49 in,16 in,60 in,UNDETERMINED"
    })
    void what_suffices_of_a_smaller_section_suffices_of_a_larger_one(
            String breadth, String depth, String spacing, String span, Determination determination) {
        Result result = USUAL.with("section breadth", breadth)
                .with("section depth", depth)
                .with("joist spacing", spacing)
                .with("joist span", span)
                .assess("joist.span-of-smaller");

        assertThat(result.determination()).isEqualTo(determination);
        assertThat(result.isBeyond()).isEqualTo(determination == UNDETERMINED);
    }

    @Test
    void the_smaller_section_is_told() {
        Result result = USUAL.with("section breadth", "2.5 in").assess("joist.span-of-smaller");

        assertThat(result.sentence())
                .contains("There is no size for section breadth 63.5 mm, section depth 139.7 mm")
                .contains("A section that is in no direction larger suffices where this one does."
                        + " Row taken: species oak, size 2x6, joist spacing 16 in (Handbook 7, Table 3).");
        assertThat(result.working()).anySatisfy(step -> assertThat(step.word()).contains("2x6"));
    }

    @Test
    void another_key_that_the_smaller_section_needs_is_asked_for() {
        Result result =
                USUAL.with("section breadth", "2.5 in").without("species").assess("joist.span-of-smaller");

        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.needs()).extracting(Need::what).containsExactly("species");
    }

    /** Larch of 2x6 at 16 in is not permitted, which says nothing of a larger one. */
    @Test
    void what_is_not_permitted_of_a_smaller_section_says_nothing_of_a_larger_one() {
        assertThat(USUAL.with("section breadth", "2.5 in")
                        .with("species", new Word("larch"))
                        .assess("joist.span-of-smaller")
                        .determination())
                .isEqualTo(UNDETERMINED);
    }

    @Test
    void a_hole_in_the_table_is_undetermined_and_not_jumped_over() {
        FoundOnDeck deeper = USUAL.with("section depth", "7.25 in");
        assertThat(deeper.with("joist spacing", "16 in").assess(JOISTS).determination())
                .isEqualTo(COMPLIES);
        Result hole = deeper.with("joist spacing", "20 in").assess(JOISTS);
        assertThat(hole.determination()).isEqualTo(UNDETERMINED);
        assertThat(hole.sentence())
                .contains("No row is known for species oak, size 2x8, joist spacing 24 in (Handbook 7, Table 3).");
    }

    @Test
    void what_the_table_does_not_permit_does_not_comply_whatever_the_span() {
        FoundOnDeck larch = USUAL.with("species", new Word("larch"));
        Result result = larch.assess(JOISTS);
        assertThat(result.determination()).isEqualTo(DOES_NOT_COMPLY);
        assertThat(result.allowed()).isEmpty();
        assertThat(result.utilisation()).isEmpty();
        assertThat(result.sentence())
                .isEqualTo(
                        "Joist span: 2743.2 mm. The table does not permit species larch, size 2x6, joist spacing 16 in"
                                + " (Handbook 7, Table 3).");
        assertThat(larch.without("joist span").assess(JOISTS).determination()).isEqualTo(DOES_NOT_COMPLY);
        assertThat(larch.without("joist span").assess(JOISTS).needs()).isEmpty();
    }

    @Test
    void missing_keys_are_needed_all_at_once() {
        Result result = USUAL.without("species")
                .without("section depth")
                .without("joist spacing")
                .assess(JOISTS);
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.needs()).extracting(Need::what).containsExactly("joist spacing", "section depth", "species");
        assertThat(result.sentence()).contains("Which row of Handbook 7, Table 3 counts cannot be told");
    }

    @Test
    void a_missing_key_is_not_asked_for_where_another_has_no_row_anyway() {
        Result result = USUAL.without("species").with("joist spacing", "30 in").assess(JOISTS);
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.needs()).isEmpty();
        assertThat(USUAL.without("section breadth")
                        .with("section depth", "6 in")
                        .assess(JOISTS)
                        .needs())
                .as("no size has this depth")
                .isEmpty();
    }

    @Test
    void a_missing_span_is_needed_and_what_it_may_be_is_told() {
        Result result = USUAL.without("joist span").assess(JOISTS);
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.needs()).extracting(Need::what).containsExactly("joist span");
        assertThat(result.sentence())
                .contains("cannot be told from the submission", "Needed: at most")
                .contains("Row taken: species oak, size 2x6, joist spacing 16 in");
    }

    @Test
    void a_key_that_the_subject_does_not_have_is_beyond_the_table() {
        Observation none = new Observation.NotApplicable("the deck has no joists");
        assertThat(USUAL.seeing("joist spacing", none).assess(JOISTS).determination())
                .isEqualTo(UNDETERMINED);
        assertThat(USUAL.seeing("species", none).assess(JOISTS).sentence())
                .contains("The table asks for the species: the deck has no joists (Handbook 7, Table 3).");
        assertThat(USUAL.seeing("joist span", none).assess(JOISTS).determination())
                .isEqualTo(NOT_APPLICABLE);
    }

    @Test
    void each_row_taken_is_told_with_its_own_confirmation() {
        assertThat(USUAL.assess(JOISTS).rows())
                .containsExactly(
                        new TakenRow("handbook.groups", "species oak", "Handbook 7, Table 1", Confirmation.PAGE),
                        new TakenRow(
                                "handbook.sizes",
                                "section breadth 1.5 in, section depth 5.5 in",
                                "Handbook 7, Table 2",
                                Confirmation.MEMORY),
                        new TakenRow(
                                "handbook.joists",
                                "species oak, size 2x6, joist spacing 16 in",
                                "Handbook 7, Table 3",
                                Confirmation.PAGE));
        TakenRow deeper =
                USUAL.with("section depth", "7.25 in").assess(JOISTS).rows().get(2);
        assertThat(deeper.confirmedBy()).as("as the table").isEqualTo(Confirmation.SECONDARY_PAGE);
        FoundOnDeck larch = USUAL.with("species", new Word("larch")).with("joist spacing", "12 in");
        assertThat(larch.assess(JOISTS).rows().get(2).confirmedBy()).isEqualTo(Confirmation.MEMORY);
    }

    @Test
    void the_working_tells_how_each_key_leads_to_its_row() {
        List<WorkingStep> steps = joists("joist spacing", "15 in").working();
        assertThat(steps).extracting(WorkingStep::symbol).containsExactly("group", "size", "spacing", "span");
        assertThat(steps.get(0).word()).contains("A");
        assertThat(steps.get(0).meaning()).isEqualTo("from species oak");
        assertThat(steps.get(2).value()).isEqualTo(16);
        assertThat(steps.get(2).meaning())
                .isEqualTo("joist spacing 381 mm, row taken: the next larger value, on the safe side");
        assertThat(steps.get(3).value()).isEqualTo(108);
        assertThat(steps.get(3).equation()).isEqualTo("Handbook 7, Table 3");
    }

    /** Between 9-0 at 8 ft and 8-0 at 10 ft: at 9 ft 3 in half an inch over 8-4, which the nearest inch makes 8-5. */
    @ParameterizedTest
    @CsvSource({
        "8 ft,108",
        "9 ft,102",
        "108.5 in,102",
        "107 in,103",
        "111 in,101",
        "111.1 in,100",
        "10 ft,96",
        "11 ft,90",
        "12 ft,84"
    })
    void between_two_rows_is_interpolated_and_rounded_to_the_nearest_inch(String joistSpan, double allowed) {
        assertThat(USUAL.with("joist span", joistSpan).assess(BEAMS).allowed()).containsExactly(inches(allowed));
    }

    @ParameterizedTest
    @CsvSource({"102 in,COMPLIES", "2590.8 mm,COMPLIES", "2590.9 mm,DOES_NOT_COMPLY", "2590.7 mm,COMPLIES"})
    void an_interpolated_value_is_a_limit_like_any_other(String span, Determination determination) {
        assertThat(USUAL.with("beam span", span).assess(BEAMS).determination()).isEqualTo(determination);
    }

    @Test
    void the_interpolation_is_shown_with_its_clause_and_both_rows() {
        Result result = USUAL.with("joist span", "107 in").assess(BEAMS);
        assertThat(result.working())
                .extracting(WorkingStep::symbol)
                .containsExactly("plies", "x", "x_1", "x_2", "y_1", "y_2", "y", "span");
        WorkingStep y = result.working().get(6);
        assertThat(y.expression().orElseThrow().text()).isEqualTo("y_1 + (y_2 - y_1) * (x - x_1) / (x_2 - x_1)");
        assertThat(y.equation()).isEqualTo("Table 4, note");
        assertThat(y.value()).isBetween(102.4, 102.6);
        assertThat(result.working().get(7).meaning()).isEqualTo("y rounded to the nearest 1 in");
        assertThat(result.rows())
                .extracting(TakenRow::row)
                .containsExactly("plies 1, joist span 8 ft", "plies 1, joist span 10 ft");
        assertThat(result.sentence())
                .contains(
                        "Interpolated between joist span 8 ft and 10 ft, plies 1 (Handbook 7, Table 4; permitted by Table 4, note).");
    }

    /** Beside the hole at 24 in, 2x8 of group A may span 11-10 at 16 in: more is too much at 24 in. */
    @ParameterizedTest
    @CsvSource({"142 in,UNDETERMINED", "142.1 in,DOES_NOT_COMPLY"})
    void a_more_favourable_row_refuses_what_a_hole_cannot_permit(String span, Determination determination) {
        Result result = USUAL.with("section depth", "7.25 in")
                .with("joist spacing", "20 in")
                .with("joist span", span)
                .assess(JOISTS);
        assertThat(result.determination()).isEqualTo(determination);
        assertThat(result.sentence()).contains("No row is known for species oak, size 2x8, joist spacing 24 in");
    }

    /** Beside the hole at 8 ft, beams of two plies may span 12-0 at 6 ft and 10-0 at 10 ft. */
    @ParameterizedTest
    @CsvSource({"120 in,COMPLIES", "120.1 in,UNDETERMINED", "144 in,UNDETERMINED", "144.1 in,DOES_NOT_COMPLY"})
    void rows_on_both_sides_of_a_hole_decide_what_they_can(String span, Determination determination) {
        Result result = USUAL.with("plies", "2")
                .with("joist span", "7 ft")
                .with("beam span", span)
                .assess(BEAMS);
        assertThat(result.determination()).isEqualTo(determination);
    }

    @Test
    void the_row_that_decides_beside_a_hole_is_named() {
        Result result = USUAL.with("plies", "2").with("joist span", "7 ft").assess(BEAMS);
        assertThat(result.sentence())
                .contains("No row is known for plies 2, joist span 8 ft (Handbook 7, Table 4).")
                .contains("Row taken, on the safe side: plies 2, joist span 10 ft (Handbook 7, Table 4).");
        assertThat(result.rows()).extracting(TakenRow::row).containsExactly("plies 2, joist span 10 ft");
    }

    @Test
    void beside_a_hole_the_safe_neighbour_counts() {
        FoundOnDeck two = USUAL.with("plies", "2");
        assertThat(two.with("joist span", "9 ft").assess(BEAMS).allowed())
                .as("the table has nothing at 8 ft")
                .containsExactly(inches(120));
        assertThat(two.with("joist span", "7 ft").assess(BEAMS).allowed())
                .as("nor has it on the far side of the hole anything safer than at 10 ft")
                .containsExactly(inches(120));
        assertThat(two.with("joist span", "8 ft").assess(BEAMS).allowed()).containsExactly(inches(120));
    }

    @Test
    void nothing_is_interpolated_with_what_is_not_permitted() {
        FoundOnDeck two = USUAL.with("plies", "2");
        assertThat(two.with("joist span", "11 ft").assess(BEAMS).determination())
                .isEqualTo(DOES_NOT_COMPLY);
        assertThat(two.with("joist span", "13 ft").assess(BEAMS).allowed()).containsExactly(inches(72));
    }

    @Test
    void before_the_first_row_the_first_one_counts_and_beyond_the_last_none() {
        assertThat(USUAL.with("joist span", "3 ft").assess(BEAMS).allowed()).containsExactly(inches(119));
        assertThat(USUAL.with("joist span", "13 ft")
                        .with("beam span", "84 in")
                        .assess(BEAMS)
                        .determination())
                .as("a hole at 14 ft, and 7-0 at 12 ft")
                .isEqualTo(UNDETERMINED);
        assertThat(USUAL.with("joist span", "15 ft").assess(BEAMS).determination())
                .isEqualTo(UNDETERMINED);
    }

    @Test
    void an_exact_key_takes_its_own_row_only() {
        Result result = USUAL.with("plies", "3").assess(BEAMS);
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.sentence()).contains("no row for the plies 3");
    }

    @ParameterizedTest
    @CsvSource({
        "1500 psf,18",
        "1999 psf,18",
        "2000 psf,16",
        "2500 psf,16",
        "3000 psf,12",
        "5000 psf,12",
        "95.76 kN/m2,16"
    })
    void a_key_that_is_safe_downwards_takes_the_next_smaller_row(String resistance, double side) {
        String asked = resistance.equals("95.76 kN/m2") ? "95.7606 kN/m2" : resistance;
        assertThat(USUAL.with("bearing resistance", asked).assess(FOOTINGS).allowed())
                .containsExactly(inches(side));
    }

    @Test
    void below_the_smallest_row_of_a_key_that_is_safe_downwards_there_is_none() {
        assertThat(USUAL.with("bearing resistance", "1499 psf").assess(FOOTINGS).determination())
                .isEqualTo(UNDETERMINED);
    }

    @ParameterizedTest
    @CsvSource({"406.4 mm,COMPLIES", "406.3 mm,DOES_NOT_COMPLY", "406.5 mm,COMPLIES"})
    void what_must_be_at_least_is_held_the_other_way(String side, Determination determination) {
        Result result = USUAL.with("footing side", side).assess(FOOTINGS);
        assertThat(result.determination()).isEqualTo(determination);
    }

    @Test
    void what_the_source_takes_for_the_unstated_is_an_assumption() {
        Result result = USUAL.without("bearing resistance").assess(FOOTINGS);
        assertThat(result.determination()).isEqualTo(DOES_NOT_COMPLY);
        assertThat(result.allowed()).containsExactly(inches(18));
        assertThat(result.assumptions())
                .containsExactly(
                        "The bearing resistance is not stated: 1500 psf is taken to enter Handbook 7, Table 5.");
        assertThat(USUAL.assess(FOOTINGS).assumptions()).isEmpty();
    }
}
