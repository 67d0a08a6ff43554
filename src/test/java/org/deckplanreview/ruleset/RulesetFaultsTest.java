package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;
import static org.deckplanreview.ruleset.EditedFiles.EN1995;
import static org.deckplanreview.ruleset.EditedFiles.EN338;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each way to get a ruleset wrong is told with file, line, what was found and what would be accepted. */
class RulesetFaultsTest {

    private static final EditedFiles GOOD = EditedFiles.good();

    private static void assertOneFault(
            String path, String old, String replacement, String found, String detail, String accepted) {
        EditedFiles edited = GOOD.with(path, old, replacement);
        RulesetFault fault = edited.fault();
        assertThat(fault.file()).isEqualTo(path);
        assertThat(edited.text(path).lines().toList().get(fault.line() - 1))
                .contains(replacement.lines().toList().get(0).strip());
        assertThat(fault.found()).contains(found);
        assertThat(fault.detail()).contains(detail);
        assertThat(fault.accepted()).contains(accepted);
    }

    /** Columns: text, what replaces it, and parts of what was found, of what is wrong and of what would be accepted. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # Names that the vocabulary lacks
            quantity: guard height | quantity: gaurd height | 'gaurd height' | no such quantity | nearest is 'guard height'
            {drop: {over | {drpo: {over | 'drpo' | no such quantity | nearest is 'drop'
            method: test.bending | method: test.bendign | 'test.bendign' | no such method | nearest is 'test.bending'
            with: {ksys: 1.05} | with: {ksys: 1.05, gamaM: 1.3} | 'gamaM' | no such parameter of test.bending | nearest is 'gammaM'
            subjects: joists | subjects: joist | 'joist' | right form | nearest is 'joists'
            concern: guarding | concern: gaurding | 'gaurding' | right form | nearest is 'guarding'
            obligation: shall | obligation: must | 'must' | right form | shall, should, may
            standing: statutory guidance | standing: law | 'law' | right form | statute, statutory guidance
            confirmed: {by: page, | confirmed: {by: pages, | 'pages' | right form | nearest is 'page'
            # Names that the file itself lacks
            {source: guarding, clause: Diagram 3.1 | {source: gaurding, clause: Diagram 3.1 | 'gaurding' | no such source | nearest is 'guarding'
            values: [en338, en1995] | values: [en338, en1995, en1990] | 'en1990' | no such standard in uses | nearest is 'en1995'
            standards/en338-2016.yaml | standards/en338-2003.yaml | 'standards/en338-2003.yaml' | no such standard's file | nearest is 'standards/en338-2016.yaml'
            `    gammaM: {value: 1.35,` | `    gamaM: {value: 1.35,` | 'gamaM' | no such value or table | nearest is 'gammaM'
            # Values
            over: 600 mm | over: 600 N | '600 N' | measures something else | mm, m, km, in
            over: 600 mm | over: 600 | 600 | measures something else | mm, m, km, in
            over: 600 mm | over: 600 mmm | '600 mmm' | no number with a known unit | mm, m, km, in
            value: 1200 mm | value: high | 'high' | no number with a known unit | mm, m, km, in
            value: 1200 mm | value: true | true | no number with a known unit | mm, m, km, in
            occupancy: [single-dwelling, public] | occupancy: [single-dweling, public] | 'single-dweling' | no such word | nearest is 'single-dwelling'
            atLeast: "4" | atLeast: "5" | '5' | no such word | 1, 2, 3.1, 3.2, 4
            atLeast: "4" | atLeast: true | true | no word | 1, 2, 3.1, 3.2, 4
            oneOf: [{values: [copper, creosote]}] | atLeast: copper | 'copper' | cannot be limited by 'atLeast' | is, oneOf
            {quantity: use class, atLeast: "4"} | {quantity: use class, over: "4"} | '4' | cannot be limited by 'over' | atLeast, atMost, is, oneOf
            when: {drop: {over: 600 mm}} | when: {drop: [high]} | a list of 1 | cannot be asked for | {atLeast, atMost, over, under: a number in mm}
            when: {cut ends treated: true} | when: {cut ends treated: [yes]} | a list of 1 | cannot be asked for | true or false
            when: {cut ends treated: true} | when: {preservative: true} | true | cannot be asked for | a list of its words: copper, creosote, none
            with: {ksys: 1.05} | with: {ksys: 1.05 mm} | '1.05 mm' | measures something else | a number in %, 1
            with: {ksys: 1.05} | with: {ksys: 1.05, kmod: 0.5} | 0.5 | A table cannot stand here | with a table 'kmod'
            uniform: 1.5 kN/m2 | uniform: 1.5 kN | '1.5 kN' | measures something else | kN/m2
            concentrated: 2 kN | concentrated: 2 kN/m2 | '2 kN/m2' | measures something else | N, kN
            from: 2024-10-01 | from: 2024-02-30 | '2024-02-30' | no day of the calendar | 2024-10-01
            {from: 2024-10-01} | {from: 2024-10-01, until: 2024-09-30} | '2024-09-30' | before the first | from 2024-10-01 on
            # Subjects of another kind
            when: {cut ends treated: true} | when: {drop: {over: 600 mm}} | 'drop' | 'posts' have no such quantity | cut ends treated
            {quantity: use class, atLeast: "4"} | {quantity: guard height, atLeast: 1 m} | 'guard height' | 'posts' have no such quantity | use class
            largest drop: {atMost: 600 mm} | drop: {atMost: 600 mm} | 'drop' | 'platforms' have no such quantity | largest drop, occupancy
            # Parts missing or too many
            source: guarding, clause: Diagram 3.1 | source: guarding | a map of source, confirmed | 'clause' is missing | Guarding of drops, 2013
            {drop: {over: 600 mm}} | {drop: 600 mm} | '600 mm' | right form | a list of words, true or false, or {over: 600 mm}
            {drop: {over: 600 mm}} | {drop: {}} | an empty map | right form | one or more of atLeast, atMost, over and under
            {drop: {over: 600 mm}} | {drop: {than: 600 mm}} | 'than' | no such member | atLeast, atMost, over, under
            {drop: {over: 600 mm}} | {drop: {over: [600 mm]}} | a list of 1 | right form | one token
            oneOf: [{values: [copper, creosote]}] | oneOf: [copper] | 'copper' | right form | {when, values}
            with: {ksys: 1.05} | with: {ksys: [1.05]} | a list of 1 | right form | one token
            with: {ksys: 1.05} | with: {ksys: {value: 1.05}} | a map of value | 'cite' is missing | {source: guarding
            `      category: A` | `      category: Z` | 'Z' | right form | such as A or C3
            {value: 0.5, cite: {source: habit, confirmed: {by: practice, on: 2026-11-25}}} | 0.5 | 0.5 | no citation | {value, cite}
            {value: 0.5, cite: {source: habit, confirmed: {by: practice, | {value: 0.5, cite: {source: habit, confirmed: {by: memory, | 'memory' | 'habit' is common practice | practice, or the document
            source: guarding, clause: Diagram 3.1, confirmed: {by: page, | source: guarding, clause: Diagram 3.1, confirmed: {by: practice, | 'practice' | 'guarding' is no common practice | page, secondary page, computed or memory
            with: {ksys: 1.05} | with: {ksys: 1.05, serviceClass: "4"} | '4' | no such word | 1, 2, 3
            edition: "2024" | edition: 2024 | 2024 | right form | in quotes
            id: post.preservative | id: post.treatment | 'post.treatment' | a provision of this id already | another id
            """)
    void a_fault_in_an_edition(String old, String replacement, String found, String detail, String accepted) {
        assertOneFault(EDITION, old, replacement, found, detail, accepted);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            standard: en338-2016 | standard: en338-2003 | 'en338-2003' | another name | standards/en338-2003.yaml
            fmk: N/mm2 | fmk: N/mm5 | 'N/mm5' | no such type of column | the nearest is 'N/mm'
            confirmed: {by: secondary page, | confirmed: {by: practice, | 'practice' | 'en338-2016' is no common practice | page, secondary page, computed or memory
            [C16, 16, 370] | [C16, 16] | a list of 2 | 2 cells for 3 columns | class, fmk, rhoMean
            [C16, 16, 370] | [C16, 16 N/mm2, 370] | '16 N/mm2' | no number | a plain number in N/mm2
            [C16, 16, 370] | [true, 16, 370] | true | no word | a word
            """)
    void a_fault_in_a_standard(String old, String replacement, String found, String detail, String accepted) {
        assertOneFault(EN338, old, replacement, found, detail, accepted);
    }

    /** Columns: the provision's rule, what it names, and parts of what was found, of what is wrong, of what is accepted. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            limit: {quantity: use class, atLeast: "4"} | joist.bendign | 'joist.bendign' | no such provision of the edition | nearest is 'joist.bending'
            limit: {quantity: use class, atLeast: "4"} | post.preservative | 'post.preservative' | calculates nothing | with calculate
            limit: {quantity: use class, atLeast: "4"} | joist.bending | 'joist.bending' | looks at joists, 'post.treatment' at posts | same subjects
            calculate: {method: test.bending, values: [en338, en1995], with: {ksys: 1.05}} | joist.bending | a list of 1 | is a calculation itself | limit or lookUp
            """)
    void a_calculation_that_cannot_stand_in_for_a_provision(
            String rule, String named, String found, String detail, String accepted) {
        assertOneFault(EDITION, rule, "calculated: [" + named + "]\n    " + rule, found, detail, accepted);
    }

    @Test
    void a_flag_column_takes_flags_only() {
        List<RulesetFault> faults =
                GOOD.with(EN338, "{class: word,", "{class: flag,").faults();
        assertThat(faults).extracting(RulesetFault::found).contains("'C16'", "'C24'");
        assertThat(faults).extracting(RulesetFault::accepted).contains("true or false");
    }

    @Test
    void a_value_and_a_table_of_one_name_are_told() {
        RulesetFault fault =
                GOOD.with(EN1995, "  ksys: {", "  kmod: {").faults().get(0);
        assertThat(fault.file()).isEqualTo(EN1995);
        assertThat(fault.found()).isEqualTo("'kmod'");
        assertThat(fault.detail()).contains("name already");
    }

    @Test
    void a_misspelt_member_is_told_with_the_one_that_is_missing() {
        EditedFiles edited = GOOD.with(EDITION, "    advice: Raise the guard.", "    advise: Raise the guard.");
        List<RulesetFault> faults = edited.faults();
        assertThat(faults)
                .extracting(RulesetFault::line)
                .containsExactly(edited.lineOf(EDITION, "  - id: guard.height"), edited.lineOf(EDITION, "    advise:"));
        assertThat(faults.get(0).detail()).isEqualTo("'advice' is missing");
        assertThat(faults.get(1).detail()).isEqualTo("There is no such member here");
        assertThat(faults.get(1).accepted()).contains("nearest is 'advice'");
    }

    @Test
    void a_provision_has_either_a_limit_or_a_calculation() {
        RulesetFault fault = GOOD.with(EDITION, "    limit: {quantity: use class, atLeast: \"4\"}\n", "")
                .fault();
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "  - id: post.treatment"));
        assertThat(fault.accepted()).isEqualTo("exactly one of limit, lookUp and calculate");
    }

    @Test
    void a_limit_has_one_sense() {
        RulesetFault fault = GOOD.with(EDITION, "use class, atLeast: \"4\"}", "use class, atLeast: \"4\", is: \"4\"}")
                .fault();
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "    limit: {quantity: use class"));
        assertThat(fault.accepted()).isEqualTo("exactly one of atLeast, atMost, over, under, is and oneOf");
    }

    @Test
    void a_method_that_does_not_look_at_the_subject_is_told() {
        RulesetFault fault =
                GOOD.with(EDITION, "subjects: joists", "subjects: posts").fault();
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "    calculate:"));
        assertThat(fault.detail()).isEqualTo("This method does not look at posts");
        assertThat(fault.accepted()).isEqualTo("subjects: joists, beams");
    }

    @Test
    void a_parameter_that_nobody_gives_is_told_since_there_are_no_defaults() {
        RulesetFault fault =
                GOOD.with(EN1995, "  contactLength: {", "  contactLenght: {").fault();
        assertThat(fault.file()).isEqualTo(EDITION);
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "    calculate:"));
        assertThat(fault.detail()).isEqualTo("Parameter 'contactLength' of test.bending is not given");
        assertThat(fault.accepted()).contains("the nearest name there is 'contactLenght'");
    }

    @Test
    void a_standards_value_of_the_wrong_kind_is_told_where_it_stands() {
        RulesetFault fault = GOOD.with(EN1995, "value: 30 mm", "value: 30 kN").fault();
        assertThat(fault.file()).isEqualTo(EN1995);
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EN1995, "  contactLength:"));
        assertThat(fault.found()).isEqualTo("'30 kN'");
        assertThat(fault.accepted()).isEqualTo("a number in mm, m, km, in, ft, mi");
    }

    @Test
    void a_table_without_a_column_that_the_method_needs_is_told() {
        RulesetFault fault = GOOD.with(EN338, "fmk: N/mm2", "fmy: N/mm2").fault();
        assertThat(fault.file()).isEqualTo(EDITION);
        assertThat(fault.detail()).isEqualTo("Table 'strengthClasses' has no column 'fmk', which test.bending needs");
        assertThat(fault.accepted())
                .isEqualTo("a table with the columns class: word, fmk: N/mm2; the nearest column there is 'fmy'");
    }

    @Test
    void a_column_of_another_dimension_is_told() {
        RulesetFault fault = GOOD.with(EN338, "fmk: N/mm2", "fmk: kN").fault();
        assertThat(fault.file()).isEqualTo(EDITION);
        assertThat(fault.detail())
                .isEqualTo("Column 'fmk' of table 'strengthClasses' holds kN, which test.bending cannot use");
    }

    @Test
    void a_column_of_another_type_is_told() {
        RulesetFault fault = GOOD.with(EN1995, "duration: word", "duration: \"1\"")
                .with(EN1995, "permanent, 0.50", "1, 0.50")
                .with(EN1995, "medium-term, 0.65", "2, 0.65")
                .fault();
        assertThat(fault.detail())
                .isEqualTo("Column 'duration' of table 'kmod' holds 1, which test.bending cannot use");
    }

    @Test
    void a_table_in_place_of_a_value_and_a_value_in_place_of_a_table_are_told() {
        String table = "ksys:\n    clause: \"6.6\"\n    confirmed: {by: page, on: 2026-11-25}\n"
                + "    columns: {k: \"1\"}\n    rows: [[1.1]]\n  ";
        EditedFiles ksysIsATable = GOOD.with(
                        EN1995, "  ksys: {value: 1.1, clause: \"6.6\", confirmed: {by: memory, on: 2026-11-25}}\n", "")
                .with(EN1995, "tables:\n  ", "tables:\n  " + table)
                .with(EDITION, ", with: {ksys: 1.05}", "");
        assertThat(ksysIsATable.fault().detail())
                .isEqualTo("test.bending needs a single value 'ksys', the standard gives a table");
        EditedFiles kmodIsAValue =
                GOOD.with(EN1995, "  kmod:\n", "  kmodOld:\n").with(EN1995, "  ksys: {", "  kmod: {");
        assertThat(kmodIsAValue.fault().detail())
                .isEqualTo("test.bending needs a table 'kmod', the standard gives a single value");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            gammaM: {value: 1.35, | gammaM: {rows: [[1.35]], | The standard gives a single value here | {value, cite}
            gammaM: {value: 1.35, | gammaM: {value: 1.35 mm, | another kind of value | a number in %, 1
            gammaM: {value: 1.35, | gammaM: {value: high, | another kind of value | a number in %, 1
            gammaM: {value: 1.35, | serviceClass: {value: true, | another kind of value | a word or flag
            gammaM: {value: 1.35, | kmod: {value: 1.35, | The standard gives a table here | {rows, cite}
            gammaM: {value: 1.35, | kmod: {rows: [[1.35]], | The row has 1 cells for 3 columns | serviceClass, duration, kmod
            """)
    void what_a_region_sets_must_be_of_the_kind_that_the_standard_gives(
            String old, String replacement, String detail, String accepted) {
        EditedFiles edited = GOOD.with(EDITION, old, replacement);
        RulesetFault fault = edited.fault();
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "    gammaM:"));
        assertThat(fault.detail()).contains(detail);
        assertThat(fault.accepted()).contains(accepted);
    }

    @Test
    void a_standard_that_is_not_used_cannot_be_set() {
        RulesetFault fault =
                GOOD.with(EDITION, "sets:\n  en1995:", "sets:\n  en1990:").fault();
        assertThat(fault.detail()).isEqualTo("There is no such standard in uses");
        assertThat(fault.accepted()).isEqualTo("en338, en1995; the nearest is 'en1995'");
    }

    @Test
    void a_source_that_nothing_cites_is_told() {
        String unused = "  unused: {title: T, edition: E, publisher: P, standing: guidance}\n";
        RulesetFault fault =
                GOOD.with(EDITION, "cautions:\n", unused + "cautions:\n").fault();
        assertThat(fault.found()).isEqualTo("'unused'");
        assertThat(fault.detail()).isEqualTo("Nothing cites this source");
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "cautions:"));
    }

    @Test
    void a_standard_that_nothing_uses_is_told() {
        RulesetFault fault = GOOD.with(
                        EDITION,
                        "  en338: standards/en338-2016.yaml\n",
                        "  en338: standards/en338-2016.yaml\n  again: standards/en338-2016.yaml\n")
                .fault();
        assertThat(fault.found()).isEqualTo("'again'");
        assertThat(fault.detail()).isEqualTo("Nothing uses this standard");
    }

    @Test
    void a_source_and_a_standard_of_one_name_are_told() {
        RulesetFault fault = GOOD.with(
                        EDITION,
                        "sources:\n",
                        "sources:\n  en338: {title: T, edition: E, publisher: P, standing: guidance}\n")
                .fault();
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "  en338: "));
        assertThat(fault.detail()).isEqualTo("A source has this name already");
    }

    @Test
    void a_row_below_one_that_always_holds_is_told() {
        EditedFiles edited = GOOD.with(
                EDITION, "        - {value: 1200 mm}\n", "        - {value: 1200 mm}\n        - {value: 1300 mm}\n");
        RulesetFault fault = edited.fault();
        assertThat(fault.line()).isEqualTo(edited.lineOf(EDITION, "        - {value: 1300 mm}"));
        assertThat(fault.detail()).contains("never reached");
    }

    @Test
    void an_edition_stands_where_its_region_and_name_say() {
        RulesetFault fault =
                GOOD.with(EDITION, "region: testland", "region: wonderland").fault();
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "edition: "));
        assertThat(fault.accepted()).isEqualTo("the file as wonderland/2024.yaml");
    }

    @Test
    void a_name_that_is_not_well_formed_is_told() {
        RulesetFault fault =
                GOOD.with(EDITION, "  habit: {", "  the habit: {").faults().get(0);
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "  habit: {"));
        assertThat(fault.found()).isEqualTo("'the habit'");
        assertThat(fault.detail()).isEqualTo("This name has not the right form");
        assertThat(fault.accepted()).contains("letters, digits and hyphens that starts with a letter");
    }

    @Test
    void a_part_missing_deep_inside_is_told() {
        RulesetFault fault = GOOD.with(
                        EDITION,
                        ", publisher: Testland, standing: statutory guidance}",
                        ", standing: statutory guidance}")
                .fault();
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(EDITION, "  guarding: {"));
        assertThat(fault.detail()).isEqualTo("'publisher' is missing");
    }

    @Test
    void a_file_in_no_place_is_told() {
        RulesetFault fault = GOOD.with("testland/old/2024.yaml", "a: b").fault();
        assertThat(fault.file()).isEqualTo("testland/old/2024.yaml");
        assertThat(fault.accepted()).contains("<region>/<edition>.yaml");
    }

    @Test
    void faults_of_all_files_are_told_at_once_in_order() {
        List<RulesetFault> faults = GOOD.with(EDITION, "over: 600 mm", "over: 600 N")
                .with(EDITION, "concern: treatment", "concern: rot")
                .with(EDITION, "method: test.bending", "method: bending")
                .with(EN338, "[C16, 16, 370]", "[C16, 16]")
                .with(EN1995, "standing: standard", "standing: law")
                .faults();
        assertThat(faults).extracting(RulesetFault::file).containsExactly(EN1995, EN338, EDITION, EDITION, EDITION);
        assertThat(faults).isSorted();
        assertThat(faults.get(3).found()).isEqualTo("'rot'");
    }

    @Test
    void a_standard_with_faults_causes_no_others_in_editions() {
        assertThat(GOOD.with(EN338, "[C16, 16, 370]", "[C16, 16]").faults()).hasSize(1);
    }

    @Test
    void a_fault_reads_as_one_line() {
        assertThat(GOOD.with(EDITION, "obligation: shall", "obligation: must")
                        .fault()
                        .message())
                .isEqualTo("testland/2024.yaml:" + GOOD.lineOf(EDITION, "    obligation: shall")
                        + ": This has not the right form. Found: 'must'. " + "Accepted: shall, should, may");
    }
}
