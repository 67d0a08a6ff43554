package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.submission.SubjectKind;

/** What makes a deck worse never looks better in a review. */
class MonotonyOfReviewsTest {

    private static final double ROUNDING = 1e-9;
    /** Their timbers' places in {@link SampleDeck}. */
    private static final Map<SubjectKind, Integer> MEMBERS =
            new TreeMap<>(Map.of(SubjectKind.JOISTS, 0, SubjectKind.BEAMS, 1, SubjectKind.BOARDS, 3));

    private static final List<String> FALLING_CLASSES = List.of("C24", "C16", "C14");

    @Provide
    Arbitrary<DrawnDeck> decks() {
        return DrawnDeck.any();
    }

    @Property(tries = 40)
    void more_imposed_load_lowers_no_utilisation_of_a_span_or_footing(
            @ForAll("decks") DrawnDeck deck, @ForAll @IntRange(min = 1001, max = 3000) int thousandths) {
        SampleDeck more = deck.document().with("/use/imposedLoad", kilonewtons(2.5 * thousandths / 1000) + "/m2");
        assertNoneFell(utilisations(deck.document(), f -> true), utilisations(more, f -> true));
    }

    @Property(tries = 30)
    void a_larger_concentrated_load_lowers_no_utilisation_of_a_span_or_footing(
            @ForAll("decks") DrawnDeck deck, @ForAll @IntRange(min = 1001, max = 3000) int thousandths) {
        SampleDeck more = deck.document().with("/use/concentratedLoad", kilonewtons(2.0 * thousandths / 1000));
        assertNoneFell(utilisations(deck.document(), f -> true), utilisations(more, f -> true));
    }

    private static String kilonewtons(double value) {
        return BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).toPlainString() + " kN";
    }

    /**
     * Not for uplift: a cantilever and the span behind it grow together, so that a person on the cantilever's end lifts the
     * tail as before while the deck that holds it down has become heavier.
     */
    @Property(tries = 40)
    void joists_of_longer_span_lower_no_utilisation_but_that_of_uplift(
            @ForAll("decks") DrawnDeck deck, @ForAll @IntRange(min = 1001, max = 1500) int thousandths) {
        assertNoneFell(
                utilisations(deck.document(1), f -> !isUplift(f)),
                utilisations(deck.document(thousandths / 1000.0), f -> !isUplift(f)));
    }

    /**
     * A lower class is lighter too (EN 338:2016, Table 1: mean density 420, 370, 350 kg/m3 for C24, C16, C14) and so puts
     * less on what carries it. What holds is that the members which are made of it come out no better: their strength and
     * stiffness fall by far more than their weight. Not for uplift, which has no strength in it, and where weight holds some
     * supports down and lifts others; nor for the bearing of the beam under a joist, which the joist's class does not weaken.
     */
    @Property(tries = 20)
    void members_of_a_lower_strength_class_come_out_no_better(@ForAll("decks") DrawnDeck deck) {
        MEMBERS.forEach((members, timber) -> {
            SortedMap<String, Double> better = new TreeMap<>();
            for (String strengthClass : FALLING_CLASSES) {
                SortedMap<String, Double> these = utilisations(
                        deck.document().with(strengthClassOf(timber), strengthClass),
                        f -> f.subject().kind() == members && isSpan(f) && !isUplift(f) && !isOfCarrier(f));
                assertNoneFell(better, these);
                better = these;
            }
        });
    }

    /** All timbers at once: no span comes out better, not even one that carries lighter members. */
    @Property(tries = 20)
    void a_deck_of_a_lower_strength_class_throughout_comes_out_no_better_in_its_spans(@ForAll("decks") DrawnDeck deck) {
        SortedMap<String, Double> better = new TreeMap<>();
        for (String strengthClass : FALLING_CLASSES) {
            SampleDeck all = deck.document();
            MEMBERS.values().forEach(timber -> all.with(strengthClassOf(timber), strengthClass));
            SortedMap<String, Double> these = utilisations(all, f -> isSpan(f) && !isUplift(f));
            assertNoneFell(better, these);
            better = these;
        }
    }

    private static String strengthClassOf(int timber) {
        return "/timbers/" + timber + "/strengthClass";
    }

    private static boolean isSpan(Finding finding) {
        return finding.provision().concern() == Concern.SPAN;
    }

    private static boolean isOfCarrier(Finding finding) {
        return finding.provision().id().equals("joist.carrier-bearing");
    }

    private static boolean isUplift(Finding finding) {
        return finding.provision().id().endsWith(".uplift");
    }

    /**
     * The worst utilisation of each provision of spans and footings: members that are alike have one finding together. What
     * cannot be told, as where more than ordinary fixings must hold a member down, counts as worse than any.
     */
    private static SortedMap<String, Double> utilisations(SampleDeck deck, Predicate<Finding> wanted) {
        SortedMap<String, Double> worst = new TreeMap<>();
        for (Finding f : BuiltIn.assess(deck.submission()).findings()) {
            boolean ofLoad =
                    f.provision().concern() == Concern.SPAN || f.provision().concern() == Concern.FOOTING;
            if (ofLoad && wanted.test(f)) {
                if (f.determination() == Determination.UNDETERMINED) {
                    worst.put(f.provision().id(), Double.MAX_VALUE);
                }
                f.utilisation().ifPresent(u -> worst.merge(f.provision().id(), u, Math::max));
            }
        }
        return worst;
    }

    private static void assertNoneFell(SortedMap<String, Double> before, SortedMap<String, Double> after) {
        assertThat(after).isNotEmpty();
        assertThat(after.keySet()).containsAll(before.keySet());
        before.forEach((place, utilisation) -> assertThat(after.get(place))
                .as(place)
                .isGreaterThanOrEqualTo(utilisation - ROUNDING * Math.abs(utilisation)));
    }
}
