package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.ruleset.Provision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where a table of the residential code does not reach, the calculation by NDS 2018 that stands beside it is the answer, and the
 * table's finding tells it: against the calculation's own findings of the same report.
 */
class BeyondTablesTest {

    private static final String SAMPLE = "us-attached-deck.json";

    private static Report report(ObjectNode submission) {
        return BuiltIn.report(BuiltIn.bytes(submission));
    }

    private static ObjectNode sample() {
        return (ObjectNode) BuiltIn.sample(SAMPLE);
    }

    private static ObjectNode under(String edition) {
        ObjectNode deck = sample();
        ((ObjectNode) deck.at("/ruleset")).put("edition", edition);
        return deck;
    }

    private static Provision provision(String edition, String id) {
        return BuiltIn.RULESETS.edition("us-irc", edition).orElseThrow().provisions().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static ReportedFinding finding(Report report, String provision) {
        return report.findings().stream()
                .filter(f -> f.provision().equals(provision))
                .min(Comparator.comparing(ReportedFinding::determination))
                .orElseThrow();
    }

    /** Snow of 80 psf on the ground is beyond the tables of every edition; the deck's own snow is calculated. */
    @ParameterizedTest
    @CsvSource({"2015, joist.span-overhanging", "2018, joist.span", "2021, joist.span", "2024, joist.span"})
    void beyond_the_scope_the_worst_calculation_is_told(String edition, String provision) {
        ObjectNode deck = under(edition);
        ((ObjectNode) deck.at("/site")).put("groundSnowLoad", "80 psf").put("snowLoad", "56 psf");
        Report report = report(deck);
        ReportedFinding table = finding(report, provision);

        assertThat(table.determination()).isEqualTo(Determination.UNDETERMINED);
        assertThat(table.calculated()).isPresent();
        Optional<BigDecimal> worst = provision(edition, provision).calculated().stream()
                .flatMap(id -> finding(report, id).utilisation().stream())
                .max(Comparator.naturalOrder());
        assertThat(table.calculated().get().utilisation()).isEqualTo(worst);
        assertThat(table.sentence())
                .contains("Beyond what this provision covers", worst.get().toPlainString());
    }

    /** A 2x14 is in no table: 2x12 suffices on the sample's span, and a longer one is left to the calculation. */
    @Test
    void a_section_that_no_table_has_complies_as_a_smaller_one_or_is_calculated() {
        ObjectNode deck = under("2018");
        ((ObjectNode) deck.at("/timbers/0")).put("depth", 13.25);
        assertThat(finding(report(deck), "joist.span").determination()).isEqualTo(Determination.COMPLIES);

        ((ObjectNode) deck.at("/platforms/0/joists")).put("spacing", 24);
        ReportedFinding wider = finding(report(deck), "joist.span");
        assertThat(wider.determination()).isEqualTo(Determination.UNDETERMINED);
        assertThat(wider.calculated()).isPresent();
    }

    /** Inside the table nothing is calculated in its place, whether it complies or not. */
    @ParameterizedTest
    @CsvSource({"11.25, COMPLIES", "5.5, DOES_NOT_COMPLY"})
    void where_the_table_reaches_it_alone_decides(double depth, Determination determination) {
        ObjectNode deck = under("2018");
        ((ObjectNode) deck.at("/timbers/0")).put("depth", depth);
        ReportedFinding table = finding(report(deck), "joist.span");

        assertThat(table.determination()).isEqualTo(determination);
        assertThat(table.calculated()).isEmpty();
    }

    @Test
    void a_calculation_that_fails_says_so_and_decides_nothing() {
        ObjectNode deck = under("2018");
        ((ObjectNode) deck.at("/site")).put("groundSnowLoad", "300 psf").put("snowLoad", "300 psf");
        ReportedFinding table = finding(report(deck), "joist.span");

        assertThat(table.determination()).isEqualTo(Determination.UNDETERMINED);
        assertThat(table.calculated().orElseThrow().determination()).isEqualTo(Determination.DOES_NOT_COMPLY);
        assertThat(table.sentence()).contains("over 1: it would not pass");
    }

    @Test
    void what_the_calculation_needs_is_told() {
        ObjectNode deck = under("2018");
        ((ObjectNode) deck.at("/site")).put("groundSnowLoad", "80 psf").put("snowLoad", "56 psf");
        ((ObjectNode) deck.at("/timbers/0")).remove("grade");
        ReportedFinding table = finding(report(deck), "joist.span");

        assertThat(table.calculated().orElseThrow().determination()).isEqualTo(Determination.UNDETERMINED);
        assertThat(table.sentence()).contains("The calculation does not tell either", "grade");
    }

    /** Beams, posts and footings have calculations of their own. */
    @ParameterizedTest
    @CsvSource({"beam.span, nds.beam", "post.height, nds.post.column", "footing.side, footing.pressure"})
    void each_kind_of_member_has_its_calculation(String table, String by) {
        ObjectNode deck = under("2021");
        ((ObjectNode) deck.at("/site")).put("groundSnowLoad", "80 psf").put("snowLoad", "56 psf");
        Report report = report(deck);
        List<ReportedFinding> beyond = report.findings().stream()
                .filter(f -> f.provision().equals(table)
                        || table.equals("footing.side") && f.provision().equals("footing.diameter"))
                .filter(f -> f.determination() == Determination.UNDETERMINED)
                .toList();

        assertThat(beyond).isNotEmpty();
        assertThat(beyond)
                .allSatisfy(f ->
                        assertThat(f.calculated().orElseThrow().provision()).startsWith(by));
    }

    /** Every table of spans, heights and sizes names what calculates it; the fasteners of ledgers have no calculation. */
    @ParameterizedTest
    @ValueSource(strings = {"2015", "2018", "2021", "2024"})
    void tables_of_members_name_their_calculations(String edition) {
        List<Provision> tables = BuiltIn.RULESETS.edition("us-irc", edition).orElseThrow().provisions().stream()
                .filter(p -> p.id().matches(
                                "(joist|beam)\\.span.*|joist\\.overhang.*|post\\.height.*|footing\\.(side|diameter).*"))
                .toList();

        assertThat(tables)
                .hasSizeGreaterThan(5)
                .allSatisfy(p -> assertThat(p.calculated()).as(p.id()).isNotEmpty());
    }
}
