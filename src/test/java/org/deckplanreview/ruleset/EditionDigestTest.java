package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;
import static org.deckplanreview.ruleset.EditedFiles.EN1995;
import static org.deckplanreview.ruleset.EditedFiles.EN338;

import org.deckplanreview.provenance.CanonicalJson;
import org.deckplanreview.provenance.Digest;
import org.json.JSONObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The digest changes with what an edition says and stays with how the files are laid out. */
class EditionDigestTest {

    private static final EditedFiles GOOD = EditedFiles.good();
    private static final String DIGEST = GOOD.edition().digest();

    @Test
    void the_digest_is_taken_over_the_canonical_form() {
        Edition edition = GOOD.edition();
        assertThat(edition.canonical()).isEqualTo(CanonicalJson.of(edition.canonical()));
        assertThat(edition.digest()).isEqualTo(Digest.sha256(edition.canonical()));
    }

    @Test
    void the_canonical_form_holds_what_the_edition_resolves_to() {
        JSONObject json = new JSONObject(GOOD.edition().canonical());
        assertThat(json.getString("region")).isEqualTo("testland");
        assertThat(json.query("/inForce/from")).isEqualTo("2024-10-01");
        assertThat(json.query("/provisions/0/id")).isEqualTo("guard.height");
        assertThat(json.query("/provisions/0/when/drop/over/value").toString()).isEqualTo("600");
        assertThat(json.query("/provisions/0/limit/atLeast/1/values/0/unit")).isEqualTo("mm");
        assertThat(json.query("/provisions/3/calculate/parameters/gammaM/from")).isEqualTo("en1995");
        assertThat(json.query("/provisions/3/calculate/parameters/ksys/value/value")
                        .toString())
                .isEqualTo("1.05");
        assertThat(json.query("/standards/en1995/gammaM/value/value").toString())
                .isEqualTo("1.35");
        assertThat(json.query("/standards/en1995/gammaM/cite/source")).isEqualTo("na1995");
        assertThat(json.query("/standards/en1995/gammaM/replaces/value/value").toString())
                .isEqualTo("1.3");
        assertThat(json.query("/standards/en338/strengthClasses/rows/1/fmk").toString())
                .isEqualTo("24");
        assertThat(json.query("/standards/en338/strengthClasses/columns/fmk")).isEqualTo("N/mm2");
        assertThat(((JSONObject) json.query("/standards/en1995")).has("ksys"))
                .as("the provision gives ksys itself")
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            E | value: 1100 mm | value: 1101 mm
            E | over: 600 mm | atLeast: 600 mm
            E | atMost: 600 mm | atMost: 601 mm
            E | [single-dwelling, public] | [public]
            E | clause: Diagram 3.1 | clause: Diagram 3.2
            E | {by: page, on: 2026-11-25} | {by: memory, on: 2026-11-25}
            E | on: 2026-11-25 | on: 2026-11-26
            E | advice: Raise the guard. | advice: Raise the guard!
            E | caution: A low guard | caution: A lower guard
            E | referral: Ask a surveyor | referral: Ask an engineer
            E | title: Height of a guard | title: Heights of a guard
            E | title: Guarding of drops | title: Guarding of falls
            E | obligation: should | obligation: may
            E | from: 2024-10-01 | from: 2024-10-02
            E | {from: 2024-10-01} | {from: 2024-10-01, until: 2030-01-01}
            E | uniform: 1.5 kN/m2 | uniform: 1.6 kN/m2
            E | reason: A low deck | reason: One low deck
            E | category: A | category: B
            E | {value: 0.5, | {value: 0.6,
            E | {value: 1.35, | {value: 1.36,
            E | ksys: 1.05 | ksys: 1.06
            E | cut ends treated: true | cut ends treated: false
            E | - Cut ends take up water. | - Cut ends take up rain.
            E | [An invented region.] | [An invented region, too.]
            E | regionTitle: Testland | regionTitle: Testia
            S | {value: 1.3, | {value: 1.25,
            S | ["3", permanent, 0.50] | ["3", permanent, 0.51]
            S | clause: Table 3.1 | clause: Table 3.2
            S | edition: "EN 1995-1-1:2004+A1:2008+A2:2014" | edition: "EN 1995-1-1:2025"
            M | [C24, 24, 420] | [C24, 24, 421]
            M | fmk: N/mm2 | fmk: kN/m2
            """)
    void it_changes_with_any_value_citation_or_word(String file, String old, String replacement) {
        String path =
                switch (file) {
                    case "E" -> EDITION;
                    case "S" -> EN1995;
                    default -> EN338;
                };
        assertThat(GOOD.with(path, old, replacement).edition().digest()).isNotEqualTo(DIGEST);
    }

    @Test
    void it_changes_with_what_calculates_in_a_provisions_place() {
        Edition calculated = GOOD.withUseOfJoists("calculated: [joist.bending]").edition();
        assertThat(new JSONObject(calculated.canonical()).query("/provisions/4/calculated/0"))
                .isEqualTo("joist.bending");
        assertThat(calculated.digest())
                .isNotEqualTo(GOOD.withUseOfJoists().edition().digest());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            E | region: testland | # A comment.\\n\\n\\nregion: testland
            E | {quantity: use class, atLeast: "4"} | {atLeast: "4", quantity: use class}
            E | title: Height of a guard | title: "Height of a guard"
            E | ksys: 1.05 | ksys: 1.050
            E | {occupancy: [single-dwelling], largest drop: {atMost: 600 mm}} | {largest drop: {atMost: 600 mm}, occupancy: [single-dwelling]}
            S | {value: 1.3, clause: Table 2.3, | {clause: Table 2.3, value: 1.30,
            S | # Comments are no part of the data. | # Another comment.
            M | [C16, 16, 370] | [C16, 16.0, 370]\\n      # C18 is not used here.
            """)
    void it_stays_with_comments_blank_lines_order_of_members_and_ways_to_write(
            String file, String old, String replacement) {
        String path =
                switch (file) {
                    case "E" -> EDITION;
                    case "S" -> EN1995;
                    default -> EN338;
                };
        Edition edition = GOOD.with(path, old, replacement.replace("\\n", "\n")).edition();
        assertThat(edition.digest()).isEqualTo(DIGEST);
        assertThat(edition.basedOn()).isEqualTo(GOOD.edition().basedOn());
    }

    @Test
    void it_stays_with_the_order_of_sources_and_standards() {
        String en338 = "  en338: standards/en338-2016.yaml\n";
        Edition edition = GOOD.with(EDITION, en338, "")
                .with(EDITION, "sets:\n", en338 + "sets:\n")
                .edition();
        assertThat(edition.digest()).isEqualTo(DIGEST);
    }

    @Test
    void a_value_that_the_edition_does_not_use_changes_the_standards_digest_only() {
        Edition edition = GOOD.with(EN1995, "{value: 1.1, clause: \"6.6\"", "{value: 1.2, clause: \"6.6\"")
                .edition();
        assertThat(edition.digest()).isEqualTo(DIGEST);
        assertThat(edition.basedOn().get(0)).isEqualTo(GOOD.edition().basedOn().get(0));
        assertThat(edition.basedOn().get(1).digest())
                .isNotEqualTo(GOOD.edition().basedOn().get(1).digest());
    }

    @Test
    void a_released_edition_may_not_change() {
        EditedFiles released = GOOD.with("released.txt", "\ntestland 2024 " + DIGEST + "\n");
        assertThat(released.edition().digest()).isEqualTo(DIGEST);
        RulesetFault fault =
                released.with(EDITION, "value: 1100 mm", "value: 1000 mm").fault();
        assertThat(fault.file()).isEqualTo("released.txt");
        assertThat(fault.line()).isEqualTo(2);
        assertThat(fault.detail()).isEqualTo("The released edition testland 2024 has changed");
        assertThat(fault.found()).startsWith("sha256:").isNotEqualTo(DIGEST);
        assertThat(fault.accepted()).startsWith(DIGEST);
    }

    @Test
    void a_released_edition_may_not_vanish() {
        RulesetFault fault =
                GOOD.with("released.txt", "testland 2023 " + DIGEST).fault();
        assertThat(fault.found()).isEqualTo("'testland/2023.yaml'");
        assertThat(fault.detail()).isEqualTo("A released edition is not there");
    }

    @Test
    void the_register_of_released_editions_is_read_strictly() {
        assertThat(GOOD.with("released.txt", "testland 2024").fault().detail())
                .isEqualTo("This line is not understood");
        assertThat(GOOD.with("released.txt", "testland 2024 sha256:abc").fault().found())
                .isEqualTo("'testland 2024 sha256:abc'");
        String line = "testland 2024 " + DIGEST + "\n";
        assertThat(GOOD.with("released.txt", line + line).fault().detail())
                .isEqualTo("Line 1 has this edition already");
    }
}
