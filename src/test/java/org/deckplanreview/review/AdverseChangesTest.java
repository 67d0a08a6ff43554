package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.deckplanreview.LongForm;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.generator.DeckGenerator;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.submission.Submission;
import org.junit.jupiter.api.Test;

/** Generated decks under the rules of their own places: none gets better by a change for the worse. */
class AdverseChangesTest {

    private static final int DECKS = LongForm.tries(400);
    private static final long SEED = LongForm.seed(11);
    private static final int MOST_SHOWN = 10;
    /** Larger decks have more of the same. */
    private static final int MOST_POSTS = 16;

    private static final Assessor ASSESSOR = new Assessor(BuiltIn.CATALOGUE);

    @Test
    void no_deck_gets_better_by_a_change_for_the_worse() {
        AdverseChange[] changes = AdverseChange.values();
        List<String> betterments = new ArrayList<>();
        SortedMap<AdverseChange, Integer> made = new TreeMap<>();
        int decks = 0;
        for (int number = 0; decks < DECKS && betterments.size() < MOST_SHOWN; number++) {
            JsonNode deck = deck(SEED, number);
            AdverseChange change = changes[number % changes.length];
            Optional<AdverseChange.Pair> pair = posts(deck) > MOST_POSTS ? Optional.empty() : change.of(deck, number);
            if (pair.isPresent()) {
                decks++;
                made.merge(change, 1, Integer::sum);
                for (String betterment : betterments(
                        change, assess(pair.get().better()), assess(pair.get().worse()))) {
                    betterments.add("deck " + number + " of seed " + SEED + ", " + change + ", " + betterment);
                }
            }
        }
        assertThat(betterments).isEmpty();
        assertThat(made).containsOnlyKeys(changes);
        assertThat(made.values()).allMatch(number -> number > DECKS / changes.length / 4);
    }

    private static int posts(JsonNode deck) {
        int posts = 0;
        for (JsonNode platform : deck.path("platforms")) {
            posts += platform.path("posts").size();
        }
        return posts;
    }

    static JsonNode deck(long seed, int number) {
        return SampleDeck.parse(new String(new DeckGenerator(seed).deck(number), StandardCharsets.UTF_8));
    }

    static Assessment assess(JsonNode deck) {
        Submission submission = BuiltIn.submission(deck);
        EditionChoice.Chosen choice = (EditionChoice.Chosen) EditionChoice.of(submission, BuiltIn.RULESETS);
        return ASSESSOR.assess(submission, choice.edition());
    }

    /** What came out better and should not. */
    static List<String> betterments(AdverseChange change, Assessment before, Assessment after) {
        List<String> betterments = new ArrayList<>();
        if (isToComply(before.outcome(), after.outcome())) {
            betterments.add("outcome: " + before.outcome() + " -> " + after.outcome());
        }
        SortedMap<String, Finding> now = new TreeMap<>();
        SortedMap<String, Double> mostUsed = new TreeMap<>();
        each(change, after, f -> {
            subjects(f).forEach(place -> now.put(place, f));
            f.utilisation().ifPresent(u -> mostUsed.merge(f.provision().id(), u, Math::max));
        });
        each(change, before, was -> {
            for (String place : subjects(was)) {
                Finding is = now.get(place);
                if (is != null && isToComply(was.determination(), is.determination())) {
                    betterments.add(place + ": " + was.sentence() + " -> " + is.sentence());
                }
            }
            Finding is = now.get(place(was, was.subject()));
            boolean compared = is != null
                    && is.determination() != Determination.NOT_APPLICABLE
                    && was.utilisation().isPresent()
                    && is.utilisation().isPresent();
            if (compared
                    && mostUsed.get(was.provision().id()) < was.utilisation().getAsDouble() * (1 - change.slack())) {
                betterments.add(place(was, was.subject()) + ": " + was.sentence() + " -> " + is.sentence());
            }
        });
        return betterments;
    }

    private static boolean isToComply(Determination before, Determination after) {
        return after == Determination.COMPLIES && before.compareTo(after) < 0;
    }

    private static void each(AdverseChange change, Assessment assessment, Consumer<Finding> seen) {
        assessment.findings().stream().filter(f -> !change.spares(f)).forEach(seen);
    }

    private static List<String> subjects(Finding finding) {
        List<String> places = new ArrayList<>();
        places.add(place(finding, finding.subject()));
        finding.also().forEach(subject -> places.add(place(finding, subject)));
        return places;
    }

    private static String place(Finding finding, Subject subject) {
        return finding.provision().id() + " " + subject.pointer() + " " + subject.label();
    }
}
