package org.deckplanreview.method.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.en1995.DeckPiece;
import org.deckplanreview.method.en1995.LinearAnalysis.Share;
import org.deckplanreview.method.en1995.StandardParameters;
import org.junit.jupiter.api.Test;

/** Uplift at a support against EN 1990, 6.4.2 and Table A1.2(A): 0.9 on what holds down, 1.1 and 1.5 on what lifts. */
class MemberUpliftTest {

    private static final Method UPLIFT = new MemberUplift();

    /** 0.9 * 400 - 1.5 * 240 = 0. */
    @Test
    void weight_that_just_holds_a_support_down_is_used_fully() {
        Evaluation.Measured m = measured(lifted(400, 240), 0);
        assertThat(m.utilisation()).isCloseTo(1, within(1e-12));
        assertThat(((Measure) m.found()).value()).isCloseTo(0, within(1e-9));
        assertThat(((Measure) m.allowed()).value()).isZero();
        assertThat(measured(lifted(400, 239), 0).utilisation()).isLessThan(1);
        assertThat(measured(lifted(400, 0), 0).utilisation()).isZero();
    }

    /** 0.9 * 400 + 300 = 660 = 1.5 * 440. */
    @Test
    void ordinary_fixings_hold_down_what_they_are_taken_to_resist() {
        Evaluation.Measured m = measured(lifted(400, 440), 300);
        assertThat(m.utilisation()).isCloseTo(1, within(1e-12));
        assertThat(((Measure) m.found()).value()).isCloseTo(-300, within(1e-9));
        assertThat(((Measure) m.allowed()).value()).isEqualTo(-300);
        assertThat(m.assumptions()).anyMatch(a -> a.contains("300 N"));
    }

    /** Beyond it an assumption fails nobody: the resistance is asked for. */
    @Test
    void more_lift_than_ordinary_fixings_hold_asks_for_a_resistance() {
        assertThat(lifted(400, 441).evaluate(UPLIFT, holdDown(300)))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs().get(0).pointer().value())
                                .isEqualTo("/platforms/0/joists/holdDownResistance"));
    }

    /** 1.1 * 100 = 110: permanent load that lifts counts with more than what holds down. */
    @Test
    void a_support_that_permanent_load_lifts_needs_more_than_that_load() {
        assertThat(lifted(-100, 0).evaluate(UPLIFT, holdDown(109))).isInstanceOf(Evaluation.Missing.class);
        assertThat(measured(lifted(-100, 0), 110).utilisation()).isCloseTo(1, within(1e-12));
    }

    private static Evaluation.Measured measured(DeckPiece piece, double holdDownN) {
        return (Evaluation.Measured) piece.evaluate(UPLIFT, holdDown(holdDownN));
    }

    private static StandardParameters holdDown(double n) {
        return StandardParameters.ofEurocodes().with("holdDown", n, MeasureUnit.NEWTON_);
    }

    private static DeckPiece lifted(double permanentN, double liftN) {
        return DeckPiece.joist()
                .span(3600, 50)
                .under(a -> a.with(
                                Action.PERMANENT,
                                new Share(
                                        List.of(new double[4]),
                                        List.of(new double[] {0, permanentN, permanentN}, new double[] {0, 900, 900}),
                                        900 + permanentN))
                        .with(
                                Action.IMPOSED,
                                new Share(
                                        List.of(new double[4]),
                                        List.of(new double[] {0, 0, -liftN}, new double[] {0, 900, 0}),
                                        900 - liftN)));
    }
}
