package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.ruleset.TableKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What differs between the editions of 2015, 2018 and 2021 of the International Residential Code in what they say of
 * decks. Sources: for 2015 a forum, snippets of the code and the trade's press; for 2018 a city's reproduction of R507;
 * for 2021 recalled, the footing tables of both recalled; all as told beside each check.
 */
class UsEditionsDifferTest {

    private static Provision provision(String edition, String id) {
        return find(edition, id).orElseThrow();
    }

    private static Optional<Provision> find(String edition, String id) {
        return BuiltIn.RULESETS.edition("us-irc", edition).orElseThrow().provisions().stream()
                .filter(p -> p.id().equals(id))
                .findFirst();
    }

    private static Rule.LookUp lookUp(String edition, String id) {
        return (Rule.LookUp) provision(edition, id).rule();
    }

    private static List<Value> column(String edition, String id, String column) {
        return lookUp(edition, id).table().rows().stream()
                .map(row -> row.cells().get(column))
                .distinct()
                .toList();
    }

    private static List<Double> numbers(String edition, String id, String column) {
        return column(edition, id, column).stream()
                .map(cell -> ((Measure) cell).value())
                .sorted()
                .toList();
    }

    private static List<String> keys(String edition, String id) {
        return lookUp(edition, id).keys().stream().map(TableKey::column).toList();
    }

    /** 2015: ledger first, secondary pages; 2018: a city's page; 2021: as 2018, recalled. */
    @ParameterizedTest
    @CsvSource({
        "2015, ledger.fastener-spacing, R507.2",
        "2015, decking.span, R507.4",
        "2015, joist.span, R507.5",
        "2015, beam.span, R507.6",
        "2015, joist.bearing, R507.7",
        "2015, post.height, R507.8",
        "2018, footing.side, R507.3",
        "2018, post.height, R507.4",
        "2018, beam.span, R507.5",
        "2018, joist.span, R507.6",
        "2018, decking.span, R507.7",
        "2018, ledger.fastener-spacing, R507.9",
        "2021, footing.side, R507.3",
        "2021, post.height, R507.4",
        "2021, beam.span, R507.5",
        "2021, joist.span, R507.6",
        "2021, decking.span, R507.7",
        "2021, ledger.fastener-spacing, R507.9",
        "2021, guard.posts-not-notched, R507.10"
    })
    void sections_stand_in_another_order(String edition, String id, String section) {
        assertThat(provision(edition, id).citation().clause()).matches("(Table )?" + section + "\\b.*");
    }

    /** Recalled: the section on guard posts came in 2021. */
    @Test
    void guard_posts_have_a_section_from_2021_on() {
        assertThat(find("2015", "guard.posts-not-notched")).isEmpty();
        assertThat(find("2018", "guard.posts-not-notched")).isEmpty();
        assertThat(find("2021", "guard.posts-not-notched")).isPresent();
    }

    /** The trade's press, secondary pages: 40 psf alone in 2015 and 2018; 40 psf and snow of 50, 60 and 70 in 2021. */
    @Test
    void tables_of_2021_have_snow() {
        assertThat(keys("2015", "joist.span")).doesNotContain("load");
        assertThat(keys("2018", "joist.span")).doesNotContain("load");
        assertThat(numbers("2021", "joist.span", "load")).containsExactly(40.0, 50.0, 60.0, 70.0);
        assertThat(numbers("2021", "ledger.fastener-spacing", "load")).containsExactly(40.0, 50.0, 60.0, 70.0);
    }

    /** The trade's press, a secondary page: beams of one ply from 2018 on, southern pine. */
    @Test
    void beams_of_one_ply_come_in_2018() {
        assertThat(numbers("2015", "beam.span", "plies")).containsExactly(2.0, 3.0);
        assertThat(numbers("2018", "beam.span", "plies")).containsExactly(1.0, 2.0, 3.0);
        assertThat(numbers("2021", "beam.span", "plies")).containsExactly(1.0, 2.0, 3.0);
        assertThat(lookUp("2018", "beam.span").table().rows())
                .filteredOn(row -> ((Measure) row.cells().get("plies")).value() == 1)
                .filteredOn(row -> ((Word) row.cells().get("size")).word().startsWith("2x"))
                .extracting(row -> row.cells().get("group"))
                .containsOnly(new Word("SP"));
    }

    /** The trade's press, secondary pages: joist span in 2015 and 2018, effective joist span in 2021. */
    @Test
    void beams_of_2021_are_found_by_effective_joist_span() {
        for (String edition : List.of("2015", "2018")) {
            assertThat(joistSpan(edition).times()).isEmpty();
            assertThat(lookUp(edition, "beam.span").interpolation()).isEmpty();
        }
        TableKey.Factor factor = joistSpan("2021").times().orElseThrow();
        assertThat(factor.key().quantity()).isEqualTo("joist overhang over span carried");
        assertThat(lookUp("2021", "beam.span").interpolation()).isPresent();
    }

    private static TableKey.Direct joistSpan(String edition) {
        return (TableKey.Direct) lookUp(edition, "beam.span").keys().stream()
                .filter(key -> key.column().equals("joistSpan"))
                .findFirst()
                .orElseThrow();
    }

    /** The factor recalled, or by statics (1 + C/J)² / 1.5625 where that is larger. */
    @ParameterizedTest
    @CsvSource({"0, 0.66", "0.083333333, 0.72", "0.1, 0.80", "0.125, 0.84", "0.166666667, 0.90", "0.25, 1.00"})
    void a_joist_span_factor_is_never_on_the_unsafe_side(double overhang, double recalled) {
        TableKey.Factor factor = joistSpan("2021").times().orElseThrow();
        double held = factor.table().rows().stream()
                .filter(row -> ((Measure) row.cells().get("overhang")).value() == overhang)
                .map(row -> ((Measure) row.cells().get("factor")).value())
                .findFirst()
                .orElseThrow();
        double statics = (1 + overhang) * (1 + overhang) / 1.5625;
        assertThat(held).isCloseTo(Math.max(recalled, statics), org.assertj.core.data.Offset.offset(1e-8));
    }

    /** Recalled: no table in 2015, four soil columns in 2018, three in 2021 with a smaller least size and 5 sq ft. */
    @Test
    void footing_tables_have_other_columns() {
        assertThat(find("2015", "footing.side")).isEmpty();
        assertThat(numbers("2018", "footing.side", "soil")).containsExactly(1500.0, 2000.0, 2500.0, 3000.0);
        assertThat(numbers("2021", "footing.side", "soil")).containsExactly(1500.0, 2000.0, 3000.0);
        assertThat(numbers("2018", "footing.side", "tributary").get(0)).isEqualTo(20);
        assertThat(numbers("2021", "footing.side", "tributary").get(0)).isEqualTo(5);
    }

    /** Secondary pages: one row in 2015, one and a note for three plies in 2018, species, load and area in 2021. */
    @Test
    void post_tables_ask_for_more_each_time() {
        assertThat(keys("2015", "post.height")).containsExactly("size");
        assertThat(keys("2018", "post.height")).containsExactly("size", "plies");
        assertThat(keys("2021", "post.height")).containsExactly("load", "group", "size", "tributary");
    }

    /** Proposal text and secondary pages: R403.1.4.1 in 2015 and 2018, in R507.3 from 2021 on. */
    @Test
    void the_rule_on_frost_moves() {
        assertThat(provision("2015", "footing.frost").citation().clause()).isEqualTo("R403.1.4.1");
        assertThat(provision("2018", "footing.frost").citation().clause()).isEqualTo("R403.1.4.1");
        assertThat(provision("2021", "footing.frost").citation().clause()).startsWith("R507.3");
    }

    /** Nothing is claimed for 2024: no text of it was read. */
    @Test
    void there_is_no_edition_of_2024() {
        assertThat(BuiltIn.RULESETS.edition("us-irc", "2024")).isEmpty();
    }
}
