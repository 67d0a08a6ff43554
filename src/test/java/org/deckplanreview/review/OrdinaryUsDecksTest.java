package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Obligation;
import org.jboss.logging.Logger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Ordinary decks in the United States get an answer: of one dwelling, on its house, in one level, on one beam of sections
 * that the tables hold, carefully drawn with everything stated. Whether they comply is another question.
 */
class OrdinaryUsDecksTest {

    private static final Logger LOG = Logger.getLogger(OrdinaryUsDecksTest.class);
    private static final long SEED = 71;
    private static final int DECKS = 300;
    private static final double MOST_UNDETERMINED_PERCENT = 5;
    private static final Assessor ASSESSOR = new Assessor(BuiltIn.CATALOGUE);
    private static final List<JsonNode> ORDINARY = IntStream.iterate(0, number -> number + 1)
            .mapToObj(number -> AdverseChangesTest.deck(SEED, number))
            .filter(OrdinaryUsDecksTest::isOrdinary)
            .limit(DECKS)
            .toList();

    private static boolean isOrdinary(JsonNode deck) {
        return deck.get("units").textValue().equals("in")
                && deck.get("title").textValue().endsWith("clean")
                && deck.at("/use/occupancy").textValue().equals("single-dwelling")
                && !deck.get("use").has("heavyItems")
                && deck.get("platforms").size() == 1
                && deck.at("/platforms/0").has("ledger")
                && deck.at("/platforms/0/beams").size() == 1;
    }

    @ParameterizedTest
    @ValueSource(strings = {"2015", "2018", "2021", "2024"})
    void nearly_all_ordinary_decks_are_determined(String edition) {
        Edition rules = BuiltIn.RULESETS.edition("us-irc", edition).orElseThrow();
        Map<Determination, Integer> outcomes = new TreeMap<>();
        Map<String, Integer> open = new TreeMap<>();
        for (JsonNode deck : ORDINARY) {
            Assessment assessment = ASSESSOR.assess(BuiltIn.submission(deck), rules);
            outcomes.merge(assessment.outcome(), 1, Integer::sum);
            if (assessment.outcome() == Determination.UNDETERMINED) {
                assessment.findings().stream()
                        .filter(OrdinaryUsDecksTest::isOpen)
                        .map(f -> f.provision().id() + ": " + f.sentence())
                        .collect(Collectors.toSet())
                        .forEach(why -> open.merge(why, 1, Integer::sum));
            }
        }
        LOG.infof("us-irc/%s, %d ordinary decks: %s; open: %s", edition, DECKS, outcomes, open);
        assertThat(100.0 * outcomes.getOrDefault(Determination.UNDETERMINED, 0) / DECKS)
                .as(open.toString())
                .isLessThanOrEqualTo(MOST_UNDETERMINED_PERCENT);
    }

    private static boolean isOpen(Finding finding) {
        return finding.provision().obligation() == Obligation.SHALL
                && finding.determination() == Determination.UNDETERMINED;
    }
}
