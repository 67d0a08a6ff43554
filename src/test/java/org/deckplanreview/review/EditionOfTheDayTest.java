package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.api.Test;

/** Which edition a submission is reviewed against, and what is answered where there is none. */
class EditionOfTheDayTest {

    private static ReviewResult review(SampleDeck deck) {
        return BuiltIn.REVIEWER.review(deck.bytes());
    }

    private static ReviewResult.UnknownRuleset refused(SampleDeck deck) {
        ReviewResult result = review(deck);
        assertThat(result).isInstanceOf(ReviewResult.UnknownRuleset.class);
        return (ReviewResult.UnknownRuleset) result;
    }

    @Test
    void the_first_day_in_force_picks_the_edition() {
        assertThat(BuiltIn.report(SampleDeck.complete()
                                .with("/reviewOn", "2024-10-01")
                                .bytes())
                        .edition()
                        .edition())
                .isEqualTo("2024");
    }

    @Test
    void on_the_day_before_the_first_edition_the_editions_are_named() {
        ReviewResult.UnknownRuleset refused = refused(SampleDeck.complete().with("/reviewOn", "2014-10-30"));
        assertThat(refused.pointer().value()).isEqualTo("/reviewOn");
        assertThat(refused.detail()).contains("uk-england", "2014-10-30");
        assertThat(refused.accepted()).contains("2024 (from 2024-10-01");
    }

    @Test
    void an_edition_that_is_named_is_used_on_any_day() {
        SampleDeck deck = SampleDeck.complete().with("/reviewOn", "2024-09-30").with("/ruleset/edition", "2024");
        assertThat(BuiltIn.report(deck.bytes()).edition().edition()).isEqualTo("2024");
    }

    @Test
    void an_unknown_edition_is_told_and_the_editions_are_named() {
        ReviewResult.UnknownRuleset refused = refused(SampleDeck.complete().with("/ruleset/edition", "1066"));
        assertThat(refused.pointer().value()).isEqualTo("/ruleset/edition");
        assertThat(refused.detail()).contains("uk-england", "'1066'");
        assertThat(refused.accepted()).contains("2024 (from 2024-10-01");
    }

    @Test
    void a_misspelt_region_is_told_with_the_nearest() {
        ReviewResult.UnknownRuleset refused = refused(SampleDeck.complete().with("/ruleset/region", "uk-engalnd"));
        assertThat(refused.pointer().value()).isEqualTo("/ruleset/region");
        assertThat(refused.detail()).contains("'uk-engalnd'", "Is 'uk-england' meant?");
        assertThat(refused.accepted()).contains("uk-england");
    }

    @Test
    void a_region_that_is_near_to_none_is_told_which_there_are() {
        ReviewResult.UnknownRuleset refused = refused(SampleDeck.complete().with("/ruleset/region", "atlantis"));
        assertThat(refused.detail()).contains("'atlantis'").doesNotContain("meant");
        assertThat(refused.accepted()).contains("uk-england");
    }
}
