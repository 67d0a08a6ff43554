package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedFinding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures that a report tells its reader to work to. */
class AdviceOnSiteTest {

    @TempDir
    static Path folder;

    private static ReportedFinding finding(Report report, String provision) {
        return report.findings().stream()
                .filter(f -> f.provision().equals(provision))
                .findFirst()
                .orElseThrow();
    }

    /** The frame needs 155.529 mm more than there is: 156 mm are enough, 155 mm are not. */
    @Test
    void a_deck_is_told_to_rise_by_whole_millimetres_that_are_enough() {
        Report report = BuiltIn.report(BuiltIn.bytes(BuiltIn.sample("sunk-post.json")));
        assertThat(report.findings())
                .extracting(ReportedFinding::sentence)
                .anyMatch(sentence -> sentence.contains("the deck must rise by 156 mm, or the ground be lowered"))
                .noneMatch(sentence -> sentence.contains("must rise by 155"));
    }

    private static Report bordering(Reviewer reviewer, String... amendments) {
        ObjectNode deck = (ObjectNode) BuiltIn.sample("border-deck-england.json");
        ObjectNode ruleset =
                deck.putObject("ruleset").put("region", "uk-england").put("edition", "2024");
        if (amendments.length > 0) {
            Arrays.stream(amendments)
                    .forEach(name -> ruleset.withArray("amendments").add(name));
        }
        return ((ReviewResult.Reviewed) reviewer.review(BuiltIn.bytes(deck))).report();
    }

    @Test
    void advice_and_referral_show_the_limit_that_an_amendment_sets() throws IOException {
        Path file = folder.resolve("uk-england/amendments/lower.yaml");
        Files.createDirectories(file.getParent());
        Files.writeString(file, """
                region: uk-england
                amendment: lower
                title: Lower decks
                amends: ["2024"]
                sources:
                  house: {title: House rules, edition: "", publisher: "", standing: common practice}
                provisions:
                  - id: planning.height
                    overrides: true
                    cite: {source: house, confirmed: {by: practice, on: 2026-11-27}}
                    limit: {quantity: platform height above highest ground, atMost: 200 mm}
                """);
        Reviewer amending = ReviewServices.reviewerOf(
                BuiltIn.CATALOGUE, ReviewServices.loaded(BuiltIn.CATALOGUE.vocabulary(), Optional.of(folder)), "test");

        Report national = bordering(BuiltIn.REVIEWER);
        Report amended = bordering(amending, "lower");

        assertThat(finding(national, "planning.height").advice().orElseThrow()).contains("300 mm");
        assertThat(finding(amended, "planning.height").advice().orElseThrow())
                .contains("200 mm")
                .doesNotContain("300 mm");
        assertThat(amended.referrals()).anyMatch(text -> text.contains("200 mm"));
    }
}
