package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scopes of provisions, and factors of keys, as files state them. */
class ScopesTest {

    private static final String EDITION = "testland/2024.yaml";
    private static final EditedFiles GOOD = EditedFiles.tables();

    private static Provision provision() {
        return GOOD.edition().provisions().stream()
                .filter(p -> p.id().equals("beam.span-by-share"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_scope_is_kept_with_its_cases_and_its_clause() {
        assertThat(provision().scope()).singleElement().satisfies(reach -> {
            assertThat(reach.name()).isEqualTo("dry");
            assertThat(reach.citation().clause()).isEqualTo("9");
            assertThat(reach.beyond())
                    .extracting(Reach.Beyond::reason)
                    .containsExactly("frost reaches the deck", "the soil is weak");
        });
    }

    @Test
    void a_factor_is_kept_with_its_table_and_its_key() {
        TableKey.Direct key =
                (TableKey.Direct) ((Rule.LookUp) provision().rule()).keys().get(0);
        TableKey.Factor factor = key.times().orElseThrow();
        assertThat(factor.table().reference()).isEqualTo("handbook.factors");
        assertThat(factor.column()).isEqualTo("factor");
        assertThat(factor.key().quantity()).isEqualTo("overhang ratio");
        assertThat(factor.key().match()).isEqualTo(TableKey.Match.UP);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            scope: [dry] | scope: [drie] | 'drie' | There is no such scope
            when: {frost: true} | when: {frots: true} | 'frots' | There is no such quantity
            cite: {source: handbook, clause: "9" | cite: {source: handbok, clause: "9" | 'handbok' | There is no such source
            column: factor | column: faktor | 'faktor' | no such column
            from: handbook.factors | from: handbook.faktors | 'faktors' | no such
            {ratio: {quantity: overhang ratio | {ratoi: {quantity: overhang ratio | 'ratoi' | no such key column
            """)
    void what_goes_wrong_is_told(String old, String replacement, String found, String detail) {
        assertThat(GOOD.with(EDITION, old, replacement).faults())
                .filteredOn(fault -> fault.found().equals(found))
                .extracting(RulesetFault::detail)
                .anyMatch(told -> told.contains(detail));
    }

    @Test
    void a_scope_that_no_provision_has_is_told() {
        RulesetFault fault = GOOD.with(EDITION, "    scope: [dry]\n", "").fault();
        assertThat(fault.found()).isEqualTo("'dry'");
        assertThat(fault.detail()).isEqualTo("No provision has this scope");
    }

    @Test
    void a_factor_has_no_unit() {
        RulesetFault fault = GOOD.with(EDITION, "column: factor, keys: {ratio", "column: ratio, keys: {factor")
                .with(
                        "standards/handbook.yaml",
                        "columns: {ratio: \"1\", factor: \"1\"}",
                        "columns: {ratio: in, factor: \"1\"}")
                .fault();
        assertThat(fault.found()).isEqualTo("'ratio'");
        assertThat(fault.detail()).isEqualTo("The column holds in, a factor has no unit");
    }

    @Test
    void an_edition_that_reaches_less_far_has_another_digest() {
        assertThat(GOOD.with(EDITION, "under: 1000 psf", "under: 1100 psf")
                        .edition()
                        .digest())
                .isNotEqualTo(GOOD.edition().digest());
    }
}
