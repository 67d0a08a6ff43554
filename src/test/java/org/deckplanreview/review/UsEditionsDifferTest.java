package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.ruleset.TableKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What differs between the editions of 2015, 2018, 2021 and 2024 of the International Residential Code in what they say
 * of decks, as states' adoptions of them print it (secondary pages).
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

    /** R507 of each edition: ledgers first in 2015. */
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
        "2024, beam.span-overhanging, R507.5",
        "2021, joist.span, R507.6",
        "2021, decking.span, R507.7",
        "2021, ledger.fastener-spacing, R507.9",
        "2021, guard.posts-not-notched, R507.10",
        "2024, footing.side, R507.3",
        "2024, post.height, R507.4",
        "2024, joist.span, R507.6",
        "2024, ledger.flashing-up, R507.9",
        "2024, guard.posts-not-notched, R507.10",
        "2021, stair.rise, R311.7",
        "2024, stair.rise, R318.7",
        "2021, guard.needed, R312.1",
        "2024, guard.needed, R321.1",
        "2021, decay.field-cuts, R317.1",
        "2024, decay.field-cuts, R304.1"
    })
    void sections_stand_elsewhere(String edition, String id, String section) {
        assertThat(provision(edition, id).citation().clause()).matches("(Tables? )?" + section + "\\b.*");
    }

    /** R507.10. */
    @Test
    void guard_posts_have_a_section_from_2021_on() {
        assertThat(find("2015", "guard.posts-not-notched")).isEmpty();
        assertThat(find("2018", "guard.posts-not-notched")).isEmpty();
        assertThat(find("2021", "guard.posts-not-notched")).isPresent();
        assertThat(find("2024", "guard.posts-not-notched")).isPresent();
    }

    /** Tables R507.5 and R507.6: 40 psf alone in 2015 and 2018, whose footings have snow (R507.3.1); all tables from 2021 on. */
    @Test
    void tables_of_2021_have_snow() {
        assertThat(keys("2015", "joist.span")).doesNotContain("load");
        assertThat(keys("2018", "joist.span")).doesNotContain("load");
        assertThat(numbers("2021", "joist.span", "load")).containsExactly(40.0, 50.0, 60.0, 70.0);
        for (String edition : List.of("2021", "2024")) {
            for (String id :
                    List.of("joist.span", "beam.span", "post.height", "footing.side", "ledger.fastener-spacing")) {
                assertThat(numbers(edition, id, "load")).containsExactly(40.0, 50.0, 60.0, 70.0);
            }
        }
        assertThat(numbers("2018", "footing.side", "load")).containsExactly(40.0, 50.0, 60.0, 70.0);
    }

    /** Table R507.5 and its predecessor: beams of one ply of 2x from 2018 on, then of southern pine, from 2021 on of all species. */
    @Test
    void beams_of_one_ply_come_in_2018() {
        assertThat(lookUp("2015", "beam.span").table().rows())
                .filteredOn(row -> ((Measure) row.cells().get("plies")).value() == 1)
                .extracting(row -> ((Word) row.cells().get("size")).word())
                .allMatch(size -> size.startsWith("3x") || size.startsWith("4x"));
        assertThat(numbers("2018", "beam.span", "plies")).containsExactly(1.0, 2.0, 3.0);
        assertThat(numbers("2021", "beam.span", "plies")).containsExactly(1.0, 2.0, 3.0);
        assertThat(lookUp("2018", "beam.span").table().rows())
                .filteredOn(row -> ((Measure) row.cells().get("plies")).value() == 1)
                .filteredOn(row -> ((Word) row.cells().get("size")).word().startsWith("2x"))
                .extracting(row -> row.cells().get("group"))
                .containsOnly(new Word("SP"));
        assertThat(lookUp("2021", "beam.span").table().rows())
                .filteredOn(row -> ((Measure) row.cells().get("plies")).value() == 1)
                .extracting(row -> row.cells().get("group"))
                .contains(new Word("SP"), new Word("DFL_HF_SPF"), new Word("RW_WC_PP_RP"));
    }

    /** Joist span in 2015 and 2018, effective joist span in 2021, joist span and cantilever in 2024. */
    @Test
    void beams_of_2021_are_found_by_effective_joist_span() {
        for (String edition : List.of("2015", "2018")) {
            assertThat(joistSpan(edition).times()).isEmpty();
            assertThat(lookUp(edition, "beam.span").interpolation()).isEmpty();
        }
        TableKey.Factor factor = joistSpan("2021").times().orElseThrow();
        assertThat(factor.key().quantity()).isEqualTo("joist overhang over span carried");
        assertThat(factor.interpolation()).isPresent();
        assertThat(lookUp("2021", "beam.span").interpolation()).isPresent();
        assertThat(lookUp("2024", "beam.span").interpolation()).isPresent();
        assertThat(lookUp("2024", "beam.span-overhanging").interpolation()).isEmpty();
        assertThat(keys("2024", "beam.span-overhanging")).contains("column");
    }

    private static TableKey.Direct joistSpan(String edition) {
        return (TableKey.Direct) lookUp(edition, "beam.span").keys().stream()
                .filter(key -> key.column().equals("joistSpan"))
                .findFirst()
                .orElseThrow();
    }

    /** Table R507.5(5) of 2021. */
    @Test
    void joist_span_factors_are_those_of_the_table() {
        assertThat(joistSpan("2021").times().orElseThrow().table().rows())
                .extracting(row -> ((Measure) row.cells().get("factor")).value())
                .containsExactly(0.66, 0.72, 0.80, 0.84, 0.90, 1.00);
    }

    /** Table R507.3.1: none in 2015, four soil columns in 2018, three from 2021 on with a smaller least size and 5 sq ft. */
    @Test
    void footing_tables_have_other_columns() {
        assertThat(find("2015", "footing.side")).isEmpty();
        assertThat(numbers("2018", "footing.side", "soil")).containsExactly(1500.0, 2000.0, 2500.0, 3000.0);
        assertThat(numbers("2021", "footing.side", "soil")).containsExactly(1500.0, 2000.0, 3000.0);
        assertThat(numbers("2018", "footing.side", "tributary").get(0)).isEqualTo(20);
        assertThat(numbers("2021", "footing.side", "tributary").get(0)).isEqualTo(5);
    }

    /** Table R507.8, later R507.4: one row in 2015, one and a note for three plies in 2018, species, load and area in 2021. */
    @Test
    void post_tables_ask_for_more_each_time() {
        assertThat(keys("2015", "post.height")).containsExactly("size");
        assertThat(keys("2018", "post.height")).containsExactly("size", "plies");
        assertThat(keys("2021", "post.height")).containsExactly("load", "group", "size", "tributary");
    }

    /** R403.1.4.1 in 2015 and 2018, in R507.3 from 2021 on. */
    @Test
    void the_rule_on_frost_moves() {
        assertThat(provision("2015", "footing.frost").citation().clause()).isEqualTo("R403.1.4.1");
        assertThat(provision("2018", "footing.frost").citation().clause()).isEqualTo("R403.1.4.1");
        assertThat(provision("2021", "footing.frost").citation().clause()).startsWith("R507.3");
    }

    /** R507.9.1.5 and R507.9.1.6 of 2024. */
    @Test
    void flashing_has_sizes_from_2024_on() {
        for (String id : List.of("ledger.flashing-up", "ledger.flashing-out", "ledger.flashing-lap")) {
            assertThat(find("2021", id)).isEmpty();
            assertThat(find("2024", id)).isPresent();
        }
    }

    /** R311.7.3: 147 in of 2015, 151 in since. */
    @ParameterizedTest
    @CsvSource({"2015, 147", "2018, 151", "2021, 151", "2024, 151"})
    void flights_may_rise_higher_from_2018_on(String edition, double inches) {
        Rule.Limit limit = (Rule.Limit) provision(edition, "stair.flight-rise").rule();
        assertThat(((Measure) limit.rows().get(0).values().get(0)).in(MeasureUnit.INCH))
                .isEqualTo(inches);
    }
}
