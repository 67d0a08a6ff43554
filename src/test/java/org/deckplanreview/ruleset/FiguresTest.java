package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;

import java.util.Optional;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures that texts of provisions can show, and what the loader says of those that they cannot. */
class FiguresTest {

    private static final EditedFiles GOOD = EditedFiles.good();

    private static Provision provision(Edition edition, String id) {
        return edition.provisions().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String written(EditedFiles files, String id) {
        Edition edition = files.edition();
        Provision provision = provision(edition, id);
        return new Figures(edition.provisions(), TestVocabulary.SMALL).written(provision, provision.advice());
    }

    /** Columns: provision, its advice, what replaces it, and the text as the edition has it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            guard.height | Raise the guard. | Raise it to {limit}. | Raise it to 1100 mm or 1200 mm.
            guard.height | Raise the guard. | Raise the ground to a drop of {drop} or less. | Raise the ground to a drop of 600 mm or less.
            post.preservative | Take another preservative. | Take {limit}. | Take copper or creosote.
            post.preservative | Take another preservative. | Take one for use class {post.treatment}. | Take one for use class 4.
            joist.bending | Take a deeper joist. | A system factor of {ksys}. | A system factor of 1.05.
            joist.bending | Take a deeper joist. | Bear {contactLength} more. | Bear 30 mm more.
            joist.bending | Take a deeper joist. | Keep under {limit}. | Keep under the allowed value.
            """)
    void a_text_shows_figures(String id, String advice, String replacement, String shown) {
        assertThat(written(GOOD.with(EDITION, "advice: " + advice, "advice: \"" + replacement + "\""), id))
                .isEqualTo(shown);
    }

    @Test
    void a_bound_of_the_condition_is_kept_to_from_without() {
        Edition edition = GOOD.edition();
        Figures figures = new Figures(edition.provisions(), TestVocabulary.SMALL);
        Optional<Figure> drop = figures.find(provision(edition, "guard.height"), "drop");
        assertThat(drop.orElseThrow().sense())
                .as("whoever has a smaller drop needs no guard")
                .isEqualTo(Sense.AT_MOST);
        assertThat(drop.orElseThrow().values()).containsExactly(Measure.mm(600));
    }

    /** Columns: advice, and parts of what was found, of what is wrong and of what would be accepted. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            Raise it to {limt}. | 'limt' | no such figure of this provision | nearest is 'limit'
            Raise it to {ksys}. | 'ksys' | no such figure of this provision | drop, limit
            Raise it to {}. | '' | no such figure of this provision | drop, limit
            Raise it to {joist.bending}. | 'joist.bending' | no such figure of this provision | drop, limit
            Raise it to {1 in limit}. | 'Raise it to {1 in limit}.' | 'limit' is no ratio | {limit}
            Raise it to {limit. | 'Raise it to {limit.' | A brace has no partner | {limit}
            Raise it to limit}. | 'Raise it to limit}.' | A brace has no partner | {limit}
            """)
    void a_text_that_no_figure_can_fill(String advice, String found, String detail, String accepted) {
        RulesetFault fault = GOOD.with(EDITION, "advice: Raise the guard.", "advice: \"" + advice + "\"")
                .fault();
        assertThat(fault.found()).isEqualTo(found);
        assertThat(fault.detail()).contains(detail);
        assertThat(fault.accepted()).contains(accepted);
    }

    @Test
    void cautions_and_referrals_are_looked_at_too() {
        assertThat(GOOD.with(EDITION, "caution: A low guard", "caution: A {low} guard")
                        .fault()
                        .found())
                .isEqualTo("'low'");
        assertThat(GOOD.with(EDITION, "referral: Ask a", "referral: Ask {a}")
                        .fault()
                        .found())
                .isEqualTo("'a'");
    }
}
