package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.layout.Motion;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Value;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Submission;

/** The same deck drawn elsewhere, turned, in a mirror or under other names gets the same findings. */
class SameDeckTest {

    private static final double SAME = 1e-6;
    /** Members of a submission that name something or refer to a name. */
    private static final Set<String> NAMES = Set.of(
            "id",
            "label",
            "title",
            "reference",
            "timber",
            "wall",
            "footing",
            "guard",
            "post",
            "fixing",
            "rail",
            "infillTimber",
            "treadTimber",
            "from",
            "to");

    /** Samples and drawn decks. */
    @Provide
    Arbitrary<JsonNode> decks() {
        // Its joists lie in two pieces each, of which the one drawn first is named where no limit tells them apart.
        List<JsonNode> samples = BuiltIn.samples().stream()
                .filter(s -> !s.endsWith("hung-overhang.json"))
                .map(BuiltIn::document)
                .toList();
        return Arbitraries.oneOf(Arbitraries.of(samples), DrawnDeck.any().map(d ->
                (JsonNode) d.document().node()));
    }

    @Property(tries = 20)
    void a_deck_turned_by_90_degrees(@ForAll("decks") JsonNode deck) {
        assertSame(deck, Motion.quarterTurn()::apply);
    }

    @Property(tries = 40)
    void a_deck_turned_by_any_angle_and_moved_in_plan(
            @ForAll("decks") JsonNode deck,
            @ForAll @IntRange(max = 3599) int tenthsOfDegrees,
            @ForAll @IntRange(min = -50_000, max = 50_000) int dx,
            @ForAll @IntRange(min = -50_000, max = 50_000) int dy) {
        assertSame(deck, Motion.turn(tenthsOfDegrees / 10.0, dx, dy)::apply);
    }

    @Property(tries = 30)
    void a_deck_in_a_mirror(@ForAll("decks") JsonNode deck) {
        assertSame(deck, Motion.mirror()::apply);
    }

    @Property(tries = 30)
    void a_deck_under_another_datum_of_levels(
            @ForAll("decks") JsonNode deck, @ForAll @IntRange(min = -100_000, max = 100_000) int dz) {
        JsonNode raised = deck.deepCopy();
        raised.path("site").path("groundLevels").forEach(g -> raise((ObjectNode) g, "z", dz));
        raised.path("platforms").forEach(p -> {
            if (p.path("level") instanceof ObjectNode level) {
                raise(level, "z", dz);
            }
            p.path("stairs").forEach(stair -> raise((ObjectNode) stair, "footLevel", dz));
        });
        raised.path("site").path("walls").forEach(wall -> {
            raise((ObjectNode) wall, "topLevel", dz);
            raise((ObjectNode) wall, "dampProofCourseLevel", dz);
        });
        raised.path("siteMeasurements").path("levels").forEach(l -> raise((ObjectNode) l, "z", dz));
        assertClose(seen(BuiltIn.submission(raised)), seen(BuiltIn.submission(deck)));
    }

    private static void raise(ObjectNode owner, String level, int dz) {
        if (owner.has(level)) {
            owner.put(level, owner.get(level).doubleValue() + dz);
        }
    }

    /** To the last bit. */
    @Property(tries = 20)
    void a_deck_under_other_names(@ForAll("decks") JsonNode deck) {
        JsonNode renamed = deck.deepCopy();
        rename(renamed);
        assertThat(renamed).isNotEqualTo(deck);
        assertThat(seen(BuiltIn.submission(renamed))).isEqualTo(seen(BuiltIn.submission(deck)));
    }

    private static void rename(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.fields().forEachRemaining(member -> {
                if (NAMES.contains(member.getKey()) && member.getValue().isTextual()) {
                    member.setValue(renamed(member.getValue()));
                } else if (member.getKey().equals("posts")
                        && member.getValue().path(0).isTextual()) {
                    ArrayNode posts = (ArrayNode) member.getValue();
                    for (int i = 0; i < posts.size(); i++) {
                        posts.set(i, renamed(posts.get(i)));
                    }
                } else {
                    rename(member.getValue());
                }
            });
        } else {
            node.forEach(SameDeckTest::rename);
        }
    }

    /** The other way round, so that names sort differently too. */
    private static JsonNode renamed(JsonNode name) {
        return TextNode.valueOf("n" + new StringBuilder(name.textValue()).reverse() + "n");
    }

    private static void assertSame(JsonNode deck, Function<Submission, Submission> motion) {
        Submission drawn = BuiltIn.submission(deck);
        assertClose(seen(motion.apply(drawn)), seen(drawn));
    }

    /** What a finding says, without names and places. */
    private record Seen(
            String provision,
            SubjectKind kind,
            Determination determination,
            int subjects,
            List<Value> words,
            List<Double> numbers) {
        static Seen of(Finding f) {
            List<Value> values =
                    Stream.concat(f.found().stream(), f.allowed().stream()).toList();
            OptionalDouble utilisation = f.utilisation();
            return new Seen(
                    f.provision().id(),
                    f.subject().kind(),
                    f.determination(),
                    1 + f.also().size(),
                    values.stream().filter(v -> !(v instanceof Measure)).toList(),
                    Stream.concat(
                                    values.stream()
                                            .filter(Measure.class::isInstance)
                                            .map(v -> ((Measure) v).value()),
                                    utilisation.stream().boxed())
                            .toList());
        }

        Seen withoutNumbers() {
            return new Seen(provision, kind, determination, subjects, words, List.of());
        }
    }

    /** By provision; members that come out differently stand in the order of their determinations, which no mirror turns. */
    private static List<Seen> seen(Submission submission) {
        return BuiltIn.assess(submission).findings().stream()
                .map(Seen::of)
                .sorted(Comparator.comparing(Seen::provision)
                        .thenComparing(Seen::determination)
                        .thenComparing(Seen::subjects))
                .toList();
    }

    private static void assertClose(List<Seen> actual, List<Seen> expected) {
        assertThat(actual.stream().map(Seen::withoutNumbers).toList())
                .isEqualTo(expected.stream().map(Seen::withoutNumbers).toList());
        for (int i = 0; i < expected.size(); i++) {
            List<Double> numbers = expected.get(i).numbers();
            assertThat(actual.get(i).numbers()).hasSameSizeAs(numbers);
            for (int k = 0; k < numbers.size(); k++) {
                assertThat(actual.get(i).numbers().get(k))
                        .as("%s", expected.get(i))
                        .isCloseTo(numbers.get(k), within(SAME * Math.max(1, Math.abs(numbers.get(k)))));
            }
        }
    }
}
