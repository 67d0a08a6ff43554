package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportSchema;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.ruleset.Obligation;

/** Samples changed at random: members left out, numbers and words that a hurried hand could have written. */
class AnyChangeTest {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<Double> FACTORS = List.of(-1.0, 0.0, 0.01, 0.5, 0.999, 1.001, 1.5, 3.0, 40.0, 1000.0);
    /** Words that a member can take, the odd ones first. */
    private static final Map<String, List<String>> WORDS = Map.ofEntries(
            Map.entry("strengthClass", List.of("C14", "C30", "D30", "D40", "C99")),
            Map.entry("occupancy", List.of("public", "shared-residential", "single-dwelling")),
            Map.entry("soilClass", List.of("made-ground", "soft-clay", "hard-clay", "loose-sand", "dense-gravel")),
            Map.entry("volumeChange", List.of("high", "medium", "low", "none")),
            Map.entry("gradient", List.of("level", "1:1", "1:9999", "1:40", "80")),
            Map.entry("snowLoad", List.of("0 kN/m2", "9999 kN/m2", "0.6 kN/m2")),
            Map.entry("imposedLoad", List.of("0 kN/m2", "9999 kN/m2", "7.5 kN/m2")),
            Map.entry("bearingResistance", List.of("0 kN/m2", "0.0001 kN/m2", "9999 kN/m2")),
            Map.entry("finishes", List.of("0 kN/m2", "9999 kN/m2", "0.5 kN/m2")),
            Map.entry("weight", List.of("0 kN", "9999 kN", "0.0001 kN")),
            Map.entry("nature", List.of("permanent", "variable")),
            Map.entry("coastDistance", List.of("0 km", "3 km", "9999 km")),
            Map.entry("joists", List.of("hangers", "on-top")),
            Map.entry("seating", List.of("both-sides", "one-side", "on-post")),
            Map.entry("profile", List.of("grooved", "smooth")),
            Map.entry("useClass", List.of("UC1", "UC5", "UC4", "UC3.2")),
            Map.entry("side", List.of("opposite", "support")),
            Map.entry("infill", List.of("none", "horizontal-rails", "panel")),
            Map.entry("finish", List.of("none", "Fe/Zn-25c", "stainless-A4")),
            Map.entry("groundEnd", List.of("cut-untreated", "uncut", "cut-and-treated", "not-in-ground")),
            Map.entry("top", List.of("flat", "sloped", "capped")),
            Map.entry("shape", List.of("round", "rectangular")),
            Map.entry("kind", List.of("open", "wall", "platform", "pad", "embedded-post", "staple", "plate")),
            Map.entry("reviewOn", List.of("2024-09-30", "2199-12-31")));

    /** @param place of a value among all values of the document, in its order */
    record Change(int place, Kind kind, int choice) {}

    enum Kind {
        LEAVE_OUT,
        ANOTHER_NUMBER,
        ANOTHER_WORD
    }

    @Provide
    Arbitrary<JsonNode> samples() {
        return Arbitraries.of(BuiltIn.samples()).map(BuiltIn::document);
    }

    @Provide
    Arbitrary<List<Change>> changes() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 9999),
                        Arbitraries.of(Kind.class),
                        Arbitraries.integers().between(0, 999))
                .as(Change::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(3);
    }

    @Property(tries = 150)
    void whatever_is_changed_the_review_answers(
            @ForAll("samples") JsonNode sample, @ForAll("changes") List<Change> changes) {
        JsonNode document = sample.deepCopy();
        changes.forEach(change -> apply(change, document));

        ReviewResult result = BuiltIn.review(document);

        Statistics.label("answer")
                .collect(result.getClass().getSimpleName())
                .coverage(c ->
                        c.check(ReviewResult.Reviewed.class.getSimpleName()).percentage(p -> p > 20));
        if (result instanceof ReviewResult.Reviewed reviewed) {
            hasAnswers(reviewed.report());
        } else if (result instanceof ReviewResult.Invalid invalid) {
            assertThat(invalid.faults()).isNotEmpty();
        }
    }

    private static void hasAnswers(Report report) {
        assertThat(ReportSchema.faults(new String(JsonRendering.line(report, Detail.FULL), StandardCharsets.UTF_8)))
                .isEmpty();
        assertThat(TextRendering.render(report, WorkingShown.ALL)).doesNotContain("NaN", "Infinity", "null");
        assertThat(report.findings()).isNotEmpty();
        report.findings().stream()
                .filter(f -> f.determination() == Determination.UNDETERMINED)
                .filter(f -> f.obligation() == Obligation.SHALL)
                .forEach(AnyChangeTest::tellsWhatIsNeededOrWhyItIsBeyondTheRules);
        assertThat(report.findings().stream()
                        .filter(f -> f.obligation() == Obligation.SHALL)
                        .map(ReportedFinding::determination)
                        .min(Determination::compareTo))
                .hasValueSatisfying(worst -> assertThat(report.outcome())
                        .isEqualTo(worst == Determination.NOT_APPLICABLE ? Determination.COMPLIES : worst));
    }

    private static void tellsWhatIsNeededOrWhyItIsBeyondTheRules(ReportedFinding finding) {
        if (finding.needs().isEmpty()) {
            assertThat(finding.sentence())
                    .as(finding.provision())
                    .isNotBlank()
                    .doesNotContain("cannot be told from the submission");
        } else {
            assertThat(finding.needs())
                    .allSatisfy(need -> assertThat(need.what()).isNotBlank());
        }
    }

    private static void apply(Change change, JsonNode document) {
        List<Runnable> places = new ArrayList<>();
        collect(document, change, places);
        if (!places.isEmpty()) {
            places.get(change.place() % places.size()).run();
        }
    }

    /** Every place of the document where the change can be made. */
    private static void collect(JsonNode node, Change change, List<Runnable> places) {
        if (node instanceof ObjectNode object) {
            object.fieldNames().forEachRemaining(name -> {
                JsonNode value = object.get(name);
                collect(value, change, places);
                switch (change.kind()) {
                    case LEAVE_OUT -> places.add(() -> object.remove(name));
                    case ANOTHER_NUMBER -> {
                        if (value.isNumber()) {
                            places.add(() -> object.set(name, another(value, change)));
                        }
                    }
                    case ANOTHER_WORD -> {
                        if (value.isTextual() && WORDS.containsKey(name)) {
                            List<String> words = WORDS.get(name);
                            places.add(() ->
                                    object.set(name, TextNode.valueOf(words.get(change.choice() % words.size()))));
                        }
                    }
                }
            });
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                int index = i;
                JsonNode value = list.get(i);
                collect(value, change, places);
                switch (change.kind()) {
                    case LEAVE_OUT -> places.add(() -> list.remove(index));
                    case ANOTHER_NUMBER -> {
                        if (value.isNumber()) {
                            places.add(() -> list.set(index, another(value, change)));
                        }
                    }
                    case ANOTHER_WORD -> {}
                }
            }
        }
    }

    private static JsonNode another(JsonNode number, Change change) {
        return NODES.numberNode(number.doubleValue() * FACTORS.get(change.choice() % FACTORS.size()));
    }
}
