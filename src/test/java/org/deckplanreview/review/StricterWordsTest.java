package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.report.AmendedValue;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words that rise: an amendment that asks for a higher one tightens, one that asks for a lower one needs an authority. */
class StricterWordsTest {

    @TempDir
    static Path folder;

    private static Reviewer reviewer;

    private static final String HOUSE =
            "  house: {title: House rules, edition: \"\", publisher: \"\", standing: common practice}\n";
    private static final String LAW =
            "  law: {title: Ordinance, edition: \"7\", publisher: County, standing: statute}\n";

    @BeforeAll
    static void amend() throws IOException {
        joists("higher", HOUSE, "UC5", "cite: {source: house, confirmed: {by: practice, on: 2026-11-27}}");
        joists("lawful", LAW, "UC3.2", "cite: {source: law, clause: \"3\", confirmed: {by: page, on: 2026-11-27}}");
        reviewer = ReviewServices.reviewerOf(
                BuiltIn.CATALOGUE, ReviewServices.loaded(BuiltIn.CATALOGUE.vocabulary(), Optional.of(folder)), "test");
    }

    private static Path joists(String name, String source, String useClass, String cite) throws IOException {
        Path file = folder.resolve("uk-england/amendments/" + name + ".yaml");
        Files.createDirectories(file.getParent());
        Files.writeString(
                file,
                "region: uk-england\namendment: " + name + "\ntitle: Joists\namends: [\"2024\"]\nsources:\n" + source
                        + "provisions:\n  - id: treatment.joists\n    overrides: true\n    " + cite
                        + "\n    calculate: {method: durability.useClass, values: [en460], with: {neededUseClass: "
                        + useClass + ", neededOfHeartwood: UC3.2}}\n");
        return file;
    }

    private static ReviewResult review(String amendment) {
        ObjectNode deck = (ObjectNode) BuiltIn.sample("small-level-deck.json");
        ObjectNode ruleset =
                deck.putObject("ruleset").put("region", "uk-england").put("edition", "2024");
        ruleset.putArray("amendments").add(amendment);
        return reviewer.review(BuiltIn.bytes(deck));
    }

    private static String strictness(String amendment) {
        List<AmendedValue> values =
                ((ReviewResult.Reviewed) review(amendment)).report().edition().amendedValues();
        return values.stream()
                .filter(value -> value.what().equals("neededUseClass"))
                .map(AmendedValue::strictness)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"higher, tighter", "lawful, looser"})
    void a_use_class_knows_which_way_is_stricter(String amendment, String expected) {
        assertThat(strictness(amendment)).isEqualTo(expected);
    }

    @Test
    void a_lower_use_class_needs_an_authority() throws IOException {
        Path lower =
                joists("lower", HOUSE, "UC3.2", "cite: {source: house, confirmed: {by: practice, on: 2026-11-27}}");
        try {
            assertThatThrownBy(() -> ReviewServices.loaded(BuiltIn.CATALOGUE.vocabulary(), Optional.of(folder)))
                    .isInstanceOf(FaultyRulesets.class)
                    .hasMessageContaining("this permits what it refuses, without an authority: treatment.joists")
                    .hasMessageContaining("'UC4' becomes 'UC3.2'");
        } finally {
            Files.delete(lower);
        }
    }

    /** Use classes of EN 335:2013, clause 4, and use categories of AWPA U1, section 2, rise in these orders. */
    @Test
    void classes_and_categories_rise_as_their_standards_list_them() {
        ParameterDescription needed = BuiltIn.CATALOGUE
                .vocabulary()
                .method("durability.useClass")
                .orElseThrow()
                .parameters()
                .get(0);
        assertThat(needed.words()).containsExactly("UC1", "UC2", "UC3.1", "UC3.2", "UC4", "UC5");
        QuantityDescription category = BuiltIn.CATALOGUE
                .vocabulary()
                .quantity("use category of treatment")
                .orElseThrow();
        assertThat(category.ordered()).isTrue();
        assertThat(category.words()).containsExactly("UC3A", "UC3B", "UC4A", "UC4B", "UC4C");
    }
}
