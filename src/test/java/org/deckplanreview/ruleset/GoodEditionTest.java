package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Word;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.api.Test;

/** What a good edition resolves to. */
class GoodEditionTest {

    private final Edition edition = EditedFiles.good().edition();

    private Provision provision(String id) {
        return edition.provisions().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private Parameters bending() {
        return ((Rule.Calculation) provision("joist.bending").rule()).parameters();
    }

    @Test
    void the_edition_says_what_the_file_says() {
        assertThat(edition.region()).isEqualTo("testland");
        assertThat(edition.regionTitle()).isEqualTo("Testland");
        assertThat(edition.name()).isEqualTo("2024");
        assertThat(edition.title()).isEqualTo("Provisions of Testland");
        assertThat(edition.binding()).isEqualTo(new Binding.ByDate(LocalDate.of(2024, 10, 1), Optional.empty()));
        assertThat(edition.cautions()).containsExactly("Cut ends take up water.");
        assertThat(edition.referrals()).isEmpty();
        assertThat(edition.notes()).containsExactly("An invented region.");
        assertThat(edition.sources())
                .extracting(Source::key)
                .containsExactly("guarding", "na1995", "habit", "en338", "en1995");
        assertThat(edition.basedOn()).extracting(Edition.BasedOn::name).containsExactly("en338", "en1995");
        assertThat(edition.basedOn()).allSatisfy(b -> assertThat(b.digest()).matches("sha256:[0-9a-f]{64}"));
    }

    @Test
    void provisions_keep_the_order_of_the_file() {
        assertThat(edition.provisions())
                .extracting(Provision::id)
                .containsExactly("guard.height", "post.treatment", "post.preservative", "joist.bending");
        assertThat(edition.provisions()).extracting(Provision::order).containsExactly(0, 1, 2, 3);
    }

    @Test
    void a_provision_has_all_its_parts() {
        Provision guard = provision("guard.height");
        assertThat(guard.title()).isEqualTo("Height of a guard");
        assertThat(guard.concern()).isEqualTo(Concern.GUARDING);
        assertThat(guard.obligation()).isEqualTo(Obligation.SHALL);
        assertThat(guard.subjects()).isEqualTo(SubjectKind.EDGES);
        assertThat(guard.advice()).isEqualTo("Raise the guard.");
        assertThat(guard.caution()).contains("A low guard does not hold a fall.");
        assertThat(guard.referral()).isEmpty();
        assertThat(provision("post.treatment").referral()).contains("Ask a surveyor.");
        assertThat(guard.citation().text()).isEqualTo("Guarding of drops, 2013, Diagram 3.1");
        assertThat(guard.citation().confirmedBy()).isEqualTo(Confirmation.PAGE);
        assertThat(guard.citation().on()).isEqualTo(LocalDate.of(2026, 11, 25));
        assertThat(guard.when())
                .isEqualTo(new Condition.All(List.of(new Condition.Compare("drop", Sense.OVER, Measure.mm(600)))));
    }

    @Test
    void a_limit_has_a_row_for_each_condition() {
        Rule.Limit limit = (Rule.Limit) provision("guard.height").rule();
        assertThat(limit.quantity()).isEqualTo("guard height");
        assertThat(limit.sense()).isEqualTo(Sense.AT_LEAST);
        assertThat(limit.rows())
                .containsExactly(
                        new Rule.Row(
                                new Condition.All(List.of(
                                        new Condition.OneOf("occupancy", List.of("single-dwelling", "public")))),
                                List.of(Measure.mm(1100))),
                        new Rule.Row(Condition.ALWAYS, List.of(Measure.mm(1200))));
    }

    @Test
    void a_rising_word_and_one_of_several_words_can_be_asked_for() {
        assertThat(provision("post.treatment").rule())
                .isEqualTo(new Rule.Limit(
                        "use class", Sense.AT_LEAST, List.of(new Rule.Row(Condition.ALWAYS, List.of(new Word("4"))))));
        Provision preservative = provision("post.preservative");
        assertThat(preservative.when())
                .isEqualTo(new Condition.All(List.of(new Condition.Is("cut ends treated", true))));
        assertThat(((Rule.Limit) preservative.rule()).sense()).isEqualTo(Sense.ONE_OF);
        assertThat(((Rule.Limit) preservative.rule()).rows().get(0).values())
                .containsExactly(new Word("copper"), new Word("creosote"));
    }

    @Test
    void a_flag_can_be_asked_for() {
        Edition edition = EditedFiles.good()
                .with(
                        EditedFiles.EDITION,
                        "{quantity: preservative, oneOf: [{values: [copper, creosote]}]}",
                        "{quantity: cut ends treated, is: true}")
                .edition();
        assertThat(edition.provisions().get(2).rule())
                .isEqualTo(new Rule.Limit(
                        "cut ends treated",
                        Sense.EQUAL,
                        List.of(new Rule.Row(Condition.ALWAYS, List.of(new Flag(true))))));
    }

    @Test
    void loads_may_know_no_concentrated_load_and_no_category() {
        Edition plain = EditedFiles.good()
                .with(EditedFiles.EDITION, "      concentrated: 2 kN\n      category: A\n", "")
                .edition();
        LoadRules.ImposedRow low = plain.loads().imposed().get(0);
        assertThat(low.concentrated()).isEmpty();
        assertThat(low.category()).isEmpty();
    }

    @Test
    void a_parameter_that_a_ruleset_may_leave_out_is_there_only_where_it_is_given() {
        assertThat(edition.loads().parameters().has("leastDead")).isFalse();
        Edition heavy = EditedFiles.good()
                .with(
                        EditedFiles.EDITION,
                        "  with:\n    concentratedShare",
                        "  with:\n    leastDead: {value: 10 psf, cite: {source: habit, confirmed: {by: practice, on:"
                                + " 2026-11-25}}}\n    concentratedShare")
                .edition();
        assertThat(heavy.loads().parameters().has("leastDead")).isTrue();
        assertThat(heavy.loads().parameters().number("leastDead", MeasureUnit.POUND_FORCE_PER_SQUARE_FOOT))
                .isCloseTo(10, within(1e-12));
    }

    @Test
    void imposed_loads_keep_their_rows() {
        assertThat(edition.loads().imposed()).hasSize(2);
        LoadRules.ImposedRow low = edition.loads().imposed().get(0);
        assertThat(low.when())
                .isEqualTo(new Condition.All(List.of(
                        new Condition.OneOf("occupancy", List.of("single-dwelling")),
                        new Condition.Compare("largest drop", Sense.AT_MOST, Measure.mm(600)))));
        assertThat(low.uniform()).isEqualTo(Measure.of(1.5, MeasureUnit.KILONEWTON_PER_SQUARE_METRE));
        assertThat(low.concentrated()).contains(Measure.of(2, MeasureUnit.KILONEWTON));
        assertThat(low.category()).contains("A");
        assertThat(low.reason()).isEqualTo("A low deck of a dwelling.");
        assertThat(edition.loads().imposed().get(1).when()).isEqualTo(Condition.ALWAYS);
        assertThat(edition.loads().parameters().number("concentratedShare", MeasureUnit.RATIO))
                .isEqualTo(0.5);
        assertThat(edition.loads().parameters().flag("shear")).isTrue();
    }

    @Test
    void parameters_come_from_the_provision_then_from_the_standards() {
        assertThat(bending().number("ksys", MeasureUnit.RATIO)).isEqualTo(1.05);
        assertThat(bending().source("ksys")).isEqualTo("EN 1995-1-1:2004+A1:2008+A2:2014, 6.1.6 (6.11)");
        assertThat(bending().number("contactLength", MeasureUnit.MILLIMETRE)).isEqualTo(30);
        assertThat(bending().number("contactLength", MeasureUnit.METRE_)).isEqualTo(0.03);
        assertThat(bending().source("contactLength")).isEqualTo("EN 1995-1-1:2004+A1:2008+A2:2014, 6.1.5(1)");
        assertThat(bending().word("serviceClass")).isEqualTo("3");
        assertThat(bending()
                        .table("strengthClasses")
                        .find("class", "C24")
                        .orElseThrow()
                        .number("fmk", MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE))
                .isEqualTo(24);
        assertThat(bending().table("kmod").source()).isEqualTo("EN 1995-1-1:2004+A1:2008+A2:2014, Table 3.1");
        assertThat(bending().table("kmod").rows())
                .extracting(r -> r.word("duration"))
                .containsExactly("permanent", "medium-term");
    }

    @Test
    void what_the_region_sets_holds_and_remembers_what_it_replaced() {
        assertThat(bending().number("gammaM", MeasureUnit.RATIO)).isEqualTo(1.35);
        assertThat(bending().source("gammaM"))
                .isEqualTo("EN 1995-1-1:2004+A1:2008+A2:2014, Table 2.3; "
                        + "set by NA to EN 1995-1-1, Table NA.3 (was 1.3)");
    }

    @Test
    void what_was_recalled_from_memory_is_told_apart() {
        assertThat(bending().recalled()).containsExactly("contactLength", "gammaM");
        assertThat(edition.loads().parameters().recalled())
                .as("practice has no document that it could be recalled from")
                .isEmpty();
    }

    @Test
    void a_table_can_be_set_otherwise() {
        Edition edition = EditedFiles.good()
                .with(EditedFiles.EDITION, "    gammaM: {value: 1.35,", "    kmod: {rows: [[\"3\", permanent, 0.45]],")
                .edition();
        Parameters bending = ((Rule.Calculation) edition.provisions().get(3).rule()).parameters();
        assertThat(bending.number("gammaM", MeasureUnit.RATIO)).isEqualTo(1.3);
        assertThat(bending.table("kmod").rows()).hasSize(1);
        assertThat(bending.table("kmod").rows().get(0).number("kmod", MeasureUnit.RATIO))
                .isEqualTo(0.45);
        assertThat(bending.source("kmod"))
                .isEqualTo("EN 1995-1-1:2004+A1:2008+A2:2014, Table 3.1; set by NA to EN 1995-1-1, Table NA.3");
    }

    @Test
    void of_two_standards_with_a_value_the_later_one_counts() {
        String more = "values:\n  gammaM: {value: 9, clause: \"1\", confirmed: {by: page, on: 2026-11-25}}\ntables:";
        EditedFiles both = EditedFiles.good().with(EditedFiles.EN338, "tables:", more);
        assertThat(gammaM(both)).isEqualTo(1.35);
        assertThat(gammaM(both.with(EditedFiles.EDITION, "[en338, en1995]", "[en1995, en338]")))
                .isEqualTo(9);
    }

    private static double gammaM(EditedFiles files) {
        return ((Rule.Calculation) files.edition().provisions().get(3).rule())
                .parameters()
                .number("gammaM", MeasureUnit.RATIO);
    }

    @Test
    void asking_for_what_was_not_declared_is_a_fault_of_the_method() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bending().number("kcr", MeasureUnit.RATIO))
                .withMessageContaining("kcr");
        assertThatIllegalArgumentException().isThrownBy(() -> bending().word("gammaM"));
        assertThatIllegalArgumentException().isThrownBy(() -> bending().table("gammaM"));
        assertThatIllegalArgumentException().isThrownBy(() -> bending().number("gammaM", MeasureUnit.MILLIMETRE));
    }

    @Test
    void the_last_row_of_a_limit_may_have_a_condition() {
        Edition edition = EditedFiles.good()
                .with(EditedFiles.EDITION, "        - {value: 1200 mm}\n", "")
                .edition();
        assertThat(((Rule.Limit) edition.provisions().get(0).rule()).rows()).hasSize(1);
    }

    @Test
    void a_word_that_other_readers_of_yaml_take_for_a_flag_stays_a_word() {
        Edition edition = EditedFiles.good()
                .with(EditedFiles.EDITION, "title: Provisions of Testland", "title: no")
                .edition();
        assertThat(edition.title()).isEqualTo("no");
        assertThat(Optional.of(edition.provisions().get(0).citation().on())).contains(LocalDate.of(2026, 11, 25));
    }
}
