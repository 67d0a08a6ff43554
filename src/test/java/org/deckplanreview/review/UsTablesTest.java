package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.geometry.Quantities;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Each value of the tables for decks in the United States that is known, as its source prints it or as it is computed by
 * a stated method: what a deck comes to at the value, a sixteenth of an inch below it and a sixteenth above it. A row
 * names its source. Species of one group take turns.
 */
class UsTablesTest {

    private static final Submission DECK = BuiltIn.submission(BuiltIn.sample("us-attached-deck.json"));
    private static final double SIXTEENTH_IN = 0.0625;

    @ParameterizedTest(name = "{0} {1}: {2}: {5} ({6})")
    @CsvFileSource(resources = "us-tables.csv", numLinesToSkip = 1)
    void a_value_complies_and_what_is_beyond_it_does_not(
            String edition,
            String provision,
            String given,
            String quantity,
            String sense,
            String allowed,
            String source) {
        if (allowed.equals("NP")) {
            assertThat(determinations(edition, provision, given, quantity, Measure.of(1, MeasureUnit.FOOT)))
                    .containsOnly(Determination.DOES_NOT_COMPLY);
            return;
        }
        double limit = Measure.parse(allowed).in(MeasureUnit.INCH);
        boolean isMost = sense.equals(Sense.AT_MOST.word());
        Function<Double, List<Determination>> at =
                inches -> determinations(edition, provision, given, quantity, Measure.of(inches, MeasureUnit.INCH));

        assertThat(at.apply(limit)).containsOnly(Determination.COMPLIES);
        assertThat(at.apply(isMost ? limit - SIXTEENTH_IN : limit + SIXTEENTH_IN))
                .containsOnly(Determination.COMPLIES);
        assertThat(at.apply(isMost ? limit + SIXTEENTH_IN : limit - SIXTEENTH_IN))
                .containsOnly(Determination.DOES_NOT_COMPLY);
    }

    /** The finding's determination where the deck has what is given and is otherwise the sample. */
    private static List<Determination> determinations(
            String edition, String provision, String given, String quantity, Measure found) {
        Map<String, String> tokens = new LinkedHashMap<>();
        Stream.of(given.split(";")).map(one -> one.split("=")).forEach(one -> tokens.put(one[0], one[1]));
        Map<String, Value> values = new LinkedHashMap<>();
        tokens.forEach((name, token) -> values.put(name, value(name, token)));
        values.put(quantity, found);
        Catalogue catalogue = new Catalogue(
                Quantities.all().stream()
                        .map(q -> values.containsKey(q.description().name())
                                ? new Given(
                                        q.description(),
                                        values.get(q.description().name()))
                                : q)
                        .toList(),
                List.of());
        Edition rules = BuiltIn.RULESETS.edition("us-irc", edition).orElseThrow();
        Provision asked = rules.provisions().stream()
                .filter(p -> p.id().equals(provision))
                .findFirst()
                .orElseThrow();
        return new Assessor(catalogue)
                .assess(DECK, rules, asked).stream().map(Finding::determination).toList();
    }

    private static Value value(String quantity, String token) {
        QuantityDescription described =
                BuiltIn.CATALOGUE.vocabulary().quantity(quantity).orElseThrow();
        return switch (described.type()) {
            case NUMBER -> Measure.parse(token);
            case WORD -> new Word(token);
            default -> new Flag(Boolean.parseBoolean(token));
        };
    }

    /** A quantity that every subject has alike. */
    private record Given(QuantityDescription description, Value value) implements Quantity {
        @Override
        public Observation observe(Subject subject, ReviewContext context) {
            return new Observation.Found(value, "", List.of());
        }
    }
}
