package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;
import static org.deckplanreview.ruleset.EditedFiles.EN1995;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The part of YAML 1.1 (yaml.org/spec/1.1) that rulesets are written in. */
class StrictYamlTest {

    private static final EditedFiles GOOD = EditedFiles.good();

    private static void assertFault(EditedFiles edited, String at, String found, String detail) {
        RulesetFault fault = edited.faults().get(0);
        assertThat(fault.file()).isEqualTo(EDITION);
        assertThat(fault.line()).isEqualTo(edited.lineOf(EDITION, at));
        assertThat(fault.found()).isEqualTo(found);
        assertThat(fault.detail()).contains(detail);
        assertThat(fault.accepted()).isNotBlank();
    }

    @Test
    void tags_are_refused() {
        EditedFiles edited = GOOD.with(EDITION, "title: Provisions", "title: !!java.net.URL Provisions");
        assertFault(edited, "title: !!java", "'tag:yaml.org,2002:java.net.URL'", "Tags are not used here");
    }

    @Test
    void tags_of_maps_are_refused() {
        EditedFiles edited = GOOD.with(EDITION, "inForce: {", "inForce: !period {");
        assertFault(edited, "inForce: !period", "'!period'", "Tags are not used here");
    }

    @Test
    void anchors_and_aliases_are_refused_both_at_once() {
        EditedFiles edited = GOOD.with(EDITION, "title: Provisions of Testland", "title: &name Provisions")
                .with(EDITION, "notes: [An invented region.]", "notes: [*name]");
        assertThat(edited.faults())
                .extracting(RulesetFault::detail)
                .containsExactly("Anchors are not used here", "Aliases are not used here");
        assertThat(edited.faults())
                .extracting(RulesetFault::line)
                .containsExactly(edited.lineOf(EDITION, "title: &name"), edited.lineOf(EDITION, "notes:"));
    }

    @Test
    void a_member_given_twice_is_refused() {
        EditedFiles edited = GOOD.with(EDITION, "notes: [", "title: Again\nnotes: [");
        assertFault(edited, "title: Again", "'title'", "given twice");
    }

    @Test
    void a_second_document_is_refused() {
        EditedFiles edited = GOOD.with(EDITION, GOOD.text(EDITION) + "---\nregion: other\n");
        assertFault(edited, "---", "a second document", "one document");
    }

    @Test
    void directives_are_refused() {
        EditedFiles edited = GOOD.with(EDITION, "%YAML 1.1\n---\n" + GOOD.text(EDITION));
        assertThat(edited.fault().detail()).isEqualTo("Directives are not used here");
    }

    @Test
    void an_empty_file_is_refused() {
        assertThat(GOOD.with(EDITION, "").fault().detail()).isEqualTo("The file is empty");
        assertThat(GOOD.with(EDITION, "# nothing but this\n").fault().detail()).isEqualTo("The file is empty");
    }

    @Test
    void a_member_without_a_value_is_refused() {
        EditedFiles edited = GOOD.with(EDITION, "title: Provisions of Testland", "title:");
        assertFault(edited, "title:\n", "nothing", "A value is missing here");
        assertThat(GOOD.with(EDITION, "title: Provisions of Testland", "title: null")
                        .fault()
                        .found())
                .isEqualTo("nothing");
    }

    @Test
    void a_map_as_a_name_is_refused() {
        EditedFiles edited = GOOD.with(EDITION, "title: Provisions of Testland", "? {a: b}\n: c");
        assertFault(edited, "? {a: b}", "a map, list or alias", "must be a word");
    }

    @Test
    void a_fault_of_syntax_is_told_by_line() {
        EditedFiles edited = GOOD.with(EDITION, "title: Provisions of Testland", "title: [Provisions");
        RulesetFault fault = edited.fault();
        assertThat(fault.detail()).startsWith("This is not YAML: ");
        assertThat(fault.line()).isGreaterThanOrEqualTo(edited.lineOf(EDITION, "title: ["));
    }

    @Test
    void a_file_that_is_no_map_is_refused() {
        assertThat(GOOD.with(EDITION, "- a\n- b\n").fault().found()).isEqualTo("a list of 2");
        assertThat(GOOD.with(EDITION, "text").fault().found()).isEqualTo("'text'");
        assertThat(GOOD.with(EN1995, "text").faults())
                .extracting(RulesetFault::found)
                .containsExactly("'text'");
    }

    @Test
    void bytes_that_are_no_text_are_refused() {
        byte[] bytes = "title: \u00e9".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(GOOD.with(EDITION, bytes).fault().accepted()).isEqualTo("text in UTF-8");
    }

    @Test
    void characters_that_yaml_does_not_allow_are_refused() {
        assertThat(GOOD.with(EDITION, "title: \u0001\n").fault().detail()).startsWith("This is not YAML: ");
    }

    @Test
    void a_file_over_one_mebibyte_is_refused_and_one_of_that_size_is_read() {
        String text = GOOD.text(EDITION);
        int room = (1 << 20) - text.getBytes(StandardCharsets.UTF_8).length - 2;
        String full = text + "#" + "x".repeat(room) + "\n";
        assertThat(GOOD.with(EDITION, full).load()).isInstanceOf(LoadResult.Loaded.class);
        assertThat(GOOD.with(EDITION, full + "\n").fault().detail()).isEqualTo("The file is too large");
    }

    @Test
    void a_file_of_more_than_24_levels_is_refused() {
        assertThat(GOOD.with(EDITION, "[".repeat(24) + "a" + "]".repeat(24))
                        .fault()
                        .detail())
                .isEqualTo("The file is too deep");
        assertThat(GOOD.with(EDITION, "[".repeat(20_000)).fault().detail()).isEqualTo("The file is too deep");
        assertThat(GOOD.with(EDITION, "[".repeat(23) + "a" + "]".repeat(23))
                        .fault()
                        .found())
                .isEqualTo("a list of 1");
    }

    @Test
    void numbers_are_decimal_and_nothing_else_is_a_number() {
        for (String text : List.of("1e3", "0x10", "010", "1_000", ".5", "+1", "1:30", ".inf", "1234567890123456")) {
            assertThat(GOOD.with(EDITION, "with: {ksys: 1.05}", "with: {ksys: " + text + "}")
                            .fault()
                            .found())
                    .isEqualTo("'" + text + "'");
        }
        assertThat(GOOD.with(EDITION, "with: {ksys: 1.05}", "with: {ksys: -0.5}")
                        .load())
                .isInstanceOf(LoadResult.Loaded.class);
    }
}
