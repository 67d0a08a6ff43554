package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.deckplanreview.LongForm;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Obligation;
import org.deckplanreview.submission.Submission;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ordinary decks in the United States get an answer: of one dwelling, on its house, in one level, on one beam of sections
 * that the tables hold, carefully drawn with everything stated, and without a stair, whose load the tables do not know.
 * Whether they comply is another question. With stairs, some ask more of a joist or an overhang than a table tells.
 */
class OrdinaryUsDecksTest {

    private static final long SEED = LongForm.seed(71);
    private static final Assessor ASSESSOR = new Assessor(BuiltIn.CATALOGUE);
    private static final Map<Boolean, List<Submission>> ORDINARY =
            Map.of(false, ordinary(false, LongForm.tries(100)), true, ordinary(true, LongForm.tries(60)));

    private static List<Submission> ordinary(boolean stairs, int decks) {
        return IntStream.iterate(0, number -> number + 1)
                .mapToObj(number -> AdverseChangesTest.deck(SEED, number))
                .filter(deck -> isOrdinary(deck) && deck.at("/platforms/0").has("stairs") == stairs)
                .limit(decks)
                .map(BuiltIn::submission)
                .toList();
    }

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
    @CsvSource({
        "2015, false, 5",
        "2018, false, 5",
        "2021, false, 5",
        "2024, false, 5",
        "2015, true, 30",
        "2018, true, 30",
        "2021, true, 30",
        "2024, true, 30"
    })
    void nearly_all_ordinary_decks_are_determined(String edition, boolean stairs, double mostUndeterminedPercent) {
        Edition rules = BuiltIn.RULESETS.edition("us-irc", edition).orElseThrow();
        List<Submission> decks = ORDINARY.get(stairs);
        Map<Determination, Integer> outcomes = new TreeMap<>();
        Map<String, Integer> open = new TreeMap<>();
        for (Submission deck : decks) {
            Assessment assessment = ASSESSOR.assess(deck, rules);
            outcomes.merge(assessment.outcome(), 1, Integer::sum);
            if (assessment.outcome() == Determination.UNDETERMINED) {
                assessment.findings().stream()
                        .filter(OrdinaryUsDecksTest::isOpen)
                        .map(f -> f.provision().id() + ": " + f.sentence())
                        .collect(Collectors.toSet())
                        .forEach(why -> open.merge(why, 1, Integer::sum));
            }
        }
        System.out.printf(
                "us-irc/%s, %d ordinary decks %s: %s%n",
                edition, decks.size(), stairs ? "with a stair" : "without stairs", outcomes);
        assertThat(100.0 * outcomes.getOrDefault(Determination.UNDETERMINED, 0) / decks.size())
                .as("seed %d: %s", SEED, open)
                .isLessThanOrEqualTo(mostUndeterminedPercent);
    }

    private static boolean isOpen(Finding finding) {
        return finding.provision().obligation() == Obligation.SHALL
                && finding.determination() == Determination.UNDETERMINED;
    }
}
