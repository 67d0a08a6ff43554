package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;

import java.util.List;
import java.util.Optional;
import org.json.JSONObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Amendments over the editions of Testland: what they come to, what they may do, and each way to get them wrong. */
class AmendmentsTest {

    private static final String COUNTY = "testland/amendments/county.yaml";
    private static final String OFFICE = "testland/amendments/office.yaml";
    private static final String BY_COUNTY = "cite: {source: law, clause: \"3\", confirmed: {by: page, on: 2026-11-25}}";
    private static final String BY_OFFICE = "cite: {source: house, confirmed: {by: page, on: 2026-11-25}}";

    private static final String COUNTY_HEAD =
            "region: testland\namendment: county\ntitle: A county\namends: [\"2024\"]\n"
                    + "sources:\n  law: {title: Ordinance, edition: \"7\", publisher: County, standing: statute}\n";
    private static final String OFFICE_HEAD =
            "region: testland\namendment: office\ntitle: An office\namends: [\"2024\"]\n"
                    + "sources:\n  house: {title: House rules, edition: \"\", publisher: \"\", standing: common practice}\n";

    private static EditedFiles county(String content) {
        return EditedFiles.good().with(COUNTY, COUNTY_HEAD + content);
    }

    private static EditedFiles office(String content) {
        return EditedFiles.good().with(OFFICE, OFFICE_HEAD + content);
    }

    private static String override(String id, String content) {
        return "provisions:\n  - {id: " + id + ", overrides: true, " + content + "}\n";
    }

    private static Amending amending(EditedFiles files, String... amendments) {
        return files.loaded().edition("testland", "2024", List.of(amendments)).orElseThrow();
    }

    private static Edition amended(EditedFiles files, String... amendments) {
        Amending amending = amending(files, amendments);
        assertThat(amending).isInstanceOf(Amending.Amended.class);
        return ((Amending.Amended) amending).edition();
    }

    private static Amending.Refused refused(EditedFiles files, String... amendments) {
        Amending amending = amending(files, amendments);
        assertThat(amending).isInstanceOf(Amending.Refused.class);
        return (Amending.Refused) amending;
    }

    private static Provision provision(Edition edition, String id) {
        return edition.provisions().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static final String HIGHER_GUARD =
            override("guard.height", "limit: {quantity: guard height, atLeast: 1300 mm}, " + BY_OFFICE);
    private static final String LOWER_GUARD = "limit: {quantity: guard height, atLeast: 900 mm}";

    @Test
    void an_office_may_ask_for_more_of_its_own_accord() {
        Edition edition = amended(office(HIGHER_GUARD), "office");
        Provision guard = provision(edition, "guard.height");
        assertThat(guard.setBy()).containsExactly(EDITION, OFFICE);
        assertThat(guard.ruledBy()).isEqualTo(OFFICE);
        assertThat(guard.order()).isZero();
        assertThat(guard.citation().source().title()).isEqualTo("House rules");
        assertThat(edition.name()).isEqualTo("2024");
    }

    @Test
    void advice_shows_the_amended_limit() {
        Edition edition = amended(
                office(HIGHER_GUARD).with(EDITION, "advice: Raise the guard.", "advice: \"Raise it to {limit}.\""),
                "office");
        assertThat(new Figures(edition.provisions(), TestVocabulary.SMALL)
                        .written(
                                provision(edition, "guard.height"),
                                provision(edition, "guard.height").advice()))
                .isEqualTo("Raise it to 1300 mm.");
    }

    @Test
    void what_was_amended_is_told_with_both_values_their_citations_and_who_set_it() {
        Edition edition = amended(office(HIGHER_GUARD), "office");
        Amendment.Applied applied = edition.amendments().get(0);
        assertThat(applied.amendment().name()).isEqualTo("office");
        assertThat(applied.amendment().title()).isEqualTo("An office");
        assertThat(applied.values())
                .extracting(
                        v -> v.provision().orElseThrow(),
                        v -> v.change().what(),
                        v -> v.change().was().orElseThrow().text(),
                        v -> v.change().was().orElseThrow().citation().clause(),
                        v -> v.change().is().orElseThrow().text(),
                        v -> v.change().is().orElseThrow().citation().source().title(),
                        v -> v.change().strictness())
                .containsExactly(
                        tuple(
                                "guard.height",
                                "guard height, where occupancy is single-dwelling or public",
                                "at least 1100 mm",
                                "Diagram 3.1",
                                "at least 1300 mm",
                                "House rules",
                                Strictness.TIGHTER),
                        tuple(
                                "guard.height",
                                "guard height",
                                "at least 1200 mm",
                                "Diagram 3.1",
                                "at least 1300 mm",
                                "House rules",
                                Strictness.TIGHTER));
    }

    @Test
    void the_edition_itself_stays_as_it_is() {
        Rulesets rulesets = office(HIGHER_GUARD).loaded();
        Edition before = rulesets.edition("testland", "2024").orElseThrow();
        rulesets.edition("testland", "2024", List.of("office"));
        assertThat(rulesets.edition("testland", "2024", List.of())).contains(new Amending.Amended(before));
        assertThat(before.digest()).isEqualTo(EditedFiles.good().edition().digest());
        assertThat(before.amendments()).isEmpty();
    }

    @Test
    void the_digest_covers_the_amendments() {
        String plain = EditedFiles.good().edition().digest();
        String amended = amended(office(HIGHER_GUARD), "office").digest();
        assertThat(amended).isNotEqualTo(plain);
        assertThat(amended(office(HIGHER_GUARD.replace("1300", "1310")), "office")
                        .digest())
                .isNotEqualTo(amended);
        assertThat(amended(office("# Words.\n" + HIGHER_GUARD), "office").digest())
                .isEqualTo(amended);
        assertThat(new JSONObject(amended(office(HIGHER_GUARD), "office").canonical()).query("/amendments/0/amendment"))
                .isEqualTo("office");
    }

    @Test
    void a_lower_limit_of_a_requirement_without_an_authority_is_a_fault() {
        RulesetFault fault =
                office(override("guard.height", LOWER_GUARD)).faults().get(0);
        assertThat(fault.file()).isEqualTo(OFFICE);
        assertThat(fault.line()).isEqualTo(8);
        assertThat(fault.detail())
                .isEqualTo("Over the edition 2024, this permits what it refuses, without an authority: guard.height,"
                        + " guard height, where occupancy is single-dwelling or public: 'at least 1100 mm' becomes"
                        + " 'at least 900 mm'");
        assertThat(fault.accepted()).contains("statute or statutory guidance");
    }

    @Test
    void an_offices_own_citation_is_no_authority() {
        assertThat(office(override("guard.height", LOWER_GUARD + ", " + BY_OFFICE))
                        .faults())
                .isNotEmpty();
    }

    @Test
    void a_statute_may_ask_for_less() {
        Edition edition = amended(county(override("guard.height", LOWER_GUARD + ", " + BY_COUNTY)), "county");
        assertThat(edition.amendments().get(0).values())
                .extracting(v -> v.change().strictness())
                .containsOnly(Strictness.LOOSER);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "obligation: should",
                "when: {drop: {over: 700 mm}}",
                "when: {occupancy: [public]}",
                "subjects: edges, limit: {quantity: drop, atMost: 500 mm}"
            })
    void a_requirement_is_also_relaxed_by_its_obligation_its_scope_and_another_rule(String content) {
        assertThat(office(override("guard.height", content)).faults()).isNotEmpty();
        assertThat(county(override("guard.height", content + ", " + BY_COUNTY)).loaded())
                .isNotNull();
    }

    @Test
    void parameters_whose_direction_cannot_be_told_need_an_authority() {
        String content = "calculate: {method: test.bending, values: [en338, en1995], with: {ksys: %s}}";
        RulesetFault fault = office(override("joist.bending", content.formatted("1.0")))
                .faults()
                .get(0);
        assertThat(fault.detail())
                .isEqualTo(
                        "Over the edition 2024, this may permit what it refuses, without an authority: joist.bending,"
                                + " ksys: '1.05' becomes '1'");
        assertThat(county(override("joist.bending", content.formatted("{value: 1.0, " + BY_COUNTY + "}")))
                        .loaded())
                .isNotNull();
    }

    @Test
    void a_standards_value_that_is_set_otherwise_needs_an_authority_of_its_own() {
        String sets = "sets:\n  en1995:\n    gammaM: {value: 1.2, %s}\n";
        RulesetFault fault = office(sets.formatted(BY_OFFICE)).fault();
        assertThat(fault.line()).isEqualTo(8);
        assertThat(fault.detail()).contains("joist.bending, gammaM: '1.35' becomes '1.2'");
        Edition edition = amended(county(sets.formatted(BY_COUNTY)), "county");
        assertThat(edition.amendments().get(0).values())
                .extracting(
                        Amendment.Value::provision,
                        v -> v.change().what(),
                        v -> v.change().standard())
                .containsExactly(tuple(Optional.empty(), "gammaM", Optional.of("en1995")));
    }

    @Test
    void a_recommendation_may_be_relaxed_freely() {
        String content = "limit: {quantity: use class, atLeast: \"3.2\"}";
        assertThat(office(override("post.treatment", content)).faults())
                .as("the source must be cited")
                .hasSize(1);
        assertThat(office(override("post.treatment", content + ", " + BY_OFFICE))
                        .loaded())
                .isNotNull();
    }

    @Test
    void withdrawing_a_requirement_needs_an_authority() {
        RulesetFault fault = county("withdraws: [guard.height]\n").faults().get(0);
        assertThat(fault.detail()).contains("guard.height is withdrawn");
        Edition edition = amended(county("withdraws:\n  - {id: guard.height, " + BY_COUNTY + "}\n"), "county");
        assertThat(edition.provisions()).extracting(Provision::id).doesNotContain("guard.height");
        assertThat(edition.amendments().get(0).values())
                .extracting(
                        Amendment.Value::provision,
                        v -> v.change().is(),
                        v -> v.change().strictness())
                .containsExactly(tuple(Optional.of("guard.height"), Optional.empty(), Strictness.LOOSER));
        assertThat(office("withdraws:\n  - {id: guard.height, " + BY_OFFICE + "}\n")
                        .fault()
                        .detail())
                .contains("guard.height is withdrawn");
    }

    @Test
    void what_is_not_there_cannot_be_withdrawn_or_overridden() {
        assertThat(county("withdraws: [guard.hight]\n").faults().get(0).accepted())
                .contains("the nearest is 'guard.height'");
        assertThat(county(override("guard.hight", BY_COUNTY)).faults().get(0).accepted())
                .contains("the nearest is 'guard.height'");
    }

    @Test
    void a_new_requirement_comes_after_the_editions_own() {
        String text = EditedFiles.good().text(EDITION);
        String guard = text.substring(text.indexOf("  - id: guard.height"), text.indexOf("  - id: post.treatment"));
        String added = guard.replace("guard.height", "office.guard").replace("source: guarding", "source: house");
        Edition edition = amended(office("provisions:\n" + added), "office");
        assertThat(edition.provisions())
                .extracting(Provision::id)
                .containsExactly(
                        "guard.height", "post.treatment", "post.preservative", "joist.bending", "office.guard");
        assertThat(edition.amendments().get(0).values())
                .extracting(v -> v.change().was(), v -> v.change().strictness())
                .containsExactly(tuple(Optional.empty(), Strictness.TIGHTER));
        assertThat(office("provisions:\n" + guard.replace("source: guarding", "source: house"))
                        .faults()
                        .get(0)
                        .accepted())
                .startsWith("overrides: true");
    }

    private static String loads(String uniform, String cite) {
        return "loads:\n  imposed:\n    - {uniform: " + uniform
                + ", concentrated: 2 kN, category: A, reason: Every deck., " + cite + "}\n";
    }

    @Test
    void a_higher_load_is_free_and_a_lower_one_needs_an_authority() {
        Edition edition = amended(office(loads("3 kN/m2", BY_OFFICE)), "office");
        assertThat(edition.loads().imposed()).hasSize(1);
        assertThat(edition.loads().parameters())
                .usingRecursiveComparison()
                .isEqualTo(EditedFiles.good().edition().loads().parameters());
        assertThat(edition.amendments().get(0).values())
                .extracting(
                        v -> v.change().was().orElseThrow().text(),
                        v -> v.change().is().orElseThrow().text())
                .containsExactly(tuple("1.5 kN/m²", "3 kN/m²"), tuple("2.5 kN/m²", "3 kN/m²"));
        RulesetFault fault = office(loads("2 kN/m2", BY_OFFICE)).fault();
        assertThat(fault.detail()).contains("uniform imposed load: '2.5 kN/m²' becomes '2 kN/m²'");
        assertThat(county(loads("2 kN/m2", BY_COUNTY)).loaded()).isNotNull();
    }

    @Test
    void an_unknown_edition_is_told_with_the_nearest() {
        RulesetFault fault = EditedFiles.good()
                .with(OFFICE, (OFFICE_HEAD + HIGHER_GUARD).replace("[\"2024\"]", "[\"2025\"]"))
                .fault();
        assertThat(fault.file()).isEqualTo(OFFICE);
        assertThat(fault.detail()).isEqualTo("There is no such edition of testland");
        assertThat(fault.accepted()).contains("2024");
    }

    @ParameterizedTest
    @CsvSource({
        "testland/amendments/bureau.yaml, The file stands in another place than its region and name say",
        "wonderland/amendments/office.yaml, The file stands in another place than its region and name say",
        "testland/amendments/more/office.yaml, This is no place for a ruleset's file",
        "common/amendments/office.yaml, This is no place for a ruleset's file"
    })
    void an_amendment_has_its_place(String path, String detail) {
        assertThat(EditedFiles.good()
                        .with(path, OFFICE_HEAD + HIGHER_GUARD)
                        .fault()
                        .detail())
                .isEqualTo(detail);
    }

    @Test
    void faults_that_show_only_over_an_edition_are_told_in_the_amendments_file() {
        RulesetFault fault = office(override("guard.height", "subjects: posts, " + BY_OFFICE))
                .faults()
                .get(0);
        assertThat(fault.file()).isEqualTo(OFFICE);
        assertThat(fault.detail())
                .isEqualTo("Over the edition 2024, this stands against it in testland/2024.yaml on line 43: Subjects of"
                        + " the kind 'posts' have no such quantity");
    }

    @Test
    void a_source_that_an_amendment_does_not_cite_is_a_fault() {
        assertThat(office("notes: [Nothing.]\n").fault().detail()).isEqualTo("Nothing cites this source");
    }

    @Test
    void local_values_of_the_site_are_read_with_their_citation() {
        Edition edition = amended(county("site:\n  frostDepth: {value: 42 in, " + BY_COUNTY + "}\n"), "county");
        SiteValues.Local local = edition.site().values().get(0);
        assertThat(local.member()).isEqualTo(SiteValues.Member.FROST_DEPTH);
        assertThat(local.citation().text()).isEqualTo("Ordinance, 7, 3");
        assertThat(local.setBy()).isEqualTo("county");
        assertThat(county("site:\n  frostDepth: {value: 42 kN, " + BY_COUNTY + "}\n")
                        .faults()
                        .get(0)
                        .accepted())
                .startsWith("a number in mm");
        assertThat(county("site:\n  rain: {value: 42 in, " + BY_COUNTY + "}\n")
                        .faults()
                        .get(0)
                        .accepted())
                .startsWith("frostDepth");
    }

    @Test
    void amendments_that_touch_different_things_go_together_in_any_order() {
        EditedFiles both = office(HIGHER_GUARD).with(COUNTY, COUNTY_HEAD + loads("3 kN/m2", BY_COUNTY));
        Edition one = amended(both, "office", "county");
        Edition other = amended(both, "county", "office");
        assertThat(one.amendments()).extracting(a -> a.amendment().name()).containsExactly("office", "county");
        assertThat(one.provisions()).usingRecursiveComparison().isEqualTo(other.provisions());
        assertThat(one.loads()).usingRecursiveComparison().isEqualTo(other.loads());
        assertThat(one.amendments().get(0)).isEqualTo(other.amendments().get(1));
        assertThat(one.digest()).isNotEqualTo(other.digest());
        assertThat(amended(both, "office", "county").digest()).isEqualTo(one.digest());
    }

    @Test
    void two_amendments_may_call_different_sources_by_one_key() {
        EditedFiles both =
                office(HIGHER_GUARD).with(COUNTY, (COUNTY_HEAD + loads("3 kN/m2", BY_COUNTY)).replace("law", "house"));
        Edition edition = amended(both, "office", "county");
        assertThat(provision(edition, "guard.height").citation().source().title())
                .isEqualTo("House rules");
        assertThat(edition.loads().imposed().get(0).citation().source().title()).isEqualTo("Ordinance");
    }

    @Test
    void two_amendments_in_conflict_are_refused_at_the_second() {
        EditedFiles both = office(HIGHER_GUARD)
                .with(
                        COUNTY,
                        COUNTY_HEAD
                                + override(
                                        "guard.height",
                                        "limit: {quantity: guard height, atLeast: 1400 mm}, " + BY_COUNTY));
        Amending.Refused refused = refused(both, "office", "county");
        assertThat(refused.index()).isEqualTo(1);
        assertThat(refused.detail())
                .startsWith("The amendment 'county' cannot be laid over those named before it: " + OFFICE
                        + " states this otherwise on line 8");
        assertThat(refused(both, "county", "office").index()).isEqualTo(1);
        assertThat(amended(both, "county").amendments()).hasSize(1);
        assertThat(refused(both, "office", "county")).isEqualTo(refused);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "site:\n  frostDepth: {value: %s in, cite: CITE}\n",
                "sets:\n  en1995:\n    gammaM: {value: 1.%s, cite: CITE}\n",
                "loads:\n  imposed:\n    - {uniform: %s kN/m2, concentrated: 2 kN, category: A, reason: All., cite: CITE}\n"
            })
    void what_two_amendments_state_of_one_thing_must_be_the_same(String content) {
        String text = content.replace("cite: CITE", BY_COUNTY);
        String second = COUNTY_HEAD.replace("amendment: county", "amendment: district");
        String district = "testland/amendments/district.yaml";
        EditedFiles different = county(text.formatted("42")).with(district, second + text.formatted("48"));
        assertThat(refused(different, "county", "district").index()).isEqualTo(1);
        EditedFiles same = county(text.formatted("42")).with(district, second + text.formatted("42"));
        assertThat(amended(same, "county", "district").amendments()).hasSize(2);
        assertThat(amended(same, "county", "district").amendments().get(1).values())
                .isEmpty();
    }

    @Test
    void what_one_amendment_withdraws_another_cannot_override() {
        EditedFiles both = office(HIGHER_GUARD)
                .with(COUNTY, COUNTY_HEAD + "withdraws:\n  - {id: guard.height, " + BY_COUNTY + "}\n");
        assertThat(refused(both, "office", "county").index()).isEqualTo(1);
        assertThat(refused(both, "county", "office").index()).isEqualTo(1);
    }

    @Test
    void an_unknown_amendment_is_told_with_the_nearest_and_one_named_twice_is_refused() {
        Amending.Refused refused = refused(office(HIGHER_GUARD), "office", "ofice");
        assertThat(refused)
                .isEqualTo(new Amending.Refused(
                        1, "The region 'testland' has no amendment 'ofice'.", "office; the nearest is 'office'"));
        assertThat(refused(office(HIGHER_GUARD), "office", "office").detail())
                .isEqualTo("The amendment 'office' is named twice.");
    }

    @Test
    void an_amendment_holds_only_over_the_editions_that_it_amends() {
        EditedFiles files = office(HIGHER_GUARD);
        EditedFiles two = files.with("testland/2026.yaml", files.text(EDITION))
                .with("testland/2026.yaml", "edition: \"2024\"", "edition: \"2026\"")
                .with("testland/2026.yaml", "from: 2024-10-01", "from: 2026-04-01");
        assertThat(two.loaded().edition("testland", "2026", List.of("office")).orElseThrow())
                .isEqualTo(new Amending.Refused(
                        0,
                        "The amendment 'office' does not amend the edition 2026.",
                        "an amendment of that edition, or the edition 2024"));
        assertThat(two.loaded().edition("testland", "1999", List.of("office"))).isEmpty();
    }

    @Test
    void cases_beside_an_amendment_run_over_each_edition_that_it_amends() {
        String path = "testland/cases/amendments/office/guard.yaml";
        EditedFiles good = EditedFiles.good();
        EditedFiles files = office(HIGHER_GUARD).with(path, good.text(EditedFiles.CASES));
        CasesResult read = RulesetLoader.readCases(files, files.loaded());
        assertThat(read).isInstanceOf(CasesResult.Read.class);
        assertThat(((CasesResult.Read) read).files())
                .filteredOn(f -> f.path().equals(path))
                .singleElement()
                .satisfies(f -> assertThat(f.edition().amendments()).hasSize(1));
        EditedFiles misplaced = good.with(path, good.text(EditedFiles.CASES));
        CasesResult faulty = RulesetLoader.readCases(misplaced, misplaced.loaded());
        assertThat(((CasesResult.Faulty) faulty).faults().get(0).detail())
                .isEqualTo("There is no such amendment of testland");
    }
}
