package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.ruleset.EditedFiles.CASES;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;

import java.util.List;
import org.json.JSONObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Editions that build on files which they share: what they come to, and each way to get that wrong. */
class BasesTest {

    private static final String HABITS = "common/habits.yaml";
    private static final String POSTS = "common/posts.yaml";
    private static final String BASE_CASES = "common/cases/posts/use-class.yaml";
    private static final String FIRST = "  - id: guard.height\n";
    private static final String FROM_HABIT = "{source: habit, confirmed: {by: practice, on: 2026-11-25}}";
    private static final String HABIT =
            "sources:\n  habit: {title: Common practice, edition: \"\", publisher: \"\", standing: common practice}\n";

    /** Testland with two of its provisions moved to a base, which builds on another that holds the source. */
    private static final EditedFiles SHARED = shared();

    private static EditedFiles shared() {
        String text = EditedFiles.good().text(EDITION);
        int first = text.indexOf("  - id: post.treatment");
        int last = text.indexOf("  - id: joist.bending");
        String edition = text.substring(0, first) + text.substring(last);
        return EditedFiles.good()
                .with(HABITS, "base: habits\ntitle: Habits of the trade\nnotes: [Habits differ.]\n" + HABIT)
                .with(
                        POSTS,
                        "base: posts\ntitle: Posts\nbases: [common/habits.yaml]\nprovisions:\n"
                                + text.substring(first, last))
                .with(EDITION, edition.replace("uses:\n", "bases: [common/posts.yaml]\nuses:\n"));
    }

    /** With provisions of the edition put before its first one. */
    private static EditedFiles with(String provisions) {
        return SHARED.with(EDITION, FIRST, provisions + FIRST);
    }

    private static Provision provision(Edition edition, String id) {
        return edition.provisions().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static void assertFault(RulesetFault fault, EditedFiles files, String file, String line, String detail) {
        assertThat(fault.file()).isEqualTo(file);
        assertThat(files.text(file).lines().toList().get(fault.line() - 1)).contains(line);
        assertThat(fault.detail()).isEqualTo(detail);
    }

    @Test
    void provisions_of_bases_come_first_and_know_who_set_them() {
        Edition edition = SHARED.edition();
        assertThat(edition.provisions())
                .extracting(Provision::id)
                .containsExactly("post.treatment", "post.preservative", "guard.height", "joist.bending");
        assertThat(edition.provisions()).extracting(Provision::order).containsExactly(0, 1, 2, 3);
        assertThat(edition.provisions())
                .extracting(Provision::setBy)
                .containsExactly(List.of(POSTS), List.of(POSTS), List.of(EDITION), List.of(EDITION));
        assertThat(new JSONObject(edition.canonical()).query("/provisions/0/setBy/0"))
                .isEqualTo(POSTS);
    }

    @Test
    void an_edition_names_its_bases_those_below_first() {
        Edition edition = SHARED.edition();
        assertThat(edition.bases()).extracting(Edition.Base::path).containsExactly(HABITS, POSTS);
        assertThat(edition.bases()).extracting(Edition.Base::title).containsExactly("Habits of the trade", "Posts");
        assertThat(edition.bases()).allSatisfy(b -> assertThat(b.digest()).matches("sha256:[0-9a-f]{64}"));
        assertThat(edition.notes()).containsExactly("Habits differ.", "An invented region.");
    }

    @Test
    void the_digest_changes_with_what_a_base_says_and_stays_with_how_it_is_written() {
        assertThat(SHARED.with(POSTS, "atLeast: \"4\"", "atLeast: \"3.2\"")
                        .edition()
                        .digest())
                .isNotEqualTo(SHARED.edition().digest());
        assertThat(SHARED.with(POSTS, "provisions:", "# Posts.\nprovisions:")
                        .edition()
                        .digest())
                .isEqualTo(SHARED.edition().digest());
    }

    @Test
    void a_base_that_two_others_build_on_counts_once() {
        EditedFiles files = SHARED.with(
                        "common/more.yaml",
                        "base: more\ntitle: More\nbases: [common/posts.yaml]\nprovisions:\n"
                                + "  - {id: post.treatment, overrides: true, advice: Take oak.}\n")
                .with(EDITION, "[common/posts.yaml]", "[common/habits.yaml, common/more.yaml]");
        assertThat(files.edition().bases())
                .extracting(Edition.Base::path)
                .containsExactly(HABITS, POSTS, "common/more.yaml");
        assertThat(provision(files.edition(), "post.treatment").advice()).isEqualTo("Take oak.");
    }

    @Test
    void what_overrides_a_provision_keeps_its_place_and_what_it_does_not_state() {
        Edition edition = with("  - id: post.treatment\n    overrides: true\n    obligation: shall\n"
                        + "    cite: {source: guarding, clause: \"7\", confirmed: {by: page, on: 2026-11-25}}\n")
                .edition();
        Provision treatment = edition.provisions().get(0);
        assertThat(treatment.id()).isEqualTo("post.treatment");
        assertThat(treatment.obligation()).isEqualTo(Obligation.SHALL);
        assertThat(treatment.citation().clause()).isEqualTo("7");
        assertThat(treatment.advice()).isEqualTo("Take timber treated for use class 4.");
        assertThat(treatment.setBy()).containsExactly(POSTS, EDITION);
        assertThat(treatment.ruledBy()).isEqualTo(POSTS);
    }

    @Test
    void a_calculation_can_take_the_place_of_a_limit_and_no_condition_that_of_one() {
        Edition edition = with("  - id: post.preservative\n    overrides: true\n    subjects: joists\n    when: {}\n"
                        + "    cite: {source: en1995, clause: \"6\", confirmed: {by: page, on: 2026-11-25}}\n"
                        + "    calculate: {method: test.bending, values: [en338, en1995]}\n")
                .edition();
        Provision preservative = edition.provisions().get(1);
        assertThat(preservative.id()).isEqualTo("post.preservative");
        assertThat(preservative.when()).isEqualTo(new Condition.All(List.of()));
        assertThat(preservative.rule()).isInstanceOf(Rule.Calculation.class);
        assertThat(preservative.ruledBy()).isEqualTo(EDITION);
    }

    @Test
    void what_an_edition_withdraws_does_not_hold() {
        Edition edition = SHARED.with(EDITION, "uses:\n", "withdraws: [post.preservative]\nuses:\n")
                .edition();
        assertThat(edition.provisions())
                .extracting(Provision::id)
                .containsExactly("post.treatment", "guard.height", "joist.bending");
    }

    @Test
    void loads_can_come_from_a_base() {
        String text = SHARED.text(EDITION);
        int first = text.indexOf("loads:\n");
        int last = text.indexOf("provisions:\n");
        EditedFiles files = SHARED.with(HABITS, SHARED.text(HABITS) + text.substring(first, last))
                .with(EDITION, text.substring(0, first) + text.substring(last));
        assertThat(files.edition().loads().imposed()).hasSize(2);
        EditedFiles twice = files.with(EDITION, text);
        assertFault(twice.fault(), twice, EDITION, "loads:", HABITS + " has loads already");
    }

    @Test
    void an_edition_without_loads_or_provisions_is_told() {
        String text = SHARED.text(EDITION);
        int first = text.indexOf("loads:\n");
        List<RulesetFault> faults = SHARED.with(EDITION, text.substring(0, first))
                .with(EDITION, "bases: [common/posts.yaml]", "bases: [common/habits.yaml]")
                .faults();
        assertThat(faults)
                .extracting(RulesetFault::detail)
                .containsExactly("'loads' is missing", "'provisions' is missing");
    }

    @Test
    void a_base_that_is_not_there_is_told() {
        EditedFiles files = SHARED.with(EDITION, "common/posts.yaml", "common/pots.yaml");
        assertFault(files.fault(), files, EDITION, "common/pots.yaml", "There is no such base file");
        assertThat(files.fault().accepted()).contains("nearest is 'common/posts.yaml'");
    }

    @Test
    void a_base_that_builds_on_itself_is_told() {
        EditedFiles files = SHARED.with(HABITS, "sources:", "bases: [common/posts.yaml]\nsources:");
        assertFault(
                files.fault(),
                files,
                HABITS,
                "common/posts.yaml",
                "A base builds on itself: testland/2024.yaml, common/posts.yaml, common/habits.yaml, "
                        + "common/posts.yaml");
    }

    @Test
    void a_base_stands_where_its_name_says() {
        EditedFiles files = SHARED.with(POSTS, "base: posts", "base: pots");
        assertFault(files.fault(), files, POSTS, "base: pots", "The file has another name than the base");
    }

    @Test
    void a_base_has_no_region() {
        EditedFiles files = SHARED.with(POSTS, "base: posts", "base: posts\nregion: testland");
        assertFault(files.fault(), files, POSTS, "region: testland", "There is no such member here");
    }

    @Test
    void a_fault_in_a_base_is_told_there_once_for_all_editions() {
        EditedFiles files = SHARED.with(POSTS, "quantity: use class", "quantity: use clas")
                .with(EDITION, "{from: 2024-10-01}", "{from: 2024-10-01, until: 2024-12-31}");
        files = files.with(
                "testland/2025.yaml",
                files.text(EDITION)
                        .replace("\"2024\"", "\"2025\"")
                        .replace("2024-10-01, until: 2024-12-31", "2025-01-01"));
        assertFault(files.fault(), files, POSTS, "use clas", "There is no such quantity");
    }

    @Test
    void a_provision_that_a_base_has_already_is_told() {
        EditedFiles files =
                with("  - id: post.treatment\n    title: T\n    concern: treatment\n    obligation: should\n"
                        + "    cite: " + FROM_HABIT + "\n    subjects: posts\n"
                        + "    limit: {quantity: use class, atLeast: \"4\"}\n    advice: A.\n");
        assertFault(
                files.fault(),
                files,
                EDITION,
                "id: post.treatment",
                "A base has a provision of this id, set by common/posts.yaml");
        assertThat(files.fault().accepted()).contains("overrides: true");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            id: post.treatmnt, overrides: true, advice: A. | There is no such provision to override in a base | nearest is 'post.treatment'
            id: post.treatment, overrides: false, advice: A. | This has not the right form | true
            id: post.treatment, overrides: true | This has not the right form | members that differ
            id: post.treatment, overrides: true, advise: A. | There is no such member here | nearest is 'advice'
            id: post.treatment, overrides: true, limit: {quantity: use class, atLeast: "5"} | There is no such word | 3.2
            """)
    void a_fault_in_what_overrides(String members, String detail, String accepted) {
        EditedFiles files = with("  - {" + members + "}\n");
        assertFault(files.fault(), files, EDITION, members, detail);
        assertThat(files.fault().accepted()).contains(accepted);
    }

    @Test
    void what_overrides_has_a_limit_or_a_calculation_and_not_both() {
        EditedFiles files = with("  - {id: post.treatment, overrides: true, "
                + "limit: {quantity: use class, atLeast: \"4\"}, calculate: {method: test.bending}}\n");
        assertFault(files.fault(), files, EDITION, "overrides: true", "This has not the right form");
        assertThat(files.fault().accepted()).isEqualTo("one of limit, lookUp and calculate, or none of them");
    }

    @Test
    void a_provision_that_no_base_has_cannot_be_withdrawn() {
        EditedFiles files = SHARED.with(EDITION, "uses:\n", "withdraws: [guard.height]\nuses:\n");
        assertFault(files.fault(), files, EDITION, "withdraws:", "There is no such provision in a base");
    }

    @Test
    void two_bases_that_state_one_provision_are_told() {
        EditedFiles files = SHARED.with("common/again.yaml", SHARED.text(POSTS).replace("base: posts", "base: again"))
                .with(EDITION, "[common/posts.yaml]", "[common/posts.yaml, common/again.yaml]");
        assertThat(files.faults()).hasSize(2).allSatisfy(fault -> {
            assertThat(fault.file()).isEqualTo(EDITION);
            assertThat(fault.found()).isEqualTo("'common/again.yaml'");
            assertThat(fault.detail()).contains("already, set by common/posts.yaml");
        });
    }

    @Test
    void a_source_of_one_name_may_be_repeated_and_not_contradicted() {
        EditedFiles repeated = SHARED.with(POSTS, "provisions:", HABIT + "provisions:");
        assertThat(repeated.edition().digest()).isEqualTo(SHARED.edition().digest());
        EditedFiles files =
                SHARED.with(POSTS, "provisions:", HABIT.replace("Common practice", "Practice") + "provisions:");
        assertFault(
                files.fault(),
                files,
                POSTS,
                "  habit:",
                "common/habits.yaml has another source of this name on line 5");
    }

    @Test
    void a_standard_of_one_name_is_one_file() {
        EditedFiles files =
                SHARED.with(POSTS, "provisions:", "uses: {en338: standards/en1995-1-1-2004.yaml}\nprovisions:");
        assertFault(
                files.faults().get(0),
                files,
                EDITION,
                "en338: standards/en338-2016.yaml",
                "common/posts.yaml has another standard of this name on line 4");
    }

    @Test
    void a_value_may_be_set_twice_alike_and_not_otherwise() {
        String uses =
                "uses: {en1995: standards/en1995-1-1-2004.yaml}\nsets:\n  en1995:\n    gammaM: {value: 1.35, cite: "
                        + "{source: na1995, clause: Table NA.3, confirmed: {by: memory, on: 2026-11-25}}}\n";
        EditedFiles files = SHARED.with(POSTS, "provisions:", uses + "provisions:");
        assertThat(files.edition().digest()).isEqualTo(SHARED.edition().digest());
        EditedFiles other = SHARED.with(POSTS, "provisions:", uses.replace("1.35", "1.25") + "provisions:");
        assertFault(
                other.fault(),
                other,
                EDITION,
                "gammaM: {value: 1.35",
                "common/posts.yaml sets this otherwise on line 7");
    }

    @Test
    void a_source_in_a_base_that_no_edition_cites_is_told_there() {
        EditedFiles files = SHARED.with(
                HABITS, SHARED.text(HABITS) + "  unused: {title: T, edition: E, publisher: P, standing: guidance}\n");
        assertFault(files.fault(), files, HABITS, "unused", "Nothing cites this source");
    }

    @Test
    void a_base_that_no_edition_builds_on_is_told() {
        EditedFiles files = SHARED.with("common/spare.yaml", "base: spare\ntitle: Spare\n");
        assertFault(files.fault(), files, "common/spare.yaml", "base: spare", "No edition builds on this base");
    }

    @Test
    void cases_beside_a_base_are_run_under_every_edition_that_takes_its_provision() {
        EditedFiles files = SHARED.with(
                        BASE_CASES, "cases:\n" + useClass("post.treatment") + useClass("post.preservative"))
                .with(EDITION, "{from: 2024-10-01}", "{from: 2024-10-01, until: 2024-12-31}");
        files = files.with(
                "testland/2025.yaml",
                files.text(EDITION)
                        .replace("\"2024\"", "\"2025\"")
                        .replace("2024-10-01, until: 2024-12-31", "2025-01-01")
                        .replace("uses:\n", "withdraws: [post.preservative]\nuses:\n")
                        .replace(
                                FIRST,
                                "  - {id: post.treatment, overrides: true, limit: {quantity: use class, atLeast: \"3.2\"}}\n"
                                        + FIRST));
        List<CaseFile> cases = ((CasesResult.Read) RulesetLoader.readCases(files, files.loaded())).files();
        assertThat(cases).extracting(CaseFile::path).containsExactly(BASE_CASES, BASE_CASES, CASES);
        assertThat(cases).extracting(file -> file.edition().name()).containsExactly("2024", "2025", "2024");
        assertThat(cases).extracting(file -> file.cases().size()).containsExactly(2, 0, 2);
    }

    private static String useClass(String provision) {
        return "  - name: case of " + provision + "\n    provision: " + provision
                + "\n    base: small-level-deck.json\n"
                + "    expect: {subject: /platforms/0/posts/0, determination: complies}\n    source: worked out\n";
    }

    @Test
    void cases_of_a_provision_that_the_base_does_not_have_are_told() {
        EditedFiles files = SHARED.with(BASE_CASES, "cases:\n" + useClass("guard.height"));
        RulesetFault fault = caseFault(files);
        assertFault(
                fault,
                files,
                BASE_CASES,
                "provision: guard.height",
                "There is no such provision that an edition takes from this base");
    }

    @Test
    void cases_beside_a_base_on_which_no_edition_builds_are_told() {
        EditedFiles files = SHARED.with("common/cases/pots/a.yaml", "cases:\n" + useClass("post.treatment"));
        RulesetFault fault = caseFault(files);
        assertThat(fault.file()).isEqualTo("common/cases/pots/a.yaml");
        assertThat(fault.detail()).isEqualTo("There is no such base of an edition");
        assertThat(fault.accepted()).contains("the nearest is 'common/posts.yaml'");
    }

    private static RulesetFault caseFault(EditedFiles files) {
        List<RulesetFault> faults = ((CasesResult.Faulty) RulesetLoader.readCases(files, files.loaded())).faults();
        assertThat(faults).as("%s", faults).hasSize(1);
        return faults.get(0);
    }
}
