package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Word;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.ValueType;
import org.json.JSONObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Look-ups and their tables in CSV files (RFC 4180): what they resolve to, and each way to get them wrong. */
class LookUpTablesTest {

    private static final EditedFiles GOOD = EditedFiles.tables();
    private static final String EDITION = "testland/2024.yaml";
    private static final String STANDARD = "standards/handbook.yaml";
    private static final String JOISTS = "testland/tables/joists.csv";
    private static final String BEAMS = "testland/tables/beams.csv";
    private static final String FOOTINGS = "testland/tables/footings.csv";

    private static Rule.LookUp lookUp(EditedFiles files, int provision) {
        return (Rule.LookUp) files.edition().provisions().get(provision).rule();
    }

    private static Measure inches(double value) {
        return Measure.of(value, MeasureUnit.INCH);
    }

    @Test
    void a_look_up_says_what_the_file_says() {
        Rule.LookUp joists = lookUp(GOOD, 0);
        assertThat(joists.quantity()).isEqualTo("joist span");
        assertThat(joists.sense()).isEqualTo(Sense.AT_MOST);
        assertThat(joists.column()).isEqualTo("span");
        assertThat(joists.table().reference()).isEqualTo("handbook.joists");
        assertThat(joists.table().source()).isEqualTo("Handbook 7, Table 3");
        assertThat(joists.interpolation()).isEmpty();
        assertThat(joists.keys()).extracting(TableKey::column).containsExactly("group", "size", "spacing");
        assertThat(joists.keys().get(1)).isInstanceOfSatisfying(TableKey.Translated.class, size -> {
            assertThat(size.table().reference()).isEqualTo("handbook.sizes");
            assertThat(size.by())
                    .extracting(TableKey.Direct::column, TableKey.Direct::quantity, TableKey.Direct::match)
                    .containsExactly(
                            tuple("breadth", "section breadth", TableKey.Match.NONE),
                            tuple("depth", "section depth", TableKey.Match.NONE));
        });
        assertThat(joists.keys().get(2))
                .isEqualTo(new TableKey.Direct(
                        "spacing",
                        "joist spacing",
                        TableKey.Match.UP,
                        Optional.of(inches(0)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    @Test
    void a_direction_an_end_and_what_is_taken_for_the_unstated_are_kept() {
        assertThat(lookUp(GOOD, 2).sense()).isEqualTo(Sense.AT_LEAST);
        assertThat(lookUp(GOOD, 2).keys().get(1))
                .isEqualTo(new TableKey.Direct(
                        "soil",
                        "bearing resistance",
                        TableKey.Match.DOWN,
                        Optional.empty(),
                        Optional.of(Measure.of(1500, MeasureUnit.POUND_FORCE_PER_SQUARE_FOOT)),
                        Optional.empty(),
                        Optional.empty()));
        assertThat(lookUp(GOOD, 1).interpolation())
                .contains(new Rule.Interpolation("joistSpan", "Table 4, note", Optional.of(inches(1))));
    }

    @Test
    void values_across_the_page_become_a_column_and_feet_and_inches_become_inches() {
        LookUpTable joists = lookUp(GOOD, 0).table();
        assertThat(joists.columns().get("span"))
                .isEqualTo(new LookUpTable.Column(ValueType.NUMBER, Optional.of(MeasureUnit.INCH)));
        assertThat(joists.rows()).hasSize(9);
        assertThat(joists.rows().get(1))
                .isEqualTo(new LookUpTable.Row(
                        Map.of(
                                "group",
                                new Word("A"),
                                "size",
                                new Word("2x6"),
                                "spacing",
                                inches(16),
                                "span",
                                inches(9 * 12)),
                        Optional.of(Confirmation.PAGE)));
        assertThat(joists.rows().get(0).cells()).containsEntry("span", inches(9 * 12 + 11));
    }

    private static EditedFiles labelled(String labels) {
        String columns = "    columns: {species: word, group: word}\n";
        return GOOD.with(STANDARD, columns, columns + "    labels: " + labels + "\n");
    }

    @Test
    void columns_and_words_are_read_by_their_labels() {
        TableKey.Translated group = (TableKey.Translated)
                lookUp(labelled("{group: species group, A: oak}"), 0).keys().get(0);
        TableLabels labels = group.table().labels();
        assertThat(labels.column("group")).isEqualTo("species group");
        assertThat(labels.cell(new Word("A"))).isEqualTo("oak");
        assertThat(labels.cell(new Word("B"))).isEqualTo("B");
    }

    @Test
    void without_a_label_a_column_is_read_as_its_name() {
        assertThat(lookUp(GOOD, 1).table().labels().column("joistSpan")).isEqualTo("joist span");
        assertThat(TableLabels.NONE.cell(LookUpTable.NOT_PERMITTED)).isEqualTo("not permitted");
    }

    @Test
    void a_label_of_nothing_in_the_table_is_told() {
        RulesetFault fault = labelled("{groop: species group}").fault();
        assertThat(fault.found()).isEqualTo("'groop'");
        assertThat(fault.accepted()).contains("group");
    }

    @Test
    void an_empty_cell_is_a_hole_and_not_permitted_is_none() {
        List<LookUpTable.Row> rows = lookUp(GOOD, 0).table().rows();
        assertThat(rows.get(5).cells()).containsEntry("spacing", inches(24)).doesNotContainKey("span");
        assertThat(rows.get(7).cells()).containsEntry("span", LookUpTable.NOT_PERMITTED);
    }

    @Test
    void a_row_may_be_confirmed_otherwise_than_its_table() {
        LookUpTable joists = lookUp(GOOD, 0).table();
        assertThat(joists.rows())
                .extracting(joists::confirmedBy)
                .containsOnly(Confirmation.PAGE, Confirmation.SECONDARY_PAGE, Confirmation.MEMORY);
        assertThat(joists.confirmedBy(joists.rows().get(3))).isEqualTo(Confirmation.SECONDARY_PAGE);
        assertThat(joists.confirmedBy(joists.rows().get(6))).isEqualTo(Confirmation.MEMORY);
    }

    @Test
    void a_row_of_a_document_is_not_confirmed_by_practice() {
        RulesetFault fault = GOOD.with(JOISTS, "memory", "practice").faults().get(0);
        assertThat(fault.file()).isEqualTo(JOISTS);
        assertThat(fault.detail()).contains("'handbook' is no common practice");
        assertThat(fault.line()).isEqualTo(GOOD.lineOf(JOISTS, "memory"));
    }

    @Test
    void columns_of_a_csv_file_stand_in_any_order() {
        assertThat(lookUp(GOOD, 2).table().rows().get(0).cells())
                .containsExactly(
                        Map.entry("frost", new Flag(false)),
                        Map.entry("soil", Measure.of(1500, MeasureUnit.POUND_FORCE_PER_SQUARE_FOOT)),
                        Map.entry("side", inches(18)));
    }

    @Test
    void the_canonical_form_holds_keys_directions_rounding_rows_and_confirmations() {
        JSONObject json = new JSONObject(GOOD.edition().canonical());
        assertThat(json.query("/provisions/0/lookUp/table")).isEqualTo("handbook.joists");
        assertThat(json.query("/provisions/0/lookUp/atMost")).isEqualTo("span");
        assertThat(json.query("/provisions/0/lookUp/keys/group/from")).isEqualTo("handbook.groups");
        assertThat(json.query("/provisions/0/lookUp/keys/size/by/depth")).isEqualTo("section depth");
        assertThat(json.query("/provisions/0/lookUp/keys/spacing/conservative")).isEqualTo("up");
        assertThat(json.query("/provisions/0/lookUp/keys/spacing/least/unit")).isEqualTo("in");
        assertThat(json.query("/provisions/1/lookUp/keys/plies/conservative")).isEqualTo("none");
        assertThat(json.query("/provisions/1/lookUp/interpolate/key")).isEqualTo("joistSpan");
        assertThat(json.query("/provisions/1/lookUp/interpolate/clause")).isEqualTo("Table 4, note");
        assertThat(json.query("/provisions/1/lookUp/round/value").toString()).isEqualTo("1");
        assertThat(json.query("/provisions/2/lookUp/keys/soil/unstated/value").toString())
                .isEqualTo("1500");
        assertThat(json.query("/standards/handbook/joists/columns/span")).isEqualTo("in");
        assertThat(json.query("/standards/handbook/joists/rows/0/span").toString())
                .isEqualTo("119");
        assertThat(json.query("/standards/handbook/joists/rows/7/span")).isEqualTo("NP");
        assertThat(json.query("/standards/handbook/joists/rows/7/confirmed")).isEqualTo("memory");
        assertThat(json.query("/standards/handbook/joists/cite/clause")).isEqualTo("Table 3");
        assertThat(json.query("/standards/handbook/groups/rows/1/group")).isEqualTo("B");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            J | 9-11 | 9-10
            J | NP | 9-0
            J | memory | page
            J | 12,16,24 | 12,16,20
            E | conservative: up, least: 0 | conservative: down, least: 0
            E | least: 0 | least: 1 in
            E | round: 1 in | round: 2 in
            E | Table 4, note | Table 4, note a
            E | 1500 psf | 2000 psf
            E | {breadth: 4 in} | {breadth: 3.5 in}
            S | [willow, C] | [willow, A]
            S | clause: Table 3 | clause: Table 3.1
            """)
    void the_digest_changes_with_what_a_look_up_says(String file, String old, String replacement) {
        EditedFiles edited = GOOD.with(file(file), old, replacement);
        assertThat(edited.edition().digest()).isNotEqualTo(GOOD.edition().digest());
    }

    @Test
    void the_digest_of_a_standard_covers_its_csv_files_but_not_their_quotes() {
        String digest = GOOD.edition().basedOn().get(0).digest();
        assertThat(GOOD.with(JOISTS, "9-11", "9-10").edition().basedOn().get(0).digest())
                .isNotEqualTo(digest);
        EditedFiles quoted = GOOD.with(JOISTS, "A,2x6", "\"A\",2x6").with(JOISTS, "\nB", "\n\nB");
        assertThat(quoted.edition().basedOn().get(0).digest()).isEqualTo(digest);
        assertThat(quoted.edition().digest()).isEqualTo(GOOD.edition().digest());
    }

    private static String file(String letter) {
        return switch (letter) {
            case "E" -> EDITION;
            case "S" -> STANDARD;
            case "J" -> JOISTS;
            case "B" -> BEAMS;
            default -> FOOTINGS;
        };
    }

    /** Columns: file, text, what replaces it, and parts of what was found, of what is wrong and of what would be accepted. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # The look-up
            E | table: handbook.joists | table: handbok.joists | 'handbok' | no such standard in uses | nearest is 'handbook'
            E | table: handbook.beams | table: handbook.beam | 'beam' | no such table in this standard's file | nearest is 'beams'
            E | table: handbook.beams | table: handbook.ratio | 'handbook.ratio' | single value | the name of a table
            E | quantity: beam span | quantity: beam spam | 'beam spam' | no such quantity | nearest is 'beam span'
            E | quantity: beam span | quantity: species | 'span' | 'species' is no number | that is a number
            E | quantity: beam span | quantity: plies | 'plies' | holds in, the quantity is a number in 1 | what the column holds
            E | atLeast: side | atLeast: sid | 'sid' | no such column in handbook.footings | nearest is 'side'
            # Keys
            E | plies: {quantity: plies} | ply: {quantity: plies} | 'ply' | no such key column in handbook.beams | plies, joistSpan
            E | smallerUpTo: {breadth: 4 in} | smallerUpTo: {breath: 4 in} | 'breath' | no such column of numbers in by | breadth, depth
            E | smallerUpTo: {breadth: 4 in} | smallerUpTo: {breadth: 4 psf} | '4 psf' | measures something else | a number in
            E | {from: handbook.groups, by: {species: species}} | {from: handbook.group, by: {species: species}} | 'group' | no such table in this standard's file | nearest is 'groups'
            E | {from: handbook.groups, by: {species: species}} | {from: handbook.groups, by: {specie: species}} | 'specie' | no such column in handbook.groups | nearest is 'species'
            E | {from: handbook.groups, by: {species: species}} | {from: handbook.sizes, by: {breadth: section breadth}} | 'group' | no such column in handbook.sizes | size, breadth, depth
            E | {from: handbook.groups, by: {species: species}} | {from: handbook.groups, by: {species: section depth}} | 'section depth' | holds word, the quantity is a number in mm | what the column holds
            E | depth: section depth} | depth: bearing resistance} | 'bearing resistance' | holds in, the quantity is a number in kN/m2 | what the column holds
            E | {quantity: joist spacing, conservative: up, least: 0} | {quantity: joist spacing} | a map of quantity | which row counts between two rows | up, down, or none
            E | conservative: up, least: 0 | conservative: along | 'along' | right form | up, down, none
            E | least: 0 | least: 2 psf | '2 psf' | measures something else | a number in mm
            E | unstated: 1500 psf | unstated: 1500 mm | '1500 mm' | measures something else | a number in
            E | unstated: 1500 psf | unstatd: 1500 psf | 'unstatd' | no such member | nearest is 'unstated'
            E | frost: {quantity: frost} | frost: {quantity: frost, conservative: up} | 'up' | Only a key that is a number | the quantity alone
            E | frost: {quantity: frost} | frost: {quantity: species} | 'species' | holds flag, the quantity is a word | what the column holds
            # Interpolation and rounding
            E | interpolate: {key: joistSpan, | interpolate: {key: joistSpam, | 'joistSpam' | no such key that is a number | nearest is 'joistSpan'
            E | {key: joistSpan, clause: "Table 4, note"} | {key: joistSpan} | a map of key | 'clause' is missing | clause that permits it
            E | round: 1 in | round: 1 psf | '1 psf' | measures something else | a number in mm
            E | round: 1 in | round: 0 in | '0 in' | Nothing is rounded to this | above 0
            # Tables
            S | csv: testland/tables/beams.csv | csv: testland/tables/beam.csv | 'testland/tables/beam.csv' | no such file of a table | nearest is 'testland/tables/beams.csv'
            S | across: joistSpan | across: span | 'span' | no such column before the last | plies, joistSpan
            S | csv: testland/tables/footings.csv | csv: tables/footings.csv | 'tables/footings.csv' | right form | such as us-irc/tables/joists.csv
            S | `    csv: testland/tables/footings.csv` | `    across: soil` | a map of clause | right form | exactly one of rows and csv
            S | columns: {frost: flag | columns: {confirmed: flag | 'flag' | tells how a row was confirmed | another name
            S | [2x8, 1.5, 7.25] | [2x8, 1.5, 5.5] | a list of 3 | Line 19 has a row with the same breadth, depth already | each row once
            # Words that cannot be
            S | [oak, A] | [oka, A] | 'oka' | has a word that 'species' can never be | nearest is 'oak'
            J | B,2x6 | Bb,2x6 | 'Bb' | has a word that handbook.groups never gives | nearest is 'B'
            # Cells
            J | 9-11 | 9-12 | '9-12' | no number of feet and inches | such as 9-11
            J | 9-11 | 119 | 119 | no number of feet and inches | such as 9-11
            J | NP | np | 'np' | no number of feet and inches | such as 9-11
            J | 12,16,24 | 12,16 in,24 | '16 in' | no number | a plain number in in
            J | memory | memry | 'memry' | no such way to confirm a row | nearest is 'memory'
            J | A,2x8 | ,2x8 | '' | The cell is empty | a value
            J | 6-8,memory | 6-8 | a list of 5 | 5 cells under a header of 6 | a cell for each
            J | size,12 | siz,12 | 'group' | lacks the column 'size' | group, size
            J | 12,16,24 | 12,16,16 | 16 | has this twice | it once
            F | soil,frost,side | soil,frost,sid | 'sid' | no such column in this table | nearest is 'side'
            F | 1500,true,20 | 1500,false,20 | a list of 3 | Line 2 has a row with the same frost, soil already | each row once
            F | 1500,true | 1500,yes | 'yes' | neither yes nor no | true or false
            F | 1500,true,20 | NP,true,20 | 'NP' | no number | a plain number in psf
            F | 1500,true,20 | 1500,"true,20 | soil | not CSV | double quotes
            """)
    void a_fault_in_a_look_up_or_its_table(
            String file, String old, String replacement, String found, String detail, String accepted) {
        List<RulesetFault> faults = GOOD.with(file(file), old, replacement).faults();
        assertThat(faults).anySatisfy(fault -> {
            assertThat(fault.found()).contains(found);
            assertThat(fault.detail()).contains(detail);
            assertThat(fault.accepted()).contains(accepted);
        });
    }

    @Test
    void a_fault_is_told_with_its_file_and_line() {
        RulesetFault cell = GOOD.with(JOISTS, "6-8", "6.8").fault();
        assertThat(cell.file()).isEqualTo(JOISTS);
        assertThat(cell.line()).isEqualTo(4);
        RulesetFault twice =
                GOOD.with(FOOTINGS, "1500,true,20", "2000,false,20").fault();
        assertThat(twice.file()).isEqualTo(FOOTINGS);
        assertThat(twice.line()).isEqualTo(5);
        EditedFiles without = GOOD.with(EDITION, "        frost: {quantity: frost}\n", "");
        assertThat(without.fault().line()).isEqualTo(without.lineOf(EDITION, "      keys:\n        soil"));
        assertThat(without.fault().detail()).isEqualTo("The column 'frost' of handbook.footings has no key");
        assertThat(without.fault().file()).isEqualTo(EDITION);
    }

    @Test
    void a_rounding_without_interpolation_is_told() {
        assertThat(GOOD.with(EDITION, "      interpolate: {key: joistSpan, clause: \"Table 4, note\"}\n", "")
                        .fault()
                        .detail())
                .isEqualTo("Only an interpolated value is rounded");
    }

    @Test
    void a_table_that_no_standard_has_and_one_that_nothing_uses_are_told() {
        RulesetFault stray =
                GOOD.with("testland/tables/stray.csv", "a,b\n1,2\n").fault();
        assertThat(stray.file()).isEqualTo("testland/tables/stray.csv");
        assertThat(stray.detail()).isEqualTo("No standard has this table");
        RulesetFault unused = GOOD.with(EDITION, "table: handbook.beams", "table: handbook.otherBeams")
                .with(
                        STANDARD,
                        "tables:\n",
                        "tables:\n  otherBeams: {clause: Table 6, confirmed: {by: page, on: 2026-11-25},"
                                + " columns: {plies: \"1\", joistSpan: ft, span: ft-in}, rows: [[1, 6, 9-0]]}\n")
                .fault();
        assertThat(unused.file()).isEqualTo(STANDARD);
        assertThat(unused.found()).isEqualTo("'beams'");
        assertThat(unused.detail()).isEqualTo("Nothing uses this table");
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
            ``, nothing
            `a,b`, a header
            `\n\n`, nothing
            """)
    void a_table_without_rows_is_told(String text, String found) {
        RulesetFault fault = GOOD.with(BEAMS, text.replace("\\n", "\n")).fault();
        assertThat(fault.detail()).isEqualTo("The table has no rows");
        assertThat(fault.found()).isEqualTo(found);
    }

    @Test
    void a_table_in_another_place_is_told() {
        assertThat(GOOD.with("testland/stray.csv", "a,b\n1,2\n").fault().detail())
                .isEqualTo("This is no place for a ruleset's file");
    }

    @Test
    void a_provision_has_one_rule() {
        String limit = "    limit: {quantity: joist span, atMost: 3 m}\n    lookUp:\n";
        assertThat(GOOD.with(EDITION, "    lookUp:\n", limit).fault().accepted())
                .isEqualTo("exactly one of limit, lookUp and calculate");
    }
}
