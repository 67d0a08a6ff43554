package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a change of a table makes tighter or looser: by the sense of the look-up, row by row. */
class LookUpChangeTest {

    private static final EditedFiles GOOD = EditedFiles.tables();
    private static final String EDITION = "testland/2024.yaml";
    private static final String STANDARD = "standards/handbook.yaml";
    private static final String JOISTS = "testland/tables/joists.csv";
    private static final String FOOTINGS = "testland/tables/footings.csv";

    private static LimitChange change(int provision, EditedFiles is) {
        LimitChange there = between(provision, GOOD, is);
        assertThat(between(provision, is, GOOD).strictness())
                .isEqualTo(there.strictness().reversed());
        return there;
    }

    private static LimitChange between(int provision, EditedFiles was, EditedFiles is) {
        return LimitChange.between(
                was.edition().provisions().get(provision),
                is.edition().provisions().get(provision),
                TableVocabulary.SMALL);
    }

    @Test
    void a_table_that_stays_is_as_strict() {
        for (int provision = 0; provision < 3; provision++) {
            assertThat(between(provision, GOOD, EditedFiles.tables()).values()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "9-0, 8-11, TIGHTER, at most 108 in, at most 107 in",
        "9-0, 9-1, LOOSER, at most 108 in, at most 109 in",
        "9-0, NP, TIGHTER, at most 108 in, not permitted",
        "NP, 9-0, LOOSER, not permitted, at most 108 in"
    })
    void a_span_that_shrinks_is_tighter(String old, String now, Strictness strictness, String was, String is) {
        LimitChange change = change(0, GOOD.with(JOISTS, old, now));
        assertThat(change.strictness()).isEqualTo(strictness);
        assertThat(change.values()).singleElement().satisfies(value -> {
            assertThat(value.what()).startsWith("joist span, group ").endsWith(", size 2x6, spacing 16 in");
            assertThat(value.was().orElseThrow().text()).isEqualTo(was);
            assertThat(value.is().orElseThrow().text()).isEqualTo(is);
            assertThat(value.is().orElseThrow().citation().text()).isEqualTo("Handbook 7, Table 3");
        });
    }

    @Test
    void a_footing_that_shrinks_is_looser() {
        assertThat(change(2, GOOD.with(FOOTINGS, "2000,false,16", "2000,false,15"))
                        .strictness())
                .isEqualTo(Strictness.LOOSER);
        assertThat(change(2, GOOD.with(FOOTINGS, "2000,false,16", "2000,false,17"))
                        .strictness())
                .isEqualTo(Strictness.TIGHTER);
    }

    @Test
    void a_row_that_comes_or_goes_cannot_be_told() {
        LimitChange change = change(0, GOOD.with(JOISTS, "11-10,,", "11-10,9-8,"));
        assertThat(change.strictness()).isEqualTo(Strictness.UNKNOWN);
        assertThat(change.values()).singleElement().satisfies(value -> {
            assertThat(value.was()).isEmpty();
            assertThat(value.is().orElseThrow().text()).isEqualTo("at most 116 in");
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            E | 0 | conservative: up, least: 0 | conservative: down, least: 0 | spacing of the row
            E | 1 | round: 1 in | round: 2 in | interpolation
            E | 2 | unstated: 1500 psf | unstated: 2000 psf | soil of the row
            S | 0 | [larch, B] | [larch, A] | group of the row
            """)
    void another_way_to_a_row_cannot_be_told(String file, int provision, String old, String now, String what) {
        EditedFiles changed = GOOD.with(file.equals("E") ? EDITION : STANDARD, old, now);
        if (now.equals("[larch, A]")) {
            changed = changed.with(STANDARD, "[willow, C]", "[willow, B]");
        }
        LimitChange change = change(provision, changed);
        assertThat(change.strictness()).isEqualTo(Strictness.UNKNOWN);
        assertThat(change.values()).extracting(ChangedValue::what).containsExactly(what);
    }

    @Test
    void how_a_row_was_confirmed_is_no_change() {
        assertThat(between(0, GOOD, GOOD.with(JOISTS, "memory", "page")).values())
                .isEmpty();
    }
}
