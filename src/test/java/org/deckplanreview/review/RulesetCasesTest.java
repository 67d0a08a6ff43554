package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rulesets that come with the service against their own cases, and what is told of rulesets and cases that are wrong. */
class RulesetCasesTest {

    private static final Path RULESETS = Path.of("rulesets");
    private static final String CASES = "testland/cases/2024/fall.yaml";

    /** Two cases of one provision, on lines 2 and 7. */
    private static final String GOOD = """
            cases:
              - name: a fall of 1 in 80 complies
                provision: fall.gradient
                base: small-level-deck.json
                expect: {subject: /platforms/0, determination: complies, found: "0.0125", allowed: "0.0125"}
                source: common practice
              - name: a fall of 1 in 81 does not comply
                provision: fall.gradient
                base: small-level-deck.json
                patch: [{op: replace, path: /platforms/0/fall/gradient, value: "1:81"}]
                expect: {subject: /platforms/0, determination: does not comply}
                source: common practice
            """;

    private static final String EDITION = """
            region: testland
            regionTitle: Testland
            edition: "2024"
            title: Provisions of an invented region
            inForce: {from: 2024-10-01}
            uses:
              gravity: standards/iso80000-3.yaml
              elastic: standards/elastic-beams.yaml
              en338: standards/en338-2016.yaml
              en1991: standards/en1991-1-1-2002.yaml
              naLoads: standards/na-en1991-1-1-2005.yaml
              onEdges: standards/stairs-and-guards.yaml
            sources:
              practice: {title: Common practice, edition: "", publisher: "", standing: common practice}
            cautions: []
            referrals: []
            notes: []
            loads:
              imposed:
                - uniform: 2.5 kN/m2
                  concentrated: 2 kN
                  category: A
                  reason: Any deck.
                  cite: {source: practice, confirmed: {by: practice, on: 2026-11-25}}
              values: [gravity, elastic, en338, en1991, naLoads, onEdges]
              with:
                concentratedShareOnJoist: {value: 0.5, cite: {source: practice, confirmed: {by: practice, on: 2026-11-25}}}
            provisions:
            """;

    private static final String FALL = """
              - id: fall.gradient
                title: Fall of the frame
                concern: fall
                obligation: should
                cite: {source: practice, confirmed: {by: practice, on: 2026-11-25}}
                subjects: platforms
                limit: {quantity: fall gradient, atLeast: 0.0125}
                advice: Give the frame a fall.
            """;

    private final RulesetChecker checker = new RulesetCheck(BuiltIn.CATALOGUE, Optional.empty());

    @TempDir
    Path folder;

    private Path rulesets;

    /** An edition of one provision, on the standards that come with the service. */
    @BeforeEach
    void write() throws IOException {
        rulesets = folder.resolve("rulesets");
        for (String standard : List.of(
                "iso80000-3",
                "elastic-beams",
                "en338-2016",
                "en1991-1-1-2002",
                "na-en1991-1-1-2005",
                "stairs-and-guards")) {
            String path = "standards/" + standard + ".yaml";
            write(path, text(RULESETS.resolve(path)));
        }
        write("testland/2024.yaml", EDITION + FALL);
        write(CASES, GOOD);
    }

    private void write(String path, String text) throws IOException {
        Path file = rulesets.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private List<String> check(Optional<Path> directory, Optional<Path> added) {
        return checked(directory, added, Optional.empty()).faults();
    }

    private RulesetChecker.Checked checked(Optional<Path> directory, Optional<Path> added, Optional<String> only) {
        return checker.check(new RulesetChecker.Asked(directory, added, only), (cases, all) -> {});
    }

    private static String text(Path file) {
        return new String(BuiltIn.read(file), StandardCharsets.UTF_8);
    }

    private List<String> faults() {
        return check(Optional.of(rulesets), Optional.empty());
    }

    private List<String> faultsWith(String old, String replacement) throws IOException {
        assertThat(GOOD).contains(old);
        write(CASES, GOOD.replace(old, replacement));
        return faults();
    }

    @Test
    void the_rulesets_that_come_with_the_service_and_all_their_cases_are_faultless() {
        assertThat(check(Optional.empty(), Optional.empty())).isEmpty();
    }

    @Test
    void the_directory_of_rulesets_is_what_comes_with_the_service() {
        assertThat(check(Optional.of(RULESETS), Optional.empty())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"fall.gradient, 2", "testland, 2", CASES + ", 2"})
    void the_cases_of_one_provision_region_or_file_can_be_run_alone(String only, int cases) throws IOException {
        RulesetChecker.Checked checked = checked(Optional.of(rulesets), Optional.empty(), Optional.of(only));
        assertThat(checked).isEqualTo(new RulesetChecker.Checked(List.of(), 1, cases));
    }

    @Test
    void cases_that_are_not_selected_are_not_run() throws IOException {
        write(
                "testland/cases/2024/fault.yaml",
                GOOD.replace("name: a fall", "name: another fall").replace("found: \"0.0125\"", "found: \"0.5\""));
        assertThat(checked(Optional.of(rulesets), Optional.empty(), Optional.of(CASES))
                        .faults())
                .isEmpty();
        assertThat(faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault).contains("expected found '0.5'"));
    }

    @Test
    void a_selection_without_a_case_is_told_with_the_nearest_one() {
        assertThat(checked(Optional.of(rulesets), Optional.empty(), Optional.of("fall.gradeint"))
                        .faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault).contains("Did you mean 'fall.gradient'?"));
    }

    @Test
    void progress_is_told_up_to_the_last_case() {
        List<String> told = new ArrayList<>();
        checker.check(
                new RulesetChecker.Asked(Optional.of(rulesets), Optional.empty(), Optional.empty()),
                (cases, all) -> told.add(cases + " of " + all));
        assertThat(told).containsExactly("1 of 2", "2 of 2");
    }

    @Test
    void a_directory_with_an_edition_and_its_cases_is_faultless() {
        assertThat(faults()).isEmpty();
    }

    private static final String AMENDMENT = """
            region: testland
            amendment: office
            title: A steeper fall
            amends: ["2024"]
            provisions:
              - {id: fall.gradient, overrides: true, limit: {quantity: fall gradient, atLeast: 0.02}}
            """;

    /** 1 in 50 is 0.02. */
    private static final String AMENDED_CASES = """
            cases:
              - name: a fall of 1 in 50 complies
                provision: fall.gradient
                base: small-level-deck.json
                patch: [{op: replace, path: /platforms/0/fall/gradient, value: "1:50"}]
                expect: {subject: /platforms/0, determination: complies}
                source: common practice
              - name: a fall of 1 in 80 does not comply
                provision: fall.gradient
                base: small-level-deck.json
                expect: {subject: /platforms/0, determination: does not comply}
                source: common practice
            """;

    private List<String> faultsWithAdded(String cases) throws IOException {
        Path added = folder.resolve("added");
        Files.createDirectories(added.resolve("testland/amendments"));
        Files.createDirectories(added.resolve("testland/cases/amendments/office"));
        Files.writeString(added.resolve("testland/amendments/office.yaml"), AMENDMENT);
        Files.writeString(added.resolve("testland/cases/amendments/office/fall.yaml"), cases);
        return check(Optional.of(rulesets), Optional.of(added));
    }

    @Test
    void an_amendment_that_another_directory_adds_proves_what_it_changes() throws IOException {
        assertThat(faultsWithAdded(AMENDED_CASES)).isEmpty();
        String first = AMENDED_CASES.substring(0, AMENDED_CASES.indexOf("  - name: a fall of 1 in 80"));
        assertThat(faultsWithAdded(first))
                .containsExactly("testland/2024 with office: fall.gradient has no case that does not comply");
        assertThat(faultsWithAdded(AMENDED_CASES.replace("1:50", "1:51")))
                .singleElement()
                .satisfies(fault -> assertThat(fault)
                        .startsWith("testland/cases/amendments/office/fall.yaml:2: a fall of 1 in 50 complies: under"
                                + " testland/2024 with office: expected 'complies', found 'does not comply'"));
    }

    @Test
    void an_amendment_that_changes_no_provision_of_its_own_has_a_case_at_least() throws IOException {
        write("testland/amendments/county.yaml", """
                region: testland
                amendment: county
                title: Frost
                amends: ["2024"]
                sources:
                  law: {title: Ordinance, edition: "7", publisher: County, standing: statute}
                site:
                  frostDepth: {value: 900 mm, cite: {source: law, clause: "3", confirmed: {by: page, on: 2026-11-25}}}
                """);
        assertThat(faults()).containsExactly("testland/amendments/county.yaml: it has no case over the edition 2024");
    }

    @Test
    void a_directory_without_an_edition_is_not_well() throws IOException {
        assertThat(check(Optional.of(Files.createDirectory(folder.resolve("empty"))), Optional.empty()))
                .singleElement()
                .satisfies(fault -> assertThat(fault).contains("nothing to check", "<region>/<edition>.yaml"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            determination: complies, found    | determination: does not comply, found | 2 | expected 'does not comply', found 'complies'
            determination: does not comply}   | determination: complies}              | 7 | expected 'complies', found 'does not comply'
            found: "0.0125"                   | found: "0.0126"                       | 2 | expected found '0.0126'
            allowed: "0.0125"                 | allowed: "0.02"                       | 2 | expected allowed '0.02'
            determination: does not comply}   | determination: does not comply, needs: /platforms/0/fall} | 7 | expected to need '/platforms/0/fall'
            expect: {subject: /platforms/0, determination: does | expect: {subject: /platforms/1, determination: does | 7 | no finding at '/platforms/1'
            base: small-level-deck.json       | base: no-such-deck.json               | 2 | there is no sample 'no-such-deck.json'
            path: /platforms/0/fall/gradient  | path: /platforms/7/fall/gradient      | 7 | the patch cannot be applied
            value: "1:81"                     | value: "steep"                        | 7 | the changed sample is not a valid submission
            """)
    void a_case_that_does_not_hold_is_told_with_file_and_line(String old, String replacement, int line, String told)
            throws IOException {
        assertThat(faultsWith(old, replacement))
                .anySatisfy(fault ->
                        assertThat(fault).startsWith(CASES + ":" + line + ": ").contains(told));
    }

    @Test
    void a_patch_that_is_none_is_told_with_file_and_line() throws IOException {
        assertThat(faultsWith("op: replace", "op: exchange"))
                .singleElement()
                .satisfies(
                        fault -> assertThat(fault).startsWith(CASES + ":10: ").contains("'exchange'", "replace"));
    }

    @Test
    void a_provision_without_cases_is_told() throws IOException {
        write("testland/2024.yaml", EDITION + FALL + FALL.replace("fall.gradient", "fall.twice"));
        assertThat(faults())
                .containsExactly(
                        "testland/2024: fall.twice has no case that complies",
                        "testland/2024: fall.twice has no case that does not comply");
    }

    @Test
    void a_provision_that_no_case_fails_is_told() throws IOException {
        write(CASES, GOOD.substring(0, GOOD.indexOf("  - name: a fall of 1 in 81")));
        assertThat(faults()).containsExactly("testland/2024: fall.gradient has no case that does not comply");
    }

    @Test
    void a_fault_of_the_edition_itself_is_told_with_file_and_line() throws IOException {
        write("testland/2024.yaml", EDITION + FALL.replace("quantity: fall gradient", "quantity: fall gradeint"));
        long line = EDITION.lines().count() + 7;
        assertThat(faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault)
                        .startsWith("testland/2024.yaml:" + line + ": ")
                        .contains("'fall gradeint'", "'fall gradient'"));
    }

    @Test
    void samples_beside_the_directory_come_before_those_of_the_service() throws IOException {
        Path samples = Files.createDirectory(folder.resolve("sample-submissions"));
        Files.writeString(
                samples.resolve("small-level-deck.json"),
                text(BuiltIn.SAMPLES.resolve("small-level-deck.json")).replace("\"1:80\"", "\"1:90\""));
        assertThat(faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault)
                        .startsWith(CASES + ":2: ")
                        .contains("expected 'complies', found 'does not comply'"));
    }
}
