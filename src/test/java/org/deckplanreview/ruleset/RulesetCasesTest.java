package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.ruleset.EditedFiles.CASES;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;
import org.json.JSONArray;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RulesetCasesTest {

    private static final EditedFiles GOOD = EditedFiles.good();
    private static final Rulesets RULESETS = GOOD.loaded();

    private static List<RulesetFault> faults(EditedFiles files) {
        CasesResult result = RulesetLoader.readCases(files, RULESETS);
        assertThat(result).isInstanceOf(CasesResult.Faulty.class);
        return ((CasesResult.Faulty) result).faults();
    }

    private static List<CaseFile> read(EditedFiles files) {
        CasesResult result = RulesetLoader.readCases(files, RULESETS);
        assertThat(result).isInstanceOf(CasesResult.Read.class);
        return ((CasesResult.Read) result).files();
    }

    @Test
    void cases_are_read_in_the_order_of_their_file() {
        List<CaseFile> files = read(GOOD);
        assertThat(files).hasSize(1);
        assertThat(files.get(0).path()).isEqualTo(CASES);
        assertThat(files.get(0).edition().name()).isEqualTo("2024");
        assertThat(files.get(0).cases())
                .extracting(RulesetCase::name)
                .containsExactly("a guard of 1100 mm complies", "a guard without a height is undetermined");
        RulesetCase first = files.get(0).cases().get(0);
        assertThat(first.line()).isEqualTo(2);
        assertThat(first.provision()).isEqualTo("guard.height");
        assertThat(first.base()).isEqualTo("small-level-deck.json");
        assertThat(new JSONArray(first.patch())
                        .similar(new JSONArray("[{op: replace, path: '/platforms/0/guards/0/height', value: 1100}]")))
                .isTrue();
        assertThat(first.expect())
                .isEqualTo(new RulesetCase.Expectation(
                        Pointer.of("/platforms/0/edges/0"),
                        "complies",
                        Optional.of("1100 mm"),
                        Optional.of("1100 mm"),
                        Optional.empty()));
        assertThat(first.source()).isEqualTo("Guarding of drops 2013, Diagram 3.1");
        assertThat(files.get(0).cases().get(1).expect().needs()).contains(Pointer.of("/platforms/0/guards/0/height"));
    }

    @Test
    void a_case_without_a_patch_is_the_sample_as_it_is() {
        EditedFiles edited = GOOD.with(CASES, "    patch: [{op: remove, path: /platforms/0/guards/0/height}]\n", "");
        assertThat(read(edited).get(0).cases().get(1).patch()).isEqualTo("[]");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            provision: guard.height | provision: guard.hieght | 'guard.hieght' | no such provision | the nearest is 'guard.height'
            determination: complies | determination: compiles | 'compiles' | right form | the nearest is 'complies'
            base: small-level-deck.json | base: ../secret.json | '../secret.json' | right form | small-level-deck.json
            {op: replace | {op: change | 'change' | right form | add, remove, replace, move, copy, test
            , value: 1100} | } | a map of op, path | 'value' is missing | what to put or test
            {op: remove, path: | {op: move, path: | a map of op, path | 'from' is missing | a JSON Pointer
            subject: /platforms | subject: platforms | 'platforms/0/edges/0' | right form | a JSON Pointer
            found: 1100 mm | fund: 1100 mm | 'fund' | no such member | the nearest is 'found'
            name: a guard without a height is undetermined | name: a guard of 1100 mm complies | 'a guard of 1100 mm complies' | Line 2 has a case of this name already | another name
            """)
    void a_fault_in_a_case(String old, String replacement, String found, String detail, String accepted) {
        EditedFiles edited = GOOD.with(CASES, old, replacement);
        List<RulesetFault> faults = faults(edited);
        assertThat(faults).as("%s", faults).hasSize(1);
        RulesetFault fault = faults.get(0);
        assertThat(fault.file()).isEqualTo(CASES);
        assertThat(fault.found()).isEqualTo(found);
        assertThat(fault.detail()).contains(detail);
        assertThat(fault.accepted()).contains(accepted);
    }

    @Test
    void cases_of_an_edition_that_is_not_there_are_told() {
        EditedFiles edited = GOOD.with("testland/cases/2025/guard.yaml", GOOD.text(CASES));
        assertThat(faults(edited))
                .singleElement()
                .satisfies(fault -> assertThat(fault.accepted()).contains("testland/2024"));
    }
}
