package org.deckplanreview.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** First-fit decreasing, worked by hand, and what holds of any cutting plan. */
class CuttingPlanTest {

    private static final List<Double> STOCK = List.of(2400.0, 3600.0, 4800.0, 6000.0);

    /** 7, 6, 5, 4, 3 into lengths of 10, by hand: 7 + 3, 6 + 4, 5. First-fit in the given order would need no less. */
    @Test
    void the_longest_piece_goes_first_and_each_into_the_first_length_with_room() {
        CuttingPlan plan = CuttingPlan.of(List.of(4.0, 5.0, 7.0, 3.0, 6.0), List.of(10.0), 0);

        assertThat(plan.lengths())
                .extracting(CuttingPlan.Length::piecesMm)
                .containsExactly(List.of(7.0, 3.0), List.of(6.0, 4.0), List.of(5.0));
    }

    @Test
    void each_length_is_bought_as_the_shortest_stock_that_holds_it() {
        CuttingPlan plan = CuttingPlan.of(List.of(3500.0, 2400.0, 1000.0), STOCK, 3);

        assertThat(plan.lengths())
                .containsExactly(
                        new CuttingPlan.Length(6000, List.of(3500.0, 2400.0)),
                        new CuttingPlan.Length(2400, List.of(1000.0)));
    }

    @Test
    void a_saw_cut_between_two_pieces_takes_its_kerf() {
        assertThat(CuttingPlan.of(List.of(3000.0, 2997.0), STOCK, 3).lengths()).hasSize(1);
        assertThat(CuttingPlan.of(List.of(3000.0, 2998.0), STOCK, 3).lengths()).hasSize(2);
    }

    @Test
    void a_piece_as_long_as_the_longest_stock_fits_and_a_longer_one_is_told() {
        CuttingPlan plan = CuttingPlan.of(List.of(6000.0, 6001.0), STOCK, 3);

        assertThat(plan.lengths()).containsExactly(new CuttingPlan.Length(6000, List.of(6000.0)));
        assertThat(plan.overlongMm()).containsExactly(6001.0);
    }

    @Property(tries = 200)
    void a_plan_holds_every_piece_once_and_never_more_than_its_stock(
            @ForAll @Size(max = 60) List<@DoubleRange(min = 50, max = 7000) Double> pieces,
            @ForAll @IntRange(max = 6) int kerf) {
        CuttingPlan plan = CuttingPlan.of(pieces, STOCK, kerf);

        List<Double> planned = new ArrayList<>(plan.overlongMm());
        plan.lengths().forEach(l -> planned.addAll(l.piecesMm()));
        assertThat(planned.stream().sorted().toList())
                .isEqualTo(pieces.stream().sorted().toList());
        assertThat(plan.overlongMm()).allMatch(p -> p > 6000);
        for (CuttingPlan.Length l : plan.lengths()) {
            double needed = l.piecesMm().stream().mapToDouble(p -> p).sum()
                    + (l.piecesMm().size() - 1) * (double) kerf;
            assertThat(needed).isLessThanOrEqualTo(l.stockMm() + 1e-5);
            assertThat(STOCK.stream().filter(s -> s < l.stockMm())).allMatch(s -> s < needed);
        }
    }

    /** Any two lengths together need more than the longest stock, or the second would have gone into the first. */
    @Property(tries = 100)
    void no_two_lengths_could_be_one(@ForAll @Size(max = 30) List<@DoubleRange(min = 50, max = 6000) Double> pieces) {
        List<Double> needed = CuttingPlan.of(pieces, STOCK, 0).lengths().stream()
                .map(l -> l.piecesMm().stream().mapToDouble(p -> p).sum())
                .sorted(Comparator.naturalOrder())
                .toList();
        Stream.of(needed)
                .filter(n -> n.size() > 1)
                .forEach(n -> assertThat(n.get(0) + n.get(1)).isGreaterThan(6000 - 1e-3));
    }

    @Test
    void without_stock_every_piece_is_overlong() {
        assertThat(CuttingPlan.of(List.of(100.0), List.of(), 3).overlongMm())
                .singleElement()
                .satisfies(p -> assertThat(p).isCloseTo(100, within(1e-9)));
    }
}
