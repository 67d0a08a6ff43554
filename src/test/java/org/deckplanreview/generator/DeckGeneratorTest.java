package org.deckplanreview.generator;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.review.BuiltIn;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SubmissionReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeckGeneratorTest {

    private static final int MANY = 2000;
    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @ValueSource(longs = {0, 1, -7, Long.MAX_VALUE})
    void every_deck_is_a_valid_submission_on_one_line(long seed) {
        DeckGenerator generator = new DeckGenerator(seed);
        SubmissionReader reader = new SubmissionReader();
        for (int number = 0; number < MANY / 4; number++) {
            byte[] deck = generator.deck(number);
            assertThat(reader.read(deck)).as(text(deck)).isInstanceOf(ReadResult.Read.class);
            assertThat(text(deck)).doesNotContain("\n", "\r");
        }
    }

    @Test
    void the_same_seed_and_number_give_the_same_bytes_in_any_order() {
        byte[] first = new DeckGenerator(42).deck(7);
        DeckGenerator other = new DeckGenerator(42);
        other.deck(3);
        assertThat(other.deck(7)).isEqualTo(first);
        assertThat(new DeckGenerator(43).deck(7)).isNotEqualTo(first);
        assertThat(new DeckGenerator(42).deck(8)).isNotEqualTo(first);
    }

    @Test
    void decks_reach_from_two_square_metres_to_nearly_two_hundred_in_both_parts_of_the_world() {
        TreeSet<Double> areas = new TreeSet<>();
        TreeSet<String> regions = new TreeSet<>();
        TreeSet<Integer> platforms = new TreeSet<>();
        DeckGenerator generator = new DeckGenerator(1);
        for (int number = 0; number < MANY; number++) {
            ReadResult.Read read = (ReadResult.Read) new SubmissionReader().read(generator.deck(number));
            areas.add(Layout.derive(read.submission()).platforms().stream()
                            .mapToDouble(PlatformLayout::areaMm2)
                            .sum()
                    / 1e6);
            regions.add(read.submission().ruleset().region());
            platforms.add(read.submission().platforms().size());
        }
        assertThat(areas.first()).isLessThan(2);
        assertThat(areas.last()).isBetween(150.0, 210.0);
        assertThat(regions).containsExactly("uk-england", "uk-northern-ireland", "uk-scotland", "uk-wales", "us-irc");
        assertThat(platforms).containsExactly(1, 2);
    }

    @Test
    void some_comply_some_do_not_and_some_cannot_be_told() {
        DeckGenerator generator = new DeckGenerator(5);
        Map<Determination, Integer> outcomes = new TreeMap<>();
        IntStream.range(0, MANY / 10)
                .mapToObj(number ->
                        BuiltIn.reviewed(generator.deck(number)).report().outcome())
                .forEach(outcome -> outcomes.merge(outcome, 1, Integer::sum));
        assertThat(outcomes.keySet())
                .containsExactly(Determination.DOES_NOT_COMPLY, Determination.UNDETERMINED, Determination.COMPLIES);
    }

    /** Not labels, amendments, which a place picks, and measurements, which come after the drawing. */
    private static final Set<String> NOT_DRAWN = Set.of("label", "amendments", "siteMeasurements");

    @Test
    void between_them_decks_state_every_member_that_a_designer_can_state() throws IOException {
        JsonNode schema = JSON.readTree(Path.of("schema/submission-1.json").toFile());
        TreeSet<String> stated = new TreeSet<>();
        for (JsonNode deck : many()) {
            collect(deck, "", stated);
        }
        assertThat(stated).containsExactlyElementsOf(members(schema, schema, ""));
    }

    private static void collect(JsonNode node, String path, TreeSet<String> into) {
        node.fields().forEachRemaining(member -> {
            if (!NOT_DRAWN.contains(member.getKey())) {
                into.add(path + "/" + member.getKey());
                collect(member.getValue(), path + "/" + member.getKey(), into);
            }
        });
        if (node.isArray()) {
            node.forEach(item -> collect(item, path, into));
        }
    }

    private static TreeSet<String> members(JsonNode schema, JsonNode part, String path) {
        TreeSet<String> members = new TreeSet<>();
        if (part.has("$ref")) {
            String name = part.get("$ref").textValue().replace("#/definitions/", "");
            members.addAll(members(schema, schema.get("definitions").get(name), path));
        }
        if (part.has("items")) {
            members.addAll(members(schema, part.get("items"), path));
        }
        part.path("properties").fields().forEachRemaining(member -> {
            if (!NOT_DRAWN.contains(member.getKey())) {
                members.add(path + "/" + member.getKey());
                members.addAll(members(schema, member.getValue(), path + "/" + member.getKey()));
            }
        });
        return members;
    }

    @Test
    void stairs_leave_decks_at_all_four_sides_and_inner_beams_have_joists_hung_from_them() {
        TreeSet<String> stairsLeaveAlong = new TreeSet<>();
        int innerHangers = 0;
        for (JsonNode deck : many()) {
            for (JsonNode platform : deck.get("platforms")) {
                for (JsonNode stair : platform.path("stairs")) {
                    JsonNode from = stair.at("/line/from");
                    JsonNode to = stair.at("/line/to");
                    stairsLeaveAlong.add(sign(from, to, 0) + " " + sign(from, to, 1));
                }
                JsonNode beams = platform.get("beams");
                for (int i = 1; i < beams.size() - 1; i++) {
                    innerHangers += beams.get(i).get("joists").textValue().equals("hangers") ? 1 : 0;
                }
            }
        }
        assertThat(stairsLeaveAlong).containsExactly("-1 0", "0 -1", "0 1", "1 0");
        assertThat(innerHangers).isGreaterThan(100);
    }

    private static int sign(JsonNode from, JsonNode to, int coordinate) {
        return (int) Math.signum(
                to.get(coordinate).doubleValue() - from.get(coordinate).doubleValue());
    }

    private static List<JsonNode> many() {
        DeckGenerator generator = new DeckGenerator(1);
        return IntStream.range(0, MANY)
                .mapToObj(number -> parse(generator.deck(number)))
                .toList();
    }

    private static JsonNode parse(byte[] deck) {
        try {
            return JSON.readTree(deck);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(byte[] deck) {
        return new String(deck, StandardCharsets.UTF_8);
    }
}
