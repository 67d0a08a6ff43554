package org.deckplanreview.generator;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.review.ReviewServices;
import org.deckplanreview.review.Reviewer;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SubmissionReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeckGeneratorTest {

    private static final int MANY = 2000;

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
        Reviewer reviewer = ReviewServices.reviewerOf(
                ReviewServices.catalogue(),
                ReviewServices.builtIn(ReviewServices.catalogue().vocabulary()),
                "test");
        DeckGenerator generator = new DeckGenerator(5);
        Map<Determination, Integer> outcomes = new TreeMap<>();
        IntStream.range(0, MANY / 10)
                .mapToObj(number -> reviewer.review(generator.deck(number)))
                .map(result -> ((ReviewResult.Reviewed) result).report().outcome())
                .forEach(outcome -> outcomes.merge(outcome, 1, Integer::sum));
        assertThat(outcomes.keySet())
                .containsExactly(Determination.DOES_NOT_COMPLY, Determination.UNDETERMINED, Determination.COMPLIES);
    }

    private static String text(byte[] deck) {
        return new String(deck, StandardCharsets.UTF_8);
    }
}
