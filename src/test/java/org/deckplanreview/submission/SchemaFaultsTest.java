package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.deckplanreview.kernel.Pointer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every family of rules in the schema, with the words in which its faults are told. */
class SchemaFaultsTest {

    @Test
    void a_missing_member_is_pointed_at_as_if_it_were_there() {
        assertThat(only(SampleDeck.complete().without("/use/occupancy")))
                .isEqualTo(new Fault(
                        Pointer.of("/use/occupancy"),
                        "The member is missing. Who uses the deck.",
                        "one of single-dwelling, shared-residential, public"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/reference",
                "/units",
                "/reviewOn",
                "/ruleset",
                "/ruleset/region",
                "/use",
                "/use/occupancy",
                "/timbers",
                "/timbers/0/id",
                "/timbers/0/breadth",
                "/timbers/0/depth",
                "/platforms",
                "/platforms/0/id",
                "/platforms/0/outline",
                "/platforms/0/joists/spacing",
                "/platforms/0/beams/0/line/from",
                "/platforms/0/fall/gradient",
                "/platforms/0/beams/0/joint/count",
                "/platforms/0/beams/0/plyFixing/fixing",
                "/platforms/0/ledger/fixings/base",
                "/platforms/0/guards/0/posts/spacing",
                "/platforms/0/braces/0/direction",
                "/platforms/0/stairs/0/going",
                "/platforms/0/stairs/0/handrails/sides",
                "/platforms/0/stairs/0/strings/count",
                "/siteMeasurements/diagonals/0/to",
                "/siteMeasurements/levels/0/at"
            })
    void a_member_that_is_needed_is_a_fault_when_left_out(String pointer) {
        Fault fault = only(SampleDeck.everyMember().without(pointer));

        assertThat(fault.pointer().value()).isEqualTo(pointer);
        assertThat(fault.detail()).startsWith("The member is missing. ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/title",
                "/site",
                "/site/groundLevels",
                "/site/soil",
                "/protection",
                "/protection/fixings",
                "/use/youngChildren",
                "/timbers/0/strengthClass",
                "/timbers/0/treatment",
                "/timbers/0/treatment/serviceLifeYears",
                "/platforms/0/level",
                "/platforms/0/fall",
                "/platforms/0/boards",
                "/platforms/0/joists",
                "/platforms/0/edges",
                "/platforms/0/beams/0/posts",
                "/platforms/0/posts/0/footing",
                "/platforms/0/footings/0/depth",
                "/platforms/0/guards/0/height",
                "/site/planning",
                "/site/planning/gardenCovered",
                "/protection/weedControl",
                "/platforms/0/beams/0/joint/spacing",
                "/platforms/0/guards/0/posts/leverArm",
                "/platforms/0/braces",
                "/platforms/0/braces/0/fixingResistance",
                "/platforms/0/stairs",
                "/platforms/0/stairs/0/footLevel",
                "/platforms/0/stairs/0/handrails/height",
                "/siteMeasurements",
                "/siteMeasurements/diagonals"
            })
    void a_member_that_a_designer_may_not_know_can_be_left_out(String pointer) {
        SampleDeck deck = SampleDeck.everyMember()
                .without("/platforms/0/ledger")
                .without("/platforms/0/edges/2")
                .without("/platforms/0/beams/0/plyFixing")
                .without(pointer);

        assertThat(deck.read()).isInstanceOf(ReadResult.Read.class);
    }

    @Test
    void a_list_that_is_left_out_is_empty() {
        Submission s = SampleDeck.complete()
                .without("/site")
                .without("/protection")
                .without("/platforms/0/ledger")
                .without("/platforms/0/edges")
                .submission();

        assertThat(s.site().groundLevels()).isEmpty();
        assertThat(s.site().walls()).isEmpty();
        assertThat(s.protection().fixings()).isEmpty();
        assertThat(s.protection().cutEndsTreated()).isEmpty();
        assertThat(s.platforms().get(0).edges()).isEmpty();
        assertThat(s.platforms().get(0).braces()).isEmpty();
        assertThat(s.platforms().get(0).stairs()).isEmpty();
        assertThat(s.siteMeasurements()).isEmpty();
        assertThat(s.use().heavyItems()).isEmpty();
    }

    @Test
    void an_unknown_member_is_named_with_the_nearest_known() {
        Fault fault = only(SampleDeck.complete().with("/platforms/0/joists/spaceing", 400));

        assertThat(fault.pointer().value()).isEqualTo("/platforms/0/joists/spaceing");
        assertThat(fault.detail()).isEqualTo("'spaceing' is not a known member; the nearest known is spacing");
        assertThat(fault.accepted())
                .isEqualTo(
                        "one of the members timber, direction, spacing, endNotch, hangerResistance, holdDownResistance,"
                                + " blocked");
    }

    @Test
    void an_unknown_member_like_no_known_one_names_none() {
        assertThat(only(SampleDeck.complete().with("/zzzzzzzz", 1)).detail())
                .isEqualTo("'zzzzzzzz' is not a known member");
    }

    /** RFC 6901 section 4: ~ is written ~0 and / is written ~1. */
    @Test
    void a_pointer_escapes_what_rfc_6901_escapes() {
        ObjectNode document = SampleDeck.complete().node();
        document.put("a/b~c", 1);

        assertThat(only(document).pointer().value()).isEqualTo("/a~1b~0c");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/reference | 5 | Found the number 5",
                "/timbers | {} | Found an object",
                "/timbers/0 | [1, 2] | Found a list of 2",
                "/timbers/0/breadth | '\"47\"' | Found the text '47'",
                "/timbers/0/breadth | null | Found null",
                "/timbers/0/installedWet | '\"no\"' | Found the text 'no'",
                "/timbers/0/treatment/serviceLifeYears | 30.5 | Found the number 30.5",
                "/platforms/0/outline/0 | 7 | Found the number 7",
                "/platforms/0/outline/0/0 | true | Found true",
            })
    void a_wrong_type_is_told_by_what_was_found(String pointer, String json, String detail) {
        Fault fault = only(SampleDeck.complete().withJson(pointer, json));

        assertThat(fault.pointer().value()).isEqualTo(pointer);
        assertThat(fault.detail()).isEqualTo(detail);
        assertThat(fault.accepted()).isNotBlank();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/timbers/0/breadth | 0 | too small | a number from 0.04 to 10000",
                "/timbers/0/breadth | -47 | too small | a number from 0.04 to 10000",
                "/timbers/0/breadth | 10001 | too large | a number from 0.04 to 10000",
                "/platforms/0/outline/0/0 | -1000001 | too small | a number from -1000000 to 1000000",
                "/platforms/0/outline/0/0 | 99999999999999999999999 | too large | a number from -1000000 to 1000000",
                "/platforms/0/level/z | 1000000.5 | too large | a number from -1000000 to 1000000",
                "/platforms/0/beams/0/plies | 0 | too small | a whole number from 1 to 6",
                "/platforms/0/beams/0/plies | 7 | too large | a whole number from 1 to 6",
                "/timbers/0/treatment/serviceLifeYears | 0 | too small | a whole number from 1 to 200",
                "/site/frostDepth | -1 | too small | a number from 0 to 10000",
                "/platforms/0/braces/0/reach | 0 | too small | a number from 0.04 to 10000",
                "/platforms/0/stairs/0/risers | 0 | too small | a whole number from 1 to 60",
                "/platforms/0/stairs/0/risers | 61 | too large | a whole number from 1 to 60",
                "/platforms/0/stairs/0/strings/count | 1 | too small | a whole number from 2 to 10",
                "/platforms/0/beams/0/joint/count | 0 | too small | a whole number from 1 to 40",
                "/platforms/0/beams/0/joint/rows | 11 | too large | a whole number from 1 to 10",
                "/siteMeasurements/diagonals/0/length | 1000001 | too large | a number from 0 to 1000000",
            })
    void a_number_out_of_range_names_the_range(String pointer, String json, String wrong, String accepted) {
        Fault fault = only(SampleDeck.everyMember().withJson(pointer, json));

        assertThat(fault)
                .isEqualTo(
                        new Fault(Pointer.of(pointer), "Found the number " + json + ", which is " + wrong, accepted));
    }

    @Test
    void a_whole_number_may_be_written_with_a_point() {
        Submission s = SampleDeck.complete()
                .withJson("/platforms/0/beams/0/plies", "2.0")
                .submission();

        assertThat(s.platforms().get(0).beams().get(0).plies()).isEqualTo(2);
    }

    @Test
    void a_word_beside_a_closed_list_names_the_nearest_of_it() {
        assertThat(only(SampleDeck.complete().with("/timbers/0/strengthClass", "C25")))
                .isEqualTo(new Fault(
                        Pointer.of("/timbers/0/strengthClass"),
                        "Found the text 'C25'; the nearest accepted is C24",
                        "one of C14, C16, C18, C24, C27, C30, D30, D40"));
        assertThat(only(SampleDeck.complete().with("/units", 5)).accepted()).isEqualTo("one of mm, in");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/reviewOn | 31.3.2026 | a date of the calendar",
                "/reviewOn | 2026-13-01 | a date of the calendar",
                "/reviewOn | 1899-12-31 | a date of the calendar",
                "/ruleset/region | UK England | the name of a region",
                "/timbers/0/id | -J | 1 to 40 letters",
                "/timbers/0/id | J 1 | 1 to 40 letters",
                "/site/snowLoad | 0.6 | a number of at most four digits",
                "/site/snowLoad | 0.6 kN/m | a number of at most four digits",
                "/site/snowLoad | 12345 kN/m2 | a number of at most four digits",
                "/site/snowLoad | -1 kN/m2 | a number of at most four digits",
                "/site/snowLoad | 1e3 kN/m2 | a number of at most four digits",
                "/site/snowLoad | 010 kN/m2 | a number of at most four digits",
                "/site/snowLoad | 010 psf | a number of at most four digits",
                "/site/snowLoad | 1234567 psf | a number of at most four digits",
                "/site/groundSnowLoad | 50 lbf | a number of at most four digits",
                "/platforms/0/ledger/lateralConnections/0/capacity | 1500 lb | a number over 0 of at most four digits",
                "/platforms/0/ledger/lateralConnections/0/capacity | 0 lbf | a number over 0 of at most four digits",
                "/platforms/0/ledger/lateralConnections/0/capacity | 12345 kN | a number over 0 of at most four digits",
                "/platforms/0/beams/0/joint/tensileStrength | 60 ksi | a number over 0 of at most four digits",
                "/site/coastDistance | 03 km | a number of at most four digits",
                "/site/planning/gardenCovered | 05 % | a number from 0 to 100",
                "/use/concentratedLoad | 0 kN | a number over 0 of at most four digits",
                "/use/concentratedLoad | 0.0000 kN | a number over 0 of at most four digits",
                "/use/concentratedLoad | 01 kN | a number over 0 of at most four digits",
                "/platforms/0/beams/0/joint/tensileStrength | 0.00 N/mm2 | a number over 0 of at most four digits",
                "/site/coastDistance | 3 miles | a number of at most four digits",
                "/platforms/0/fall/gradient | 1:0 | level, or 1: and a number",
                "/platforms/0/fall/gradient | 80 | level, or 1: and a number",
                "/site/planning/gardenCovered | 40% | a number from 0 to 100",
                "/site/planning/gardenCovered | 101 % | a number from 0 to 100",
                "/platforms/0/beams/0/joint/tensileStrength | 400 | a number over 0 of at most four digits",
            })
    void a_text_in_another_form_names_the_form(String pointer, String text, String accepted) {
        Fault fault = only(SampleDeck.everyMember().with(pointer, text));

        assertThat(fault.pointer().value()).isEqualTo(pointer);
        assertThat(fault.detail())
                .isEqualTo("Found the text '" + text + "', which is not in the form that is asked for");
        assertThat(fault.accepted()).startsWith(accepted);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/site/snowLoad | 0 kN/m2",
                "/site/snowLoad | 9999.9999 kN/m2",
                "/use/concentratedLoad | 0.0001 kN",
                "/use/concentratedLoad | 0.50 kN",
                "/use/concentratedLoad | 9999.9999 kN",
                "/site/coastDistance | 0.5 km",
                "/site/planning/gardenCovered | 0 %",
                "/site/planning/gardenCovered | 99.99 %",
                "/site/planning/gardenCovered | 100 %",
                "/platforms/0/beams/0/joint/tensileStrength | 0.01 N/mm2",
                "/platforms/0/beams/0/joint/tensileStrength | 60000 psi",
                "/site/snowLoad | 0 psf",
                "/site/soil/bearingResistance | 999999.9999 psf",
                "/use/concentratedLoad | 300 lbf",
                "/use/concentratedLoad | 0.0001 lbf",
                "/use/concentratedLoad | 999999.9999 lbf",
                "/site/coastDistance | 0.5 mi",
                "/site/coastDistance | 300 ft",
                "/site/coastDistance | 528000 ft",
            })
    void every_number_of_the_form_is_read(String pointer, String text) {
        assertThat(SampleDeck.everyMember().with(pointer, text).read()).isInstanceOf(ReadResult.Read.class);
    }

    /** A pattern's $ is the end of the text (ECMA 262), not the end of a last line as in java.util.regex. */
    @ParameterizedTest
    @ValueSource(strings = {"J\n", "J\r\n", "J\u2028", "J\u0000"})
    void a_line_feed_behind_an_id_is_a_fault(String id) {
        assertThat(only(SampleDeck.complete().with("/timbers/-", timber(id)))
                        .pointer()
                        .value())
                .isEqualTo("/timbers/4/id");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "two\nlines", "bell\u0007", "turned \u202e round", "\u0085", "\uffff"})
    void a_label_is_one_line_that_can_be_printed(String label) {
        Fault fault = only(SampleDeck.complete().with("/timbers/0/label", label));

        assertThat(fault.accepted()).isEqualTo("a text of 1 to 80 characters on one line");
        assertThat(fault.detail()).doesNotContain("\n", "\u0007", "\u202e", "\u0085");
    }

    @Test
    void a_long_text_is_cut_short_in_the_fault() {
        Fault fault = only(SampleDeck.complete().with("/reference", "x".repeat(81)));

        assertThat(fault.detail()).contains("'" + "x".repeat(60) + "\u2026'").hasSizeLessThan(140);
        assertThat(SampleDeck.complete().with("/reference", "x".repeat(80)).read())
                .isInstanceOf(ReadResult.Read.class);
    }

    @Test
    void a_list_too_short_or_too_long_names_its_bounds() {
        assertThat(only(SampleDeck.complete().withJson("/platforms/0/outline", "[[0, 0], [1000, 0]]")))
                .isEqualTo(new Fault(
                        Pointer.of("/platforms/0/outline"),
                        "Found a list of 2, which is too short",
                        "a list of 3 to 100 points, corner by corner, the first not repeated at the end"));
        ArrayNode many = SampleDeck.points();
        for (int i = 0; i < 201; i++) {
            many.add(SampleDeck.point(i, i * i));
        }
        assertThat(only(SampleDeck.complete().with("/platforms/0/outline", many))
                        .detail())
                .isEqualTo("Found a list of 201, which is too long");
        assertThat(only(SampleDeck.complete().withJson("/platforms/0/outline/0", "[1, 2, 3]"))
                        .accepted())
                .startsWith("a point in plan as a list of two coordinates");
    }

    @Test
    void an_empty_stock_of_timber_and_a_deck_without_platforms_are_faults() {
        SampleDeck deck = SampleDeck.complete().withJson("/timbers", "[]").withJson("/platforms", "[]");

        assertThat(SampleDeck.faults(deck.read()))
                .extracting(f -> f.pointer() + " " + f.detail() + " / " + f.accepted())
                .containsExactly(
                        "/platforms Found a list of 0, which is too short / a list of 1 to 10 entries",
                        "/timbers Found a list of 0, which is too short / a list of 1 to 100 entries");
    }

    @Test
    void all_faults_come_at_once_in_the_order_of_their_pointers() {
        SampleDeck deck = SampleDeck.complete()
                .without("/units")
                .with("/timbers/3/depth", -1)
                .with("/timbers/0/colour", "red")
                .with("/platforms/0/posts/2/at", "here")
                .with("/reviewOn", "soon")
                .without("/use/occupancy");

        assertThat(SampleDeck.faults(deck.read()))
                .extracting(f -> f.pointer().value())
                .containsExactly(
                        "/platforms/0/posts/2/at",
                        "/reviewOn",
                        "/timbers/0/colour",
                        "/timbers/3/depth",
                        "/units",
                        "/use/occupancy");
    }

    @Test
    void the_order_of_members_in_the_document_changes_nothing() {
        ObjectNode document = SampleDeck.complete()
                .with("/timbers/0/10", 1)
                .with("/timbers/0/9", 1)
                .with("/timbers/0/1a", 1)
                .with("/timbers/0/depth", 0)
                .without("/use/occupancy")
                .with("/units", "cm")
                .node();

        assertThat(SampleDeck.faults(read(reversed(document)))).isEqualTo(SampleDeck.faults(read(document)));
    }

    @Test
    void beyond_500_faults_the_number_is_told_and_the_first_are_listed() {
        SampleDeck deck = SampleDeck.complete();
        for (int i = 0; i < 600; i++) {
            deck.with("/unknown" + i, i);
        }

        List<Fault> faults = SampleDeck.faults(deck.read());

        assertThat(faults).hasSize(501);
        assertThat(faults.get(0).pointer()).isEqualTo(Pointer.ROOT);
        assertThat(faults.get(0).detail()).isEqualTo("The document has 600 faults, of which the first 500 are listed");
    }

    @Test
    void a_list_of_hundreds_of_thousands_of_wrong_entries_is_answered_with_few_faults() {
        String entries = "{},".repeat(600_000) + "{}";
        byte[] bytes = ("{\"timbers\": [" + entries + "]}").getBytes(StandardCharsets.UTF_8);

        assertThat(SampleDeck.faults(new SubmissionReader().read(bytes)))
                .hasSizeLessThanOrEqualTo(501)
                .anySatisfy(f -> assertThat(f.detail()).isEqualTo("Found a list of 600001, which is too long"));
    }

    private static ObjectNode timber(String id) {
        return ((ObjectNode) SampleDeck.parse("{\"breadth\": 47, \"depth\": 170}")).put("id", id);
    }

    private static Fault only(SampleDeck deck) {
        return only(deck.node());
    }

    private static Fault only(JsonNode document) {
        List<Fault> faults = SampleDeck.faults(read(document));
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }

    private static ReadResult read(JsonNode document) {
        return new SubmissionReader().read(document.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static JsonNode reversed(JsonNode node) {
        if (node instanceof ObjectNode object) {
            List<Map.Entry<String, JsonNode>> members = new ArrayList<>(object.properties());
            Collections.reverse(members);
            ObjectNode turned = object.objectNode();
            members.forEach(m -> turned.set(m.getKey(), reversed(m.getValue())));
            return turned;
        }
        if (node instanceof ArrayNode list) {
            ArrayNode same = list.arrayNode();
            list.forEach(n -> same.add(reversed(n)));
            return same;
        }
        return node;
    }
}
