package org.deckplanreview.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.comparison.BuiltInComparisons.COMPARISONS;
import static org.deckplanreview.comparison.BuiltInComparisons.ENGLAND_2014;
import static org.deckplanreview.comparison.BuiltInComparisons.ENGLAND_2024;
import static org.deckplanreview.comparison.BuiltInComparisons.SCOTLAND_2024;
import static org.deckplanreview.comparison.BuiltInComparisons.compare;
import static org.deckplanreview.comparison.BuiltInComparisons.sample;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.report.ReportJson;
import org.deckplanreview.review.ReviewResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a change of edition does to one submission. */
class SubmissionComparisonTest {

    static Stream<byte[]> samples() {
        return BuiltInComparisons.samples().stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void under_the_same_edition_nothing_changes(byte[] sample) {
        SubmissionComparison same = compare(sample, ENGLAND_2024, ENGLAND_2024);

        assertThat(same.findings()).isEmpty();
        assertThat(same.given()).isEqualTo(new ReadChange(List.of(), List.of()));
        assertThat(same.outcome().transition()).isEqualTo(Transition.UNCHANGED);
        assertThat(same.gotWorse()).isFalse();
        assertThat(same.gotBetter()).isFalse();
        assertThat(same.counts().unchanged()).isPositive();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void there_and_back_within_a_region_are_mirror_images(byte[] sample) {
        mirrored(compare(sample, ENGLAND_2014, ENGLAND_2024), compare(sample, ENGLAND_2024, ENGLAND_2014));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void there_and_back_across_regions_are_mirror_images(byte[] sample) {
        mirrored(compare(sample, ENGLAND_2024, SCOTLAND_2024), compare(sample, SCOTLAND_2024, ENGLAND_2024));
    }

    private static void mirrored(SubmissionComparison there, SubmissionComparison back) {
        assertThat(back.findings().stream().map(SubmissionComparisonTest::turned))
                .containsExactlyInAnyOrderElementsOf(
                        there.findings().stream().map(Turned::of).toList());
        assertThat(back.outcome().before()).isEqualTo(there.outcome().after());
        assertThat(back.given())
                .isEqualTo(new ReadChange(
                        there.given().newlyReviewed(), there.given().noLongerReviewed()));
        assertThat(back.counts().worse()).isEqualTo(there.counts().better());
        assertThat(back.counts().added()).isEqualTo(there.counts().gone());
        assertThat(back.counts().changed()).isEqualTo(there.counts().changed());
        assertThat(back.counts().unchanged()).isEqualTo(there.counts().unchanged());
    }

    /** A change without its cause, whose direction is the edition differences' own. */
    private record Turned(
            Transition transition,
            FindingChange.Changed subject,
            Optional<FindingChange.Side> before,
            Optional<FindingChange.Side> after) {
        static Turned of(FindingChange change) {
            return new Turned(change.transition(), change.subject(), change.before(), change.after());
        }
    }

    private static Turned turned(FindingChange change) {
        Transition transition =
                switch (change.transition()) {
                    case WORSE -> Transition.BETTER;
                    case BETTER -> Transition.WORSE;
                    case NEW -> Transition.GONE;
                    case GONE -> Transition.NEW;
                    case CHANGED, UNCHANGED -> change.transition();
                };
        return new Turned(transition, change.subject(), change.after(), change.before());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_comparison_is_as_the_published_schema_says_and_the_same_every_time(byte[] sample) {
        String json = ReportJson.indented(compare(sample, ENGLAND_2014, SCOTLAND_2024));

        assertThat(ComparisonSchema.faults("submissionComparison", json)).isEmpty();
        assertThat(ReportJson.indented(compare(sample, ENGLAND_2014, SCOTLAND_2024)))
                .isEqualTo(json);
    }

    /** BS 8417:2024 holds the joists of a deck to use class 4, BS 8417:2011+A1:2014 to 3.2 (secondary pages). */
    @Test
    void joists_of_use_class_3_2_no_longer_comply_since_2024() {
        SubmissionComparison comparison = compare(withUseClass("UC3.2"), ENGLAND_2014, ENGLAND_2024);
        FindingChange joists = comparison.findings().stream()
                .filter(c -> c.after().or(c::before).orElseThrow().provision().equals("treatment.joists"))
                .findFirst()
                .orElseThrow();

        assertThat(joists.transition()).isEqualTo(Transition.WORSE);
        assertThat(joists.before().orElseThrow().determination()).isEqualTo(Determination.COMPLIES);
        assertThat(joists.after().orElseThrow().determination()).isEqualTo(Determination.DOES_NOT_COMPLY);
        assertThat(joists.cause())
                .isEqualTo(new Cause(
                        Cause.Kind.PROVISION, Optional.of("treatment.joists"), Optional.of(Effect.TIGHTENED)));
        assertThat(comparison.gotWorse()).isTrue();
    }

    @Test
    void joists_of_use_class_4_comply_with_both() {
        SubmissionComparison comparison = compare(withUseClass("UC4"), ENGLAND_2014, ENGLAND_2024);

        assertThat(comparison.findings().stream()
                        .filter(c -> c.after().isPresent() && c.before().isPresent())
                        .filter(c -> c.after().get().provision().equals("treatment.joists")))
                .isEmpty();
        assertThat(comparison.gotWorse()).isFalse();
    }

    private static byte[] withUseClass(String useClass) {
        return new String(sample("small-level-deck"), StandardCharsets.UTF_8)
                .replaceAll("\"useClass\": \"[^\"]*\"", "\"useClass\": \"" + useClass + "\"")
                .getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void across_regions_each_concern_of_a_subject_is_held_against_the_same_concern() {
        SubmissionComparison comparison = compare(sample("many-faults"), ENGLAND_2024, SCOTLAND_2024);

        assertThat(comparison.findings())
                .extracting(c -> List.of(c.concern(), c.subject().pointer()))
                .doesNotHaveDuplicates();
        assertThat(comparison.findings()).extracting(c -> c.cause().kind()).containsOnly(Cause.Kind.RULESET);
    }

    @Test
    void what_is_no_submission_is_refused_as_a_review_refuses_it() {
        assertThat(COMPARISONS.between(ENGLAND_2014, ENGLAND_2024).compare("{".getBytes(StandardCharsets.UTF_8)))
                .isInstanceOfSatisfying(
                        ComparisonResult.Refused.class,
                        refused -> assertThat(refused.why()).isInstanceOf(ReviewResult.NotJson.class));
    }
}
