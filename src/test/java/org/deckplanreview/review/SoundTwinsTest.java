package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each sample with one fault is one step away from a deck that complies, so that nothing else in it is refused. */
class SoundTwinsTest {

    /** What a sample says in one place, put right. */
    private record Mended(String parent, String member, String value) {
        void in(JsonNode deck) {
            JsonNode place = deck.at(parent);
            if (place instanceof ArrayNode list) {
                list.set(Integer.parseInt(member), SampleDeck.parse(value));
            } else {
                ((ObjectNode) place).set(member, SampleDeck.parse(value));
            }
        }
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of(
                        "short-joists.json",
                        List.of(
                                new Mended(
                                        "/platforms/0/beams/0", "line", "{\"from\": [0, 2650], \"to\": [4200, 2650]}"),
                                new Mended("/platforms/0/posts/0/at", "1", "2650"),
                                new Mended("/platforms/0/posts/1/at", "1", "2650"),
                                new Mended("/platforms/0/posts/2/at", "1", "2650"))),
                Arguments.of("hung-overhang.json", List.of(new Mended("/platforms/0/beams/0", "joists", "\"on-top\""))),
                Arguments.of("loose-post.json", List.of(new Mended("/platforms/0/posts/1", "base", "\"connector\""))),
                Arguments.of("stair-on-weak-beam.json", List.of(new Mended("/platforms/0/beams/0", "plies", "3"))),
                Arguments.of(
                        "stair-on-weak-beam.json",
                        List.of(
                                new Mended("/platforms/0", "stairs", "[]"),
                                new Mended("/platforms/0/edges/3", "guard", "\"G1\""))),
                Arguments.of(
                        "sunk-post.json",
                        List.of(new Mended("/site", "groundLevels", "[{\"x\": 0, \"y\": 0, \"z\": 0}]"))),
                Arguments.of("roofed-deck.json", List.of(new Mended("/use", "roofOver", "false"))));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void a_sample_with_one_fault_complies_without_it(String sample, List<Mended> mended) {
        JsonNode deck = BuiltIn.sample(sample);
        assertThat(outcome(deck)).as("as drawn").isNotEqualTo(Determination.COMPLIES);
        mended.forEach(m -> m.in(deck));
        assertThat(outcome(deck)).as("put right").isEqualTo(Determination.COMPLIES);
    }

    private static Determination outcome(JsonNode deck) {
        return BuiltIn.report(BuiltIn.bytes(deck)).outcome();
    }
}
