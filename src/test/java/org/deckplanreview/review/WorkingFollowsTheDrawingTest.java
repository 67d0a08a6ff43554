package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.deckplanreview.formula.Expression;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.ReportedStep;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A designer who asks what becomes of the frame when a member changes finds the answer in a working that names the member. */
class WorkingFollowsTheDrawingTest {
    private static final JsonNode DECK = BuiltIn.sample("sloping-garden-deck.json");
    private static final Map<String, List<Line>> BEFORE = workings(BuiltIn.report(BuiltIn.bytes(DECK)));

    /** A step without what a change of its number leaves as it is. */
    private record Line(String symbol, String value, String shown, List<String> from) {
        static Line of(ReportedStep step) {
            return new Line(
                    step.symbol(),
                    step.value().map(Object::toString).orElse(""),
                    step.substituted().map(Expression::text).orElse(""),
                    step.from().stream().map(Object::toString).toList());
        }

        boolean names(String pointer) {
            return from.stream().anyMatch(f -> pointer.equals(f) || pointer.startsWith(f + "/"));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/timbers/0/breadth | 120",
                "/timbers/0/depth | 28",
                "/timbers/0/strengthClass | \"C30\"",
                "/timbers/1/breadth | 63",
                "/timbers/1/depth | 170",
                "/timbers/1/strengthClass | \"C16\"",
                "/timbers/2/breadth | 44",
                "/timbers/2/depth | 220",
                "/timbers/2/strengthClass | \"C16\"",
                "/platforms/0/boards/gap | 8",
                "/platforms/0/finishes | \"0.2 kN/m2\"",
                "/platforms/0/joists/spacing | 350",
                "/platforms/0/beams/0/plies | 3",
                "/platforms/0/beams/0/line/from | [0, 2050]",
                "/use/imposedLoad | \"3 kN/m2\"",
                "/site/snowLoad | \"0.8 kN/m2\"",
            })
    void a_changed_member_changes_a_working_that_names_it(String pointer, String value) {
        Map<String, List<Line>> after =
                workings(BuiltIn.report(BuiltIn.bytes(changed(pointer, SampleDeck.parse(value)))));

        assertThat(after.entrySet().stream()
                        .filter(e -> e.getValue().stream().anyMatch(l -> l.names(pointer)))
                        .filter(e -> BEFORE.containsKey(e.getKey())
                                && !BEFORE.get(e.getKey()).equals(e.getValue())))
                .isNotEmpty();
    }

    /** By provision and subject. */
    private static Map<String, List<Line>> workings(Report report) {
        Map<String, List<Line>> workings = new LinkedHashMap<>();
        for (ReportedFinding finding : report.findings()) {
            workings.put(
                    finding.provision() + " " + finding.subject().pointer(),
                    finding.working().stream().map(Line::of).toList());
        }
        return workings;
    }

    private static JsonNode changed(String pointer, JsonNode value) {
        JsonNode copy = DECK.deepCopy();
        JsonPointer at = JsonPointer.compile(pointer);
        ((ObjectNode) copy.at(at.head())).set(at.last().getMatchingProperty(), value);
        return copy;
    }
}
