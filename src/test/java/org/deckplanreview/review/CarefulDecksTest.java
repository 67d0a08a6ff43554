package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.IntStream;
import org.deckplanreview.LongForm;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.ruleset.Edition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sound decks that state everything get their verdict. Not all careful drawings are sound: their spans are rules of thumb,
 * some are for the public or for flats, and prescriptive tables end somewhere.
 */
class CarefulDecksTest {

    private static final long SEED = LongForm.seed(23);
    private static final int DECKS = LongForm.tries(80);
    private static final Assessor ASSESSOR = new Assessor(BuiltIn.CATALOGUE);

    @ParameterizedTest
    @CsvSource({"uk-england, 2024, mm, 30"})
    void this_share_of_careful_decks_complies_or_more(String region, String edition, String units, int percent) {
        Edition rules = BuiltIn.RULESETS.edition(region, edition).orElseThrow();
        List<JsonNode> decks = IntStream.iterate(0, number -> number + 1)
                .mapToObj(number -> AdverseChangesTest.deck(SEED, number))
                .filter(deck -> deck.get("units").textValue().equals(units)
                        && deck.get("title").textValue().endsWith("clean"))
                .limit(DECKS)
                .toList();
        long comply = decks.stream()
                .filter(deck -> ASSESSOR.assess(BuiltIn.submission(deck), rules).outcome() == Determination.COMPLIES)
                .count();
        assertThat(100.0 * comply / DECKS).as("seed %d", SEED).isGreaterThanOrEqualTo(percent);
    }
}
