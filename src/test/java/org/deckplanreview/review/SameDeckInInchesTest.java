package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.flipkart.zjsonpatch.JsonPatch;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportSchema;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.ruleset.CaseFile;
import org.deckplanreview.ruleset.CasesResult;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.RulesetCase;
import org.deckplanreview.ruleset.RulesetFiles;
import org.deckplanreview.ruleset.RulesetLoader;
import org.deckplanreview.submission.InOtherUnits;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.submission.Submission;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A deck drawn in inches has the findings of the same deck drawn in millimetres, told in the units of a drawing in inches. */
class SameDeckInInchesTest {

    private static final double SAME = 1e-9;

    static List<Path> samples() {
        return BuiltIn.samples();
    }

    static List<Path> samplesInMillimetres() {
        return samples().stream()
                .filter(s -> BuiltIn.document(s).path("units").asText().equals("mm"))
                .toList();
    }

    static Stream<CaseFile> caseFiles() {
        CasesResult read = RulesetLoader.readCases(RulesetFiles.ofClassPath(), BuiltIn.RULESETS);
        Map<String, CaseFile> once = new TreeMap<>();
        ((CasesResult.Read) read).files().forEach(f -> once.putIfAbsent(f.path(), f));
        return once.values().stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_sample_has_the_same_determinations_and_utilisations(Path sample) {
        JsonNode drawn = BuiltIn.document(sample);
        Submission submission = BuiltIn.submission(drawn);
        EditionChoice choice = EditionChoice.of(submission, BuiltIn.RULESETS);
        Edition edition = ((EditionChoice.Chosen) choice).edition();
        Assessor assessor = new Assessor(BuiltIn.CATALOGUE);

        assertSame(
                assessor.assess(BuiltIn.submission(InOtherUnits.read(drawn)), edition)
                        .findings(),
                assessor.assess(submission, edition).findings());
    }

    /** The cases beside the rulesets lie at their limits and beside them. Each runs under one edition. */
    @ParameterizedTest
    @MethodSource("caseFiles")
    void a_case_at_a_limit_or_beside_it_comes_to_the_same(CaseFile file) {
        for (RulesetCase one : file.cases()) {
            JsonNode drawn = JsonPatch.apply(SampleDeck.parse(one.patch()), BuiltIn.sample(one.base()));
            assertThat(determination(one, InOtherUnits.read(drawn), file.edition()))
                    .as("%s: %s", file.path(), one.name())
                    .contains(one.expect().determination());
        }
    }

    private static Optional<String> determination(RulesetCase one, JsonNode drawn, Edition edition) {
        return findings(drawn, one.provision(), edition).stream()
                .filter(f -> Stream.concat(Stream.of(f.subject()), f.also().stream())
                        .anyMatch(s -> s.pointer().equals(one.expect().subject())))
                .min(Comparator.comparing(Finding::determination))
                .map(f -> f.determination().word());
    }

    private static List<Finding> findings(JsonNode drawn, String id, Edition edition) {
        Provision provision = edition.provisions().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
        return new Assessor(BuiltIn.CATALOGUE).assess(BuiltIn.submission(drawn), edition, provision);
    }

    private record Told(String provision, String determination, Pointer subject, List<Pointer> also) {
        static Told of(Finding f) {
            return new Told(
                    f.provision().id(),
                    f.determination().word(),
                    f.subject().pointer(),
                    f.also().stream().map(s -> s.pointer()).toList());
        }
    }

    private static void assertSame(List<Finding> inOtherUnits, List<Finding> drawn) {
        assertThat(inOtherUnits.stream().map(Told::of))
                .isEqualTo(drawn.stream().map(Told::of).toList());
        for (int i = 0; i < drawn.size(); i++) {
            double utilisation = drawn.get(i).utilisation().orElse(0);
            assertThat(inOtherUnits.get(i).utilisation().orElse(0))
                    .as(drawn.get(i).sentence())
                    .isCloseTo(utilisation, within(SAME * Math.max(1, Math.abs(utilisation))));
        }
    }

    /**
     * 1100 mm are 43.307086614173228… in, which no decimal number is: a thousand-millionth less is the limit still, and a
     * ten-millionth less is not.
     */
    @ParameterizedTest
    @CsvSource({
        "43.3070866141732, complies",
        "43.30708658, complies",
        "43.30708230, does not comply",
        "43.307, does not comply"
    })
    void a_guard_as_high_as_decimals_of_an_inch_can_say_is_1100_mm_high(String height, String determination) {
        JsonNode inches = InOtherUnits.read(BuiltIn.sample("small-level-deck.json"));
        JsonNode patch = SampleDeck.parse(
                "[{\"op\": \"replace\", \"path\": \"/platforms/0/guards/0/height\", \"value\": " + height + "}]");

        assertThat(findings(JsonPatch.apply(patch, inches), "guard.dwelling.height", BuiltIn.ENGLAND_2024))
                .extracting(f -> f.determination().word())
                .contains(determination);
    }

    private static Report inInches(Path sample) {
        return BuiltIn.report(BuiltIn.bytes(InOtherUnits.read(BuiltIn.document(sample))));
    }

    @ParameterizedTest
    @MethodSource("samplesInMillimetres")
    void a_report_in_inches_is_valid_against_the_schema(Path sample) {
        byte[] report = JsonRendering.line(inInches(sample), Detail.FULL);
        assertThat(ReportSchema.faults(new String(report, StandardCharsets.UTF_8)))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samplesInMillimetres")
    void its_text_has_lines_of_at_most_80_characters(Path sample) {
        assertThat(TextRendering.render(inInches(sample), WorkingShown.ALL).lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    /** The limits of the rulesets are in mm: as the ruleset writes them, in brackets, is the only place for it. */
    @ParameterizedTest
    @MethodSource("samplesInMillimetres")
    void its_sentences_assumptions_and_needs_are_in_inch_pound_units(Path sample) {
        Report report = inInches(sample);
        Stream<String> sentences = report.findings().stream()
                .map(f -> f.sentence().replaceAll("Needed: .*", ""))
                .filter(s -> !s.isBlank());
        Stream<String> needs =
                report.findings().stream().flatMap(f -> f.needs().stream()).map(n -> n.what());

        assertThat(Stream.of(sentences, needs, report.assumptions().stream()).flatMap(s -> s))
                .noneMatch(t -> t.matches(".*\\b(mm|kN|kN/m²|N/mm²|km|m²)( .*|[.,;)].*|)"));
    }

    @Test
    void found_and_allowed_carry_inches_with_their_text_and_the_limit_as_written() {
        ReportedFinding guard = inInches(Path.of("sample-submissions", "small-level-deck.json")).findings().stream()
                .filter(f -> f.provision().equals("guard.dwelling.height")
                        && f.allowed().isPresent())
                .findFirst()
                .orElseThrow();

        assertThat(guard.found().orElseThrow().value().orElseThrow().text()).isEqualTo("43.3071");
        assertThat(guard.found().orElseThrow().unit().orElseThrow().symbol()).isEqualTo("in");
        assertThat(guard.found().orElseThrow().text()).contains("3'-7 5/16\"");
        assertThat(guard.allowed().orElseThrow().asWritten()).contains("1100 mm");
        assertThat(guard.sentence()).contains("Needed: at least 3'-7 5/16\" (1100 mm).");
    }
}
