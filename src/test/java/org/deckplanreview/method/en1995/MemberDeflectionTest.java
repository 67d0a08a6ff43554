package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.en1995.LinearAnalysis.Share;
import org.junit.jupiter.api.Test;

/** EN 1995-1-1, 2.2.3 and 7.2. Service class 3, k_def 2.0; category A, psi2 0.3: w_fin = 3 w_G + 1.6 w_Q. */
class MemberDeflectionTest {

    private static final Method INSTANTANEOUS = new MemberDeflection(DeflectionState.INSTANTANEOUS);
    private static final Method FINAL = new MemberDeflection(DeflectionState.FINAL);

    private static StandardParameters limits() {
        return StandardParameters.ofEurocodes().with("spanRatio", 300).with("cantileverRatio", 150);
    }

    private static Share deflection(double... mm) {
        return new Share(
                Arrays.stream(mm).mapToObj(d -> new double[] {0, 0, d, 0}).toList(),
                List.of(new double[3], new double[3]),
                1);
    }

    private static DeckPiece sagging(double permanentMm, double imposedMm) {
        return DeckPiece.joist()
                .span(3000, 50)
                .under(a ->
                        a.with(Action.PERMANENT, deflection(permanentMm)).with(Action.IMPOSED, deflection(imposedMm)));
    }

    private static Evaluation.Measured measured(DeckPiece piece, Method method) {
        return (Evaluation.Measured) piece.evaluate(method, limits());
    }

    private static double found(DeckPiece piece, Method method) {
        return ((Measure) measured(piece, method).found()).value();
    }

    @Test
    void ten_mm_on_loading_is_the_limit_of_a_span_of_3000_mm_at_a_300th() {
        Evaluation.Measured m = measured(sagging(4, 6), INSTANTANEOUS);
        assertThat(m.utilisation()).isEqualTo(1);
        assertThat(((Measure) m.allowed()).value()).isEqualTo(10);
        assertThat(m.remark()).isEqualTo("in the span, combination 6.14b imposed");
        assertThat(measured(sagging(4, 5.9), INSTANTANEOUS).utilisation()).isLessThan(1);
        assertThat(measured(sagging(4, 6.1), INSTANTANEOUS).utilisation()).isGreaterThan(1);
    }

    /** 3 * 2 + 1.6 * 2.5 = 10 mm. */
    @Test
    void creep_counts_in_the_final_deflection() {
        assertThat(measured(sagging(2, 2.5), FINAL).utilisation()).isCloseTo(1, within(1e-12));
        assertThat(found(sagging(2, 2.5), INSTANTANEOUS)).isEqualTo(4.5);
    }

    /** 3.2(4): k_def 3.0, so 4 * 2 + 1.9 * 2.5 = 12.75 mm. */
    @Test
    void timber_put_in_wet_creeps_more() {
        assertThat(found(sagging(2, 2.5).wet(true), FINAL)).isCloseTo(12.75, within(1e-12));
    }

    @Test
    void that_timber_is_not_wet_is_an_assumption_where_nothing_is_said() {
        assertThat(measured(sagging(2, 2.5).wet(null), FINAL).assumptions()).hasSize(1);
        assertThat(measured(sagging(2, 2.5).wet(false), FINAL).assumptions()).isEmpty();
        assertThat(found(sagging(2, 2.5).wet(null), FINAL)).isCloseTo(10, within(1e-12));
    }

    /** Category C: psi2 0.6, so 3 * 2 + 2.2 * 2.5 = 11.5 mm. */
    @Test
    void assembly_areas_creep_more() {
        assertThat(found(sagging(2, 2.5).category("C"), FINAL)).isCloseTo(11.5, within(1e-12));
    }

    @Test
    void a_cantilever_has_its_own_limit() {
        DeckPiece piece = DeckPiece.joist()
                .length(3625)
                .support(25, 50)
                .support(3025, 50)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 25, 3025)
                .stretch(Span.Kind.CANTILEVER_AT_END, 3025, 3625)
                .under(a -> a.with(Action.PERMANENT, deflection(0, 0)).with(Action.IMPOSED, deflection(5, 4)));
        Evaluation.Measured m = measured(piece, INSTANTANEOUS);
        assertThat(m.utilisation()).isEqualTo(1);
        assertThat(((Measure) m.allowed()).value()).isEqualTo(4);
        assertThat(m.remark()).startsWith("in the cantilever at its end");
    }

    /** EN 1990 (6.14b): G + Q + 0.5 S = 2 + 4 + 0.5 * 4 = 8; G + S + 0.7 Q = 2 + 4 + 2.8 = 8.8 mm. */
    @Test
    void snow_can_lead() {
        DeckPiece piece = DeckPiece.joist()
                .span(3000, 50)
                .under(a -> a.with(Action.PERMANENT, deflection(2))
                        .with(Action.IMPOSED, deflection(4))
                        .with(Action.SNOW, deflection(4)));
        assertThat(found(piece, INSTANTANEOUS)).isCloseTo(8.8, within(1e-12));
        assertThat(measured(piece, INSTANTANEOUS).remark()).contains("6.14b snow leading imposed");
    }

    @Test
    void a_missing_strength_class_leaves_it_open() {
        assertThat(sagging(1, 1).ofUnknownClass().evaluate(FINAL, limits())).isInstanceOf(Evaluation.Missing.class);
    }
}
