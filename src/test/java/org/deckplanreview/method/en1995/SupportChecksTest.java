package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.en1995.LinearAnalysis.Share;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.NotchSide;
import org.junit.jupiter.api.Test;

/**
 * Shear, notches and bearing: EN 1995-1-1, 6.1.7, 6.5.2, 6.1.5. By hand for a joist of C24 in
 * medium-term: f_v,d = 0.65 * 1.1 * 4.0 / 1.3 = 2.2 N/mm2, f_c,90,d = 0.65 * 1.1 * 2.5 / 1.3 = 1.375 N/mm2.
 */
class SupportChecksTest {

    private static final Method SHEAR = new MemberShear();
    private static final Method NOTCH = new MemberNotch();
    private static final Method BEARING = new MemberBearing();
    private static final Method CARRIER = new CarrierBearing();

    private static StandardParameters parameters() {
        return StandardParameters.ofEurocodes();
    }

    /** Shear and reaction of 1.5 Q at both supports. */
    private static DeckPiece forced(DeckPiece piece, double designN) {
        double q = designN / 1.5;
        double[] support = {q, q, q};
        return piece.under(
                a -> a.with(Action.IMPOSED, new Share(List.of(new double[4]), List.of(support, support), 2 * q)));
    }

    private static Evaluation.Measured measured(DeckPiece piece, Method method, StandardParameters parameters) {
        return (Evaluation.Measured) piece.evaluate(method, parameters);
    }

    private static double utilisation(DeckPiece piece, Method method) {
        return measured(piece, method, parameters()).utilisation();
    }

    private static double value(Evaluation.Measured m, String symbol) {
        return m.working().stream()
                .filter(s -> s.symbol().equals(symbol))
                .mapToDouble(WorkingStep::value)
                .findFirst()
                .orElseThrow();
    }

    /** (6.13), (6.13a): V = 2.2 * 0.67 * 47 * 195 / 1.5 = 9006.14 N. */
    @Test
    void shear_at_the_limit_of_a_hand_calculation() {
        assertThat(utilisation(forced(DeckPiece.joist().span(3600, 50), 9006.14), SHEAR))
                .isCloseTo(1, within(1e-6));
        assertThat(utilisation(forced(DeckPiece.joist().span(3600, 50), 9000), SHEAR))
                .isLessThan(1);
        assertThat(utilisation(forced(DeckPiece.joist().span(3600, 50), 9010), SHEAR))
                .isGreaterThan(1);
    }

    @Test
    void two_plies_halve_the_shear_stress() {
        assertThat(utilisation(forced(DeckPiece.beam(2).span(3600, 100), 5000), SHEAR))
                .isCloseTo(utilisation(forced(DeckPiece.beam(1).span(3600, 100), 5000), SHEAR) / 2, within(1e-12));
    }

    @Test
    void a_member_without_notch_has_no_notch_to_check() {
        assertThat(forced(DeckPiece.joist().span(3600, 50), 1000).evaluate(NOTCH, parameters()))
                .isInstanceOf(Evaluation.NotApplicable.class);
    }

    /**
     * (6.60), (6.62) for 47 x 200 notched 50 mm, x = 100: k_v = 0.450850; V = 0.450850 * 2.2 * 0.67 * 47 * 150 / 1.5 =
     * 3123.41 N.
     */
    @Test
    void a_notch_at_the_support_at_the_limit_of_a_hand_calculation() {
        DeckPiece piece = DeckPiece.joist().section(47, 200).span(3600, 50).notched(50, 100, 0, NotchSide.SUPPORT);
        assertThat(utilisation(forced(piece, 3123.41), NOTCH)).isCloseTo(1, within(5e-5));
        assertThat(utilisation(forced(piece, 3100), NOTCH)).isLessThan(1);
        assertThat(utilisation(forced(piece, 3150), NOTCH)).isGreaterThan(1);
    }

    /** (6.61): k_v = 1 opposite the support; V = 2.2 * 0.67 * 47 * 150 / 1.5 = 6927.8 N. */
    @Test
    void a_notch_opposite_the_support_loses_only_its_depth() {
        DeckPiece piece = DeckPiece.joist().section(47, 200).span(3600, 50).notched(50, 100, 0, NotchSide.OPPOSITE);
        assertThat(utilisation(forced(piece, 6927.8), NOTCH)).isCloseTo(1, within(1e-6));
    }

    @Test
    void a_notch_through_the_whole_depth_is_out_of_scope() {
        DeckPiece piece = DeckPiece.joist().section(47, 200).span(3600, 50).notched(200, 100, 0, NotchSide.SUPPORT);
        assertThat(forced(piece, 10).evaluate(NOTCH, parameters())).isInstanceOf(Evaluation.OutOfScope.class);
    }

    /** 6.1.5(1): flush end, so 50 + 0 + 30 = 80 mm; (6.3), (6.4): F = 1.5 * 1.375 * 47 * 80 = 7755 N. */
    @Test
    void bearing_of_a_flush_joist_at_the_limit_of_a_hand_calculation() {
        DeckPiece piece = DeckPiece.joist().span(3600, 50);
        assertThat(utilisation(forced(piece, 7755), BEARING)).isCloseTo(1, within(1e-12));
        assertThat(utilisation(forced(piece, 7750), BEARING)).isLessThan(1);
        assertThat(utilisation(forced(piece, 7760), BEARING)).isGreaterThan(1);
    }

    /** 6.1.5(1): at most 30 mm, the end distance, the contact length and half the clear distance. */
    @Test
    void the_contact_is_extended_by_the_least_of_its_four_limits() {
        assertThat(effectiveLengthMm(3600, 100, 40, 50)).isEqualTo(40 + 30 + 30);
        assertThat(effectiveLengthMm(3600, 30, 40, 50)).isEqualTo(40 + 10 + 30);
        assertThat(effectiveLengthMm(3600, 100, 20, 50)).isEqualTo(20 + 20 + 20);
        assertThat(effectiveLengthMm(3600, 100, 40, 160)).isEqualTo(40 + 30 + 30);
        assertThat(effectiveLengthMm(170, 100, 40, 60)).isEqualTo(40 + 30 + 10);
    }

    private static double effectiveLengthMm(double lengthMm, double atMm, double contactMm, double otherMm) {
        Sheet sheet = Sheet.blank();
        sheet.given("l", contactMm, MeasureUnit.MILLIMETRE, "", "");
        return contact(lengthMm, atMm, contactMm, otherMm).calculate(sheet, "the member");
    }

    /** The first contact of a member of this length, the second one 100 mm long and beginning so that 20 mm remain. */
    private static Contact contact(double lengthMm, double atMm, double contactMm, double otherMm) {
        double otherAt = lengthMm > 1000 ? lengthMm - 100 : atMm + contactMm / 2 + 20 + otherMm / 2;
        return Contact.at(
                new JoistLine(
                        0,
                        Pointer.of("/x"),
                        "x",
                        1,
                        null,
                        Optional.empty(),
                        null,
                        lengthMm,
                        List.of(support(atMm, contactMm), support(otherAt, otherMm)),
                        List.of(),
                        List.of(),
                        0,
                        1,
                        null),
                0,
                47);
    }

    private static MemberSupport support(double atMm, double contactMm) {
        return new MemberSupport(
                atMm,
                MemberSupport.Kind.BEAM,
                "B",
                Pointer.of("/x"),
                "beam B",
                OptionalDouble.of(contactMm),
                JoistSeating.ON_TOP);
    }

    /** 6.1.5(3): only where other forces are at least 2 h away; under a concentrated load none of that is sure. */
    @Test
    void the_higher_k_c_90_needs_distance_softwood_and_uniform_load() {
        assertThat(kc90(DeckPiece.joist().span(3600, 50), "uniform")).isEqualTo(1.5);
        assertThat(kc90(DeckPiece.joist().span(2 * 195 + 50, 50), "uniform")).isEqualTo(1.5);
        assertThat(kc90(DeckPiece.joist().span(2 * 195 + 49, 50), "uniform")).isEqualTo(1.0);
        assertThat(kc90(DeckPiece.joist().of("D30").span(3600, 50), "uniform")).isEqualTo(1.0);
        assertThat(kc90(DeckPiece.joist().span(3600, 50), "concentrated")).isEqualTo(1.0);
        assertThat(kc90(DeckPiece.beam(2).span(3600, 100).joistsEvery(400), "uniform"))
                .isEqualTo(1.0);
        assertThat(kc90(DeckPiece.beam(2).span(3600, 100), "uniform")).isEqualTo(1.5);
    }

    private static double kc90(DeckPiece piece, String loading) {
        double[] support = {1, 1, 1};
        Share share = new Share(List.of(new double[4]), List.of(support, support), 2);
        piece.under(a -> a.with(Action.IMPOSED, share).with(Action.CONCENTRATED, share));
        return value(measured(piece, BEARING, parameters().with("loading", loading)), "k_c,90");
    }

    /** EN 1991-1-1, 6.3.1.2: the concentrated load is an alternative to the uniform one, and the worse of them governs. */
    @Test
    void under_either_loading_the_worse_governs() {
        for (double concentratedN : new double[] {100, 1000, 10_000}) {
            double uniform = under("uniform", concentratedN);
            double concentrated = under("concentrated", concentratedN);
            assertThat(uniform).isNotEqualTo(concentrated);
            assertThat(under("either", concentratedN)).isEqualTo(Math.max(uniform, concentrated));
        }
    }

    private static double under(String loading, double concentratedN) {
        double[] uniform = {1000, 1000, 1000};
        double[] concentrated = {concentratedN, concentratedN, concentratedN};
        DeckPiece piece = DeckPiece.joist()
                .span(3600, 50)
                .under(a -> a.with(Action.IMPOSED, new Share(List.of(new double[4]), List.of(uniform, uniform), 2000))
                        .with(
                                Action.CONCENTRATED,
                                new Share(
                                        List.of(new double[4]),
                                        List.of(concentrated, concentrated),
                                        2 * concentratedN)));
        return measured(piece, BEARING, parameters().with("loading", loading)).utilisation();
    }

    /**
     * 6.1.5(1) on the beam below: 47 mm along its grain and 30 mm on either side, over 50 mm of contact, k_c,90 1; C24
     * without k_sys f_c,90,d = 1.25 N/mm2: F = 1.25 * 107 * 50 = 6687.5 N.
     */
    @Test
    void a_beam_carries_a_joist_up_to_the_limit_of_a_hand_calculation() {
        assertThat(utilisation(forced(DeckPiece.joist().span(3600, 50), 6687.5), CARRIER))
                .isCloseTo(1, within(1e-12));
        assertThat(utilisation(forced(DeckPiece.joist().span(3600, 50), 6680), CARRIER))
                .isLessThan(1);
        assertThat(utilisation(forced(DeckPiece.joist().span(3600, 50), 6690), CARRIER))
                .isGreaterThan(1);
    }

    /** EN 338: f_c,90,k of C14 is 2.0 N/mm2, of C24 2.5. */
    @Test
    void the_strength_of_the_beam_counts_and_not_that_of_the_joist() {
        double strong = utilisation(forced(DeckPiece.joist().span(3600, 50), 1000), CARRIER);
        double weak = utilisation(forced(DeckPiece.joist().span(3600, 50).onBeamsOf("C14"), 1000), CARRIER);
        assertThat(weak).isCloseTo(strong * 2.5 / 2.0, within(1e-12));
    }

    @Test
    void a_beam_bears_on_no_more_than_its_post() {
        assertThat(value(
                        measured(forced(DeckPiece.beam(3).span(3600, 100).postDepth(100), 10), BEARING, parameters()),
                        "A_ef"))
                .isCloseTo(100 * 130, within(1e-9));
        assertThat(value(
                        measured(forced(DeckPiece.beam(2).span(3600, 100).postDepth(100), 10), BEARING, parameters()),
                        "A_ef"))
                .isCloseTo(94 * 130, within(1e-9));
    }

    /** 94 mm on 100 mm: half of 194 mm is 97 mm, of which 40 mm is lost; up to 3 mm off nothing is. */
    @Test
    void a_beam_bears_only_where_it_lies_on_its_post() {
        DeckPiece off = DeckPiece.beam(2).span(3600, 100).postDepth(100).postsOff(40);
        assertThat(value(measured(forced(off, 10), BEARING, parameters()), "A_ef"))
                .isCloseTo(57 * 130, within(1e-9));
        DeckPiece over = DeckPiece.beam(2).span(3600, 100).postDepth(100).postsOff(-3);
        assertThat(value(measured(forced(over, 10), BEARING, parameters()), "A_ef"))
                .isCloseTo(94 * 130, within(1e-9));
    }

    @Test
    void hangers_on_a_beam_are_left_to_the_connection() {
        DeckPiece piece = DeckPiece.joist()
                .length(3600)
                .hanger(0, MemberSupport.Kind.BEAM)
                .hanger(3600, MemberSupport.Kind.BEAM)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 0, 3600);
        assertThat(forced(piece, 1000).evaluate(BEARING, parameters())).isInstanceOf(Evaluation.NotApplicable.class);
    }

    @Test
    void a_ledger_without_bearing_length_leaves_bearing_open() {
        assertThat(forced(ledgerAndBeam(), 1000).evaluate(BEARING, parameters()))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly("/platforms/0/ledger/bearingLength"));
    }

    @Test
    void a_support_that_fails_decides_whatever_the_ledger_has() {
        assertThat(forced(ledgerAndBeam(), 20_000).evaluate(BEARING, parameters()))
                .isInstanceOfSatisfying(
                        Evaluation.Measured.class,
                        m -> assertThat(m.utilisation()).isGreaterThan(1));
    }

    private static DeckPiece ledgerAndBeam() {
        return DeckPiece.joist()
                .length(3600)
                .hanger(0, MemberSupport.Kind.LEDGER)
                .support(3300, 94)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 0, 3300);
    }
}
