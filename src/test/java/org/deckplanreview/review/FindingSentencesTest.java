package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.flipkart.zjsonpatch.JsonPatch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.deckplanreview.report.ReportedFinding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What findings say is a sentence, whichever method or quantity says it. */
class FindingSentencesTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    small-level-deck.json|[]
                    braced-deck.json|[{"op": "replace", "path": "/site/soil/soilClass", "value": "loose-sand"}]
                    braced-deck.json|[{"op": "add", "path": "/site/soil/bearingResistance", "value": "0 kN/m2"}]
                    braced-deck.json|[{"op": "replace", "path": "/site/soil/treesNearby", "value": true}]
                    braced-deck.json|[{"op": "replace", "path": "/platforms/0/braces/0/fixingResistance", "value": "0.0001 kN"}]
                    braced-deck.json|[{"op": "replace", "path": "/platforms/0/guards/0/infill", "value": "none"}]
                    bolted-beam-deck.json|[{"op": "replace", "path": "/platforms/0/beams/0/plies", "value": 3}]
                    garden-stair-deck.json|[]
                    """)
    void a_finding_says_a_sentence(String sample, String patch) throws IOException {
        JsonNode deck = JSON.readTree(Files.readAllBytes(Path.of("sample-submissions", sample)));
        JsonNode changed = JsonPatch.apply(JSON.readTree(patch), deck);
        assertThat(BuiltIn.REVIEWER.review(JSON.writeValueAsBytes(changed)))
                .isInstanceOfSatisfying(
                        ReviewResult.Reviewed.class,
                        r -> assertThat(r.report().findings())
                                .extracting(ReportedFinding::sentence)
                                .isNotEmpty()
                                .allMatch(s ->
                                        Character.isUpperCase(s.codePointAt(0)) || Character.isDigit(s.codePointAt(0)))
                                .allMatch(s -> s.endsWith(".") && !s.endsWith("..")));
    }
}
