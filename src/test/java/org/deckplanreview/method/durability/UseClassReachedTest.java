package org.deckplanreview.method.durability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.GivenParameters;
import org.deckplanreview.quantity.PaperDeck;
import org.deckplanreview.submission.SubjectKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Use classes in the order of EN 335:2013; natural durability read as EN 460:1994, Table 1 without reserve (both from memory).
 * Joists of {@link PaperDeck} are timber 0.
 */
class UseClassReachedTest {

    @ParameterizedTest
    @CsvSource({
        "UC4, UC4, 0",
        "UC5, UC4, 0",
        "UC3.2, UC4, 2",
        "UC3.1, UC4, 3",
        "UC3.2, UC3.2, 0",
        "UC3.1, UC3.2, 2",
        "UC1, UC3.2, 4"
    })
    void treatment_reaches_its_class_and_all_below(String treatedFor, String needed, double utilisation) {
        PaperDeck deck = new PaperDeck().with("/timbers/0/treatment/useClass", treatedFor);
        Evaluation.Measured m = measured(evaluate(deck, needed));
        assertThat(m.found()).isEqualTo(new Word(treatedFor));
        assertThat(m.allowed()).isEqualTo(new Word(needed));
        assertThat(m.utilisation()).isEqualTo(utilisation);
        assertThat(m.remark()).isEqualTo("J, by treatment");
    }

    @ParameterizedTest
    @CsvSource({"1, true, UC4", "2, true, UC3.2", "3, true, UC3.1", "4, true, UC2", "5, true, UC1", "1, false, UC1"})
    void heartwood_reaches_by_nature_and_sapwood_next_to_nothing(
            int heartwoodClass, boolean heartwoodOnly, String reached) {
        PaperDeck deck = natural(heartwoodClass, heartwoodOnly).without("/timbers/0/treatment");
        assertThat(measured(evaluate(deck, "UC4")).found()).isEqualTo(new Word(reached));
    }

    @Test
    void the_better_of_treatment_and_nature_counts() {
        Evaluation.Measured byNature = measured(evaluate(natural(1, true), "UC4"));
        assertThat(byNature.found()).isEqualTo(new Word("UC4"));
        assertThat(byNature.remark()).isEqualTo("J, by natural durability");
        Evaluation.Measured byTreatment = measured(evaluate(natural(1, false), "UC4"));
        assertThat(byTreatment.found()).isEqualTo(new Word("UC3.2"));
        assertThat(byTreatment.remark()).isEqualTo("J, by treatment");
    }

    @Test
    void timber_of_which_neither_is_known_needs_one() {
        assertThat(evaluate(new PaperDeck().without("/timbers/0/treatment"), "UC4"))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly("/timbers/0/treatment"));
    }

    @Test
    void a_treatment_that_names_only_its_use_category_needs_its_use_class() {
        PaperDeck deck = new PaperDeck()
                .without("/timbers/0/treatment/useClass")
                .with("/timbers/0/treatment/useCategory", "UC4A");
        assertThat(evaluate(deck, "UC4"))
                .isEqualTo(new Evaluation.Missing(List.of(new Need(
                        Pointer.of("/timbers/0/treatment/useClass"),
                        "the use class of EN 335 that J is treated for, for example UC4"))));
    }

    @Test
    void what_nature_reaches_needs_no_use_class_of_the_treatment() {
        PaperDeck deck = natural(2, true)
                .without("/timbers/0/treatment/useClass")
                .with("/timbers/0/treatment/useCategory", "UC3B");
        assertThat(measured(evaluate(deck, "UC3.2")).found()).isEqualTo(new Word("UC3.2"));
        assertThat(evaluate(deck, "UC4")).isInstanceOf(Evaluation.Missing.class);
    }

    @Test
    void heartwood_need_not_reach_what_a_treatment_must() {
        PaperDeck oak = natural(2, true).without("/timbers/0/treatment");
        assertThat(measured(evaluate(oak, "UC4", "UC3.2")).utilisation()).isZero();
        assertThat(measured(evaluate(natural(3, true).without("/timbers/0/treatment"), "UC4", "UC3.2"))
                        .utilisation())
                .isEqualTo(2);
        assertThat(measured(evaluate(new PaperDeck(), "UC4", "UC3.2")).utilisation())
                .isEqualTo(2);
    }

    @Test
    void a_use_class_that_no_standard_knows_is_a_fault_of_the_ruleset() {
        assertThatThrownBy(() -> evaluate(new PaperDeck(), "UC9"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'UC9' is not a use class of EN 335");
    }

    private static PaperDeck natural(int heartwoodClass, boolean heartwoodOnly) {
        return new PaperDeck()
                .withJson(
                        "/timbers/0/naturalDurability",
                        "{\"heartwoodClass\": " + heartwoodClass + ", \"heartwoodOnly\": " + heartwoodOnly + "}");
    }

    private static Evaluation evaluate(PaperDeck deck, String needed) {
        return evaluate(deck, needed, needed);
    }

    private static Evaluation evaluate(PaperDeck deck, String needed, String neededOfHeartwood) {
        Map<String, Value> natural = new LinkedHashMap<>();
        natural.put("1", new Word("UC4"));
        natural.put("2", new Word("UC3.2"));
        natural.put("3", new Word("UC3.1"));
        natural.put("4", new Word("UC2"));
        natural.put("5", new Word("UC1"));
        GivenParameters parameters = new GivenParameters()
                .with("neededUseClass", needed)
                .with("neededOfHeartwood", neededOfHeartwood)
                .table("naturalDurability", "heartwoodClass", "useClass", natural);
        return Durability.methods().get(0).evaluate(deck.subject(SubjectKind.JOISTS), parameters, deck.context());
    }

    private static Evaluation.Measured measured(Evaluation e) {
        assertThat(e).isInstanceOf(Evaluation.Measured.class);
        return (Evaluation.Measured) e;
    }
}
