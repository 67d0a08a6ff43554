package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever stands in the files, loading ends with rulesets or with faults that name file and line. */
class MutatedRulesetsTest {

    private static final EditedFiles GOOD = EditedFiles.good();
    private static final List<String> PATHS =
            List.of(EditedFiles.EDITION, EditedFiles.EN338, EditedFiles.EN1995, EditedFiles.CASES);
    private static final EditedFiles TABLES = EditedFiles.tables();
    private static final Rulesets RULESETS = GOOD.loaded();

    /**
     * A piece of text to put in place of another.
     *
     * @param at place in ten-thousandths of the file
     */
    record Mutation(String path, int at, int length, String insert) {
        EditedFiles apply(EditedFiles files) {
            String text = files.text(path);
            int start = at * text.length() / 10_000;
            int end = Math.min(text.length(), start + length);
            return files.with(path, text.substring(0, start) + insert + text.substring(end));
        }
    }

    @Provide
    Arbitrary<Mutation> mutations() {
        return mutationsOf(PATHS);
    }

    @Provide
    Arbitrary<Mutation> mutationsOfTables() {
        return mutationsOf(TABLES.list());
    }

    private static Arbitrary<Mutation> mutationsOf(List<String> paths) {
        Arbitrary<String> snippets = Arbitraries.of(
                "",
                " ",
                "\n",
                "  ",
                "\n  ",
                ":",
                "- ",
                "[",
                "]",
                "{",
                "}",
                "#",
                "'",
                "\"",
                "&a ",
                "*a",
                "!t ",
                "!!int ",
                "---\n",
                "...\n",
                "%YAML 1.99999999999\n",
                "%TAG ! x\n",
                "? ",
                "| ",
                "> ",
                "null",
                "true",
                "1e999",
                "-",
                "0",
                "\t",
                "\u0000",
                "\u2028",
                "\\UFFFFFFFF",
                "\"\\UFFFFFFFF\"",
                "value: 1",
                "[[[[",
                "~",
                "mm",
                "when: {}",
                ",",
                ",,",
                "NP",
                "9-11",
                "\r\n",
                "cite: {}",
                "\ufeff");
        Arbitrary<String> inserts =
                Arbitraries.oneOf(snippets, Arbitraries.strings().ofMaxLength(8));
        return Combinators.combine(
                        Arbitraries.of(paths),
                        Arbitraries.integers().between(0, 9999),
                        Arbitraries.oneOf(
                                Arbitraries.integers().between(0, 6),
                                Arbitraries.integers().between(0, 200)),
                        inserts)
                .as(Mutation::new);
    }

    @Property(tries = 400)
    void mutated_files_load_or_are_faulty(@ForAll("mutations") Mutation first, @ForAll("mutations") Mutation second) {
        EditedFiles mutated = second.apply(first.apply(GOOD));
        if (mutated.load() instanceof LoadResult.Faulty faulty) {
            assertTold(faulty.faults(), mutated);
        }
        if (RulesetLoader.readCases(mutated, RULESETS) instanceof CasesResult.Faulty faulty) {
            assertTold(faulty.faults(), mutated);
        }
    }

    @Property(tries = 400)
    void mutated_tables_load_or_are_faulty(
            @ForAll("mutationsOfTables") Mutation first, @ForAll("mutationsOfTables") Mutation second) {
        EditedFiles mutated = second.apply(first.apply(TABLES));
        if (mutated.load() instanceof LoadResult.Faulty faulty) {
            assertTold(faulty.faults(), mutated);
        }
    }

    @Property(tries = 100)
    void any_bytes_of_a_table_load_or_are_faulty(@ForAll byte[] bytes) {
        EditedFiles mutated = TABLES.with("testland/tables/beams.csv", bytes);
        assertThat(mutated.load()).isInstanceOf(LoadResult.Faulty.class);
        assertTold(mutated.faults(), mutated);
    }

    @Property(tries = 100)
    void any_bytes_load_or_are_faulty(@ForAll byte[] bytes) {
        EditedFiles mutated = GOOD.with(EditedFiles.EDITION, bytes);
        assertThat(mutated.load()).isInstanceOf(LoadResult.Faulty.class);
        assertTold(mutated.faults(), mutated);
    }

    private static void assertTold(List<RulesetFault> faults, EditedFiles files) {
        assertThat(faults).isNotEmpty().isSorted().doesNotHaveDuplicates().allSatisfy(fault -> {
            assertThat(files.list()).contains(fault.file());
            assertThat(fault.line()).isPositive();
            assertThat(fault.found()).isNotBlank().hasSizeLessThan(200);
            assertThat(fault.detail()).isNotBlank();
            assertThat(fault.accepted()).isNotBlank();
            assertThat(StandardCharsets.UTF_8.newEncoder().canEncode(fault.message()))
                    .isTrue();
        });
    }
}
