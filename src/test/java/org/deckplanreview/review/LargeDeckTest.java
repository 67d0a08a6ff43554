package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.loadpath.LoadModel;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.submission.Fault;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SubmissionReader;
import org.junit.jupiter.api.Test;

/** Documents at the service's own limits of size. */
class LargeDeckTest {

    private static final double IMPOSED_N_PER_MM2 = 2.5e-3;

    /** 3 x 83 joists over 20 beams each. */
    private static LargeDeck largest() {
        return new LargeDeck()
                .platforms(3)
                .joists(83)
                .beams(20, 10)
                .heavyItems(20)
                .corners(100);
    }

    @Test
    void the_largest_deck_is_reviewed() {
        assertThat(BuiltIn.REVIEWER.review(largest().bytes())).isInstanceOf(ReviewResult.Reviewed.class);
    }

    /** Equilibrium: load times the areas that the joists carry, and the heavy items' weight. */
    @Test
    void the_imposed_load_of_a_large_deck_arrives_at_its_footings() {
        LargeDeck deck = new LargeDeck()
                .platforms(2)
                .joists(20)
                .beams(20, 10)
                .heavyItems(20)
                .corners(40);
        Layout layout = Layout.derive(((ReadResult.Read) new SubmissionReader().read(deck.bytes())).submission());
        LoadPath path = LoadPath.derive(layout, model(layout.platforms().size()));

        double arrived = 0;
        double area = 0;
        for (PlatformLayout p : layout.platforms()) {
            for (FootingPlace f : p.footings()) {
                arrived += path.footing(f).get().imposedFullN();
            }
            for (JoistLine j : p.joists()) {
                area += j.strips().stream()
                        .filter(s -> s.heavyItem().isEmpty())
                        .mapToDouble(s -> s.areaMm2())
                        .sum();
            }
        }
        // Every other item is variable; each weighs 8 kN.
        double expected = IMPOSED_N_PER_MM2 * area + 10 * 8000;
        assertThat(arrived).isCloseTo(expected, within(1e-9 * expected));
    }

    @Test
    void joists_beyond_the_limits_are_faults() {
        assertThat(only(new LargeDeck().joists(401)).accepted()).contains("at most 400 joists");
        assertThat(only(new LargeDeck().platforms(3).joists(334)))
                .isEqualTo(new Fault(
                        Pointer.of("/platforms"),
                        "The deck would have 1002 joists",
                        "at most 1000 joists on all platforms together"));
        assertThat(only(new LargeDeck().joists(251).beams(20, 2)))
                .isEqualTo(new Fault(
                        Pointer.of("/platforms"),
                        "The joists of each platform times its beams add up to 5020",
                        "at most 5000: fewer joists, or fewer beams on platforms with many joists"));
        assertThat(new SubmissionReader()
                        .read(new LargeDeck().joists(250).beams(20, 2).bytes()))
                .isInstanceOf(ReadResult.Read.class);
    }

    private static Fault only(LargeDeck deck) {
        ReadResult result = new SubmissionReader().read(deck.bytes());
        List<Fault> faults = ((ReadResult.Invalid) result).faults();
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }

    /** Mean stiffness and density of C24: EN 338:2016, Table 1, from memory. */
    private static LoadModel model(int platforms) {
        TreeMap<String, LoadModel.Material> materials = new TreeMap<>();
        materials.put("C24", new LoadModel.Material(11000, 690, 420));
        return new LoadModel(
                IntStream.range(0, platforms)
                        .mapToObj(
                                i -> new LoadModel.PlatformLoads(Derived.known(2.5), "", Derived.known(2000.0), 0, 0.5))
                        .toList(),
                materials,
                24,
                9.81,
                true,
                1.2,
                0.5,
                OptionalDouble.empty(),
                new LoadModel.OnEdges(0, Derived.known(0.0), Derived.known(0.0), new TreeMap<>()));
    }
}
