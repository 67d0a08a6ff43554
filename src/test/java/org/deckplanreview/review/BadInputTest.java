package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.submission.SampleDeck.point;
import static org.deckplanreview.submission.SampleDeck.points;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.submission.Fault;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the review answers to bytes that are no submission, and to decks that cannot stand. */
class BadInputTest {

    private static final String START = "{\"reference\": \"R\", \"use\": ";

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("nothing", "", "empty"),
                Arguments.of("a bare word", "deck", "deck"),
                Arguments.of("a document that ends early", START, ""),
                Arguments.of("NaN", START + "NaN}", "NaN"),
                Arguments.of("an infinite number", START + "-Infinity}", "Infinity"),
                Arguments.of("a member twice", "{\"units\": \"mm\", \"units\": \"in\"}", "units"),
                Arguments.of("an exponent of a million", START + "1e1000000}", "exponent"),
                Arguments.of("an exponent that is no int", START + "1e99999999999}", "exponent"),
                Arguments.of("a number of a thousand digits", START + "9".repeat(1000) + "}", "number"),
                Arguments.of("lists 10 000 deep", "[".repeat(10_000) + "]".repeat(10_000), "depth"),
                Arguments.of("objects 10 000 deep", "{\"a\":".repeat(10_000) + "1" + "}".repeat(10_000), "depth"),
                Arguments.of("text after the end", "{} {}", "end"),
                Arguments.of("a comment", "/* deck */ {}", ""));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void what_is_not_json_is_refused_with_its_place(String what, String text, String told) {
        ReviewResult result = BuiltIn.REVIEWER.review(text.getBytes(StandardCharsets.UTF_8));
        assertThat(result).isInstanceOfSatisfying(ReviewResult.NotJson.class, refused -> {
            assertThat(refused.detail()).containsIgnoringCase(told).doesNotContain("Exception", "com.fasterxml");
            assertThat(refused.line()).isPositive();
            assertThat(refused.column()).isPositive();
        });
    }

    @Test
    void ten_megabytes_are_refused_unread() {
        byte[] large = new byte[10_000_000];
        Arrays.fill(large, (byte) '[');
        assertThat(BuiltIn.REVIEWER.review(large))
                .isInstanceOfSatisfying(
                        ReviewResult.NotJson.class,
                        refused -> assertThat(refused.detail()).contains("10000000 bytes"));
    }

    static Stream<Arguments> invalid() {
        return Stream.of(
                Arguments.of(
                        "/platforms/0/outline",
                        SampleDeck.complete().with("/platforms/0/outline", points(0, 0, 4800, 0, 2400, 0))),
                Arguments.of(
                        "/platforms/0/outline",
                        SampleDeck.complete().with("/platforms/0/outline", points(0, 0, 4800, 3600, 4800, 0, 0, 3600))),
                Arguments.of(
                        "/platforms/0/posts/1/at",
                        SampleDeck.complete().with("/platforms/0/posts/1/at", point(310, 600))),
                Arguments.of(
                        "/platforms/0/beams/0/posts/1",
                        SampleDeck.complete().withJson("/platforms/0/beams/0/posts/1", "\"P9\"")),
                Arguments.of(
                        "/platforms/0/joists/spacing", SampleDeck.complete().with("/platforms/0/joists/spacing", 0)),
                Arguments.of("/platforms/0/level/z", SampleDeck.complete().withJson("/platforms/0/level/z", "1e20")),
                Arguments.of("/timbers/0/strengthClass", SampleDeck.complete().with("/timbers/0/strengthClass", "C99")),
                Arguments.of("/reviewOn", SampleDeck.complete().with("/reviewOn", "2026-02-30")),
                Arguments.of("/colour", SampleDeck.complete().with("/colour", "brown")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("invalid")
    void a_document_that_is_no_submission_is_told_where_and_what_would_be_accepted(String pointer, SampleDeck deck) {
        assertThat(BuiltIn.REVIEWER.review(deck.bytes()))
                .isInstanceOfSatisfying(ReviewResult.Invalid.class, invalid -> {
                    assertThat(invalid.faults())
                            .extracting(f -> f.pointer().value())
                            .contains(pointer);
                    assertThat(invalid.faults()).extracting(Fault::accepted).noneMatch(String::isBlank);
                });
    }

    @Test
    void joists_that_meet_no_beam_are_undetermined_and_tell_that_they_need_one() {
        SampleDeck deck = SampleDeck.complete()
                .without("/platforms/0/ledger")
                .withJson("/platforms/0/beams", "[]")
                .withJson("/platforms/0/posts", "[]")
                .withJson("/platforms/0/footings", "[]");
        ReportedFinding bending = finding(BuiltIn.report(deck.bytes()), "joist.bending");
        assertThat(bending.determination()).isEqualTo(Determination.UNDETERMINED);
        assertThat(bending.needs())
                .anySatisfy(need -> assertThat(need.pointer().value()).isEqualTo("/platforms/0/beams"))
                .extracting(Need::what)
                .anySatisfy(what -> assertThat(what).contains("needs at least 2"));
    }

    @Test
    void joists_that_meet_one_beam_only_are_undetermined_too() {
        SampleDeck deck = SampleDeck.complete().without("/platforms/0/ledger");
        ReportedFinding bending = finding(BuiltIn.report(deck.bytes()), "joist.bending");
        assertThat(bending.determination()).isEqualTo(Determination.UNDETERMINED);
        assertThat(bending.needs())
                .extracting(Need::what)
                .anySatisfy(what -> assertThat(what).contains("1 beam or ledger"));
    }

    /** What the known part decides stays decided: an open edge without a guard fails, whatever else is missing. */
    @Test
    void a_deck_that_lacks_its_frame_still_fails_by_what_is_known() {
        SampleDeck deck = SampleDeck.complete().without("/platforms/0/joists").without("/platforms/0/edges/0/guard");
        assertThat(BuiltIn.report(deck.bytes()).outcome()).isEqualTo(Determination.DOES_NOT_COMPLY);
    }

    @Test
    void an_outline_alone_is_a_submission_that_needs_all_the_rest() {
        SampleDeck deck = SampleDeck.complete()
                .withJson("/platforms", "[{\"id\": \"p\", \"outline\": [[0, 0], [3000, 0], [3000, 2000]]}]")
                .without("/site")
                .without("/protection");
        Report report = BuiltIn.report(deck.bytes());
        assertThat(report.outcome()).isEqualTo(Determination.UNDETERMINED);
        List<String> needed = report.findings().stream()
                .flatMap(f -> f.needs().stream())
                .map(n -> n.pointer().value())
                .toList();
        assertThat(needed)
                .contains(
                        "/platforms/0/joists",
                        "/platforms/0/beams",
                        "/platforms/0/posts",
                        "/platforms/0/footings",
                        "/platforms/0/boards",
                        "/protection/fixings");
    }

    private static ReportedFinding finding(Report report, String provision) {
        return report.findings().stream()
                .filter(f -> f.provision().equals(provision))
                .findFirst()
                .orElseThrow();
    }
}
