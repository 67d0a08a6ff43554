package org.deckplanreview.loadpath;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.loadpath.Effects.SpanEffects;

/** What boards pass on of a concentrated load, against a grillage of all joists and boards. */
class SharingTest {

    private static final double PITCH = 150;
    private static final double LOAD = 2000;
    private static final double E = 11000;
    private static final double JOIST_EI = E * 47 * 145 * 145 * 145 / 12;
    private static final double BOARD_EI = E * 145 * 28 * 28 * 28 / 12;

    /** Joists under boards of 145 by 28 mm at 150 mm: how many, how far apart, their spans, and a cantilever. */
    record Field(int joists, int spacingMm, List<Integer> spansMm, int cantileverMm) {
        double lengthMm() {
            return spansMm.stream().mapToInt(Integer::intValue).sum() + cantileverMm;
        }
    }

    @Provide
    Arbitrary<Field> fields() {
        return Combinators.combine(
                        Arbitraries.of(3, 4, 7),
                        Arbitraries.integers().between(300, 600),
                        Arbitraries.integers()
                                .between(1000, 4500)
                                .list()
                                .ofMinSize(1)
                                .ofMaxSize(2),
                        Arbitraries.of(0, 0, 200, 400))
                .as(Field::new);
    }

    @Property(tries = 40)
    void a_joist_is_never_taken_to_bend_less_than_nineteen_twentieths_of_what_the_grillage_says(
            @ForAll("fields") Field field) {
        int loaded = field.joists / 2;
        DeckFixture deck = DeckFixture.deck().joists(field.joists, field.spacingMm, field.lengthMm());
        TreeSet<Double> supports = new TreeSet<>(List.of(0.0));
        for (int span : field.spansMm) {
            supports.add(supports.last() + span);
        }
        supports.forEach(deck::ledgerAt);
        TreeSet<Double> places = new TreeSet<>(supports);
        for (double x = PITCH / 2; x <= field.lengthMm(); x += PITCH) {
            places.add(x);
        }
        places.add(field.lengthMm());
        double[] all = places.stream().mapToDouble(Double::doubleValue).toArray();
        boolean[] supported = new boolean[all.length];
        for (int i = 0; i < all.length; i++) {
            supported[i] = supports.contains(all[i]);
        }
        Grillage grillage = new Grillage(field.joists, all, supported, JOIST_EI, BOARD_EI, field.spacingMm);
        double exact = 0;
        for (int i = 0; i < all.length; i++) {
            exact = supported[i] ? exact : Math.max(exact, grillage.largestMomentNmm(loaded, i, LOAD));
        }
        Layout layout = deck.layout();
        double rule = deck
                .loadPath(layout)
                .member(layout.platforms().get(0).joists().get(loaded))
                .get()
                .effects(new ActionFactors(0, 0, 1, 0))
                .spans()
                .stream()
                .mapToDouble(SharingTest::largest)
                .max()
                .orElseThrow();
        assertThat(rule).isGreaterThanOrEqualTo(0.95 * exact);
    }

    private static double largest(SpanEffects span) {
        return Math.max(span.sagging().value(), span.hogging().value());
    }
}
