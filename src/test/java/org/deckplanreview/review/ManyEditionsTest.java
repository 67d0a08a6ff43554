package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.report.Detail;
import org.deckplanreview.ruleset.Edition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A submission that is read once for several editions, against reviews under each of them alone. */
class ManyEditionsTest {

    private static final List<Edition> EDITIONS = List.of(
            edition("uk-england", "2014"),
            edition("uk-england", "2024"),
            edition("uk-scotland", "2024"),
            edition("us-irc", "2021"));

    private static Edition edition(String region, String name) {
        return BuiltIn.RULESETS.edition(region, name).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"sloping-garden-deck", "many-faults", "first-sketch", "us-hillside-deck"})
    void each_gets_the_report_that_it_gets_alone_with_what_was_not_reviewed(String name) {
        byte[] submission = BuiltIn.read(Path.of("sample-submissions", name + ".json"));

        assertThat(BuiltIn.REVIEWER.review(submission, EDITIONS).stream().map(ManyEditionsTest::json))
                .containsExactlyElementsOf(EDITIONS.stream()
                        .map(edition -> json(BuiltIn.REVIEWER.review(submission, edition)))
                        .toList());
        assertThat(BuiltIn.REVIEWER.review(submission, EDITIONS.subList(0, 2)).stream()
                        .map(ManyEditionsTest::json))
                .containsExactlyElementsOf(EDITIONS.subList(0, 2).stream()
                        .map(edition -> json(BuiltIn.REVIEWER.review(submission, edition)))
                        .toList());
    }

    private static String json(ReviewResult result) {
        return new String(
                JsonRendering.line(((ReviewResult.Reviewed) result).report(), Detail.FULL), StandardCharsets.UTF_8);
    }
}
