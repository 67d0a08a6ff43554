package org.deckplanreview.method.nds2018;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_INCH;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.en1995.DeckPiece;
import org.deckplanreview.method.en1995.LinearAnalysis.Share;
import org.deckplanreview.method.en1995.StandardParameters;
import org.deckplanreview.submission.Grade;
import org.deckplanreview.submission.NotchSide;
import org.deckplanreview.submission.Species;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hand calculations by NDS 2018 of joists and beams outdoors, at the limit and to either side of it. */
class MembersTest {

    private static final Percentage HAND = Percentage.withPercentage(0.01);
    private static final double SPAN_IN = 120;

    private static double mm(double in) {
        return INCH.convert(in, MILLIMETRE);
    }

    private static double n(double lbf) {
        return POUND_FORCE.convert(lbf, NEWTON_);
    }

    private static double nmm(double lbfIn) {
        return POUND_FORCE_INCH.convert(lbfIn, NEWTON_MILLIMETRE);
    }

    private static DeckPiece on(DeckPiece piece, double breadthIn, double depthIn) {
        return piece.section(mm(breadthIn), mm(depthIn)).side(mm(16), 10).span(mm(SPAN_IN), mm(1.5));
    }

    private static DeckPiece joist(Species species, double breadthIn, double depthIn) {
        return on(DeckPiece.joist(), breadthIn, depthIn).of(species, Grade.NO_2);
    }

    private static DeckPiece pine2x8() {
        return joist(Species.SOUTHERN_PINE, 1.5, 7.25);
    }

    private static Share share(double momentLbfIn, double forceLbf, double deflectionIn) {
        double[] support = {n(forceLbf), n(forceLbf), n(forceLbf)};
        return new Share(
                List.of(new double[] {nmm(momentLbfIn), 0, mm(deflectionIn), 0}), List.of(support, support), 1);
    }

    private static DeckPiece under(DeckPiece piece, Action action, Share share) {
        return piece.under(a -> a.with(action, share));
    }

    private static Evaluation.Measured measured(Method method, DeckPiece piece) {
        return measured(method, piece, parameters());
    }

    private static Evaluation.Measured measured(Method method, DeckPiece piece, StandardParameters parameters) {
        Evaluation evaluation = piece.evaluate(method, parameters);
        assertThat(evaluation).isInstanceOf(Evaluation.Measured.class);
        return (Evaluation.Measured) evaluation;
    }

    private static StandardParameters parameters() {
        return Values.onFile()
                .with("deflectionLoad", "live")
                .with("spanRatio", 360)
                .with("cantileverRatio", 180)
                .with("tipLoad", 220, POUND_FORCE)
                .with("tipRatio", 180);
    }

    private static double psi(Evaluation.Measured m) {
        return ((Measure) m.allowed()).in(MeasureUnit.POUND_FORCE_PER_SQUARE_INCH);
    }

    private static double step(Evaluation.Measured m, String symbol) {
        return m.working().stream()
                .filter(s -> s.symbol().equals(symbol))
                .mapToDouble(WorkingStep::value)
                .findFirst()
                .orElseThrow();
    }

    /** Table 4B: F_b 925 psi, no C_F; C_M 1 since 925 < 1150; C_r 1.15: 1063.75 psi on S = 1.5 * 7.25^2 / 6 (3.3-1). */
    @ParameterizedTest
    @CsvSource({"13977, true", "13978.3, true", "13980, false"})
    void southern_pine_2x8_takes_a_live_moment_of_13978_lbf_in(double moment, boolean enough) {
        Evaluation.Measured m = measured(new MemberBending(), under(pine2x8(), Action.IMPOSED, share(moment, 0, 0)));
        assertThat(psi(m)).isCloseTo(1063.75, HAND);
        assertThat(m.utilisation() <= 1).isEqualTo(enough);
        assertThat(m.utilisation()).isCloseTo(moment / 13978.3, HAND);
    }

    /** Table 2.3.2: the whole of a permanent load with C_D 0.9, though D+L has the same moment with 1.0. */
    @Test
    void a_permanent_moment_counts_with_a_duration_factor_of_0_9() {
        Evaluation.Measured m = measured(new MemberBending(), under(pine2x8(), Action.PERMANENT, share(10000, 0, 0)));
        assertThat(psi(m)).isCloseTo(0.9 * 1063.75, HAND);
        assertThat(m.remark()).contains("combination D").doesNotContain("D+L");
    }

    @Test
    void snow_counts_with_a_duration_factor_of_1_15() {
        Evaluation.Measured m = measured(new MemberBending(), under(pine2x8(), Action.SNOW, share(10000, 0, 0)));
        assertThat(psi(m)).isCloseTo(1.15 * 1063.75, HAND);
        assertThat(m.remark()).contains("D+S");
    }

    /** ASCE 7-16, 2.4.1, combination 4: 0.75 * (8000 + 8000) = 12000 lbf in with C_D 1.15 for snow, 2.3.2. */
    @Test
    void live_load_and_snow_together_count_three_quarters_of_each() {
        DeckPiece piece =
                pine2x8().under(a -> a.with(Action.IMPOSED, share(8000, 0, 0)).with(Action.SNOW, share(8000, 0, 0)));
        Evaluation.Measured m = measured(new MemberBending(), piece);
        assertThat(m.remark()).contains("D+0.75L+0.75S");
        assertThat(step(m, "M")).isCloseTo(12000, HAND);
        assertThat(psi(m)).isCloseTo(1.15 * 1063.75, HAND);
    }

    /** 2.4.1: with little snow the whole live load stays the worse, for 0.75 * (8000 + 2000) is less than 8000. */
    @Test
    void a_little_snow_leaves_the_whole_live_load_in_charge() {
        DeckPiece piece =
                pine2x8().under(a -> a.with(Action.IMPOSED, share(8000, 0, 0)).with(Action.SNOW, share(2000, 0, 0)));
        assertThat(measured(new MemberBending(), piece).remark()).endsWith("combination D+L");
    }

    /** Table 4A: 850 * C_F 1.2 = 1020 psi is not above 1150 psi, so no C_M; C_i 0.80; C_r 1.15. */
    @Test
    void hem_fir_2x8_is_incised_and_keeps_its_bending_value_when_wet() {
        Evaluation.Measured m = measured(
                new MemberBending(), under(joist(Species.HEM_FIR, 1.5, 7.25), Action.IMPOSED, share(1000, 0, 0)));
        assertThat(psi(m)).isCloseTo(850 * 1.2 * 0.8 * 1.15, HAND);
        assertThat(m.assumptions()).anySatisfy(a -> assertThat(a).contains("is incised"));
    }

    @Test
    void lumber_that_is_said_not_to_be_incised_is_not() {
        Evaluation.Measured m = measured(
                new MemberBending(),
                under(joist(Species.HEM_FIR, 1.5, 7.25).incised(false), Action.IMPOSED, share(1000, 0, 0)));
        assertThat(psi(m)).isCloseTo(850 * 1.2 * 1.15, HAND);
        assertThat(m.assumptions()).noneSatisfy(a -> assertThat(a).contains("incised"));
    }

    /** Table 4A: 900 * C_F 1.3 = 1170 psi is above 1150 psi: C_M 0.85. */
    @Test
    void douglas_fir_larch_2x6_loses_by_wet_service() {
        Evaluation.Measured m = measured(
                new MemberBending(),
                under(joist(Species.DOUGLAS_FIR_LARCH, 1.5, 5.5), Action.IMPOSED, share(1000, 0, 0)));
        assertThat(psi(m)).isCloseTo(900 * 1.3 * 0.85 * 0.8 * 1.15, HAND);
    }

    /** 4.3.9: at least three, at most 24 in apart. */
    @ParameterizedTest
    @CsvSource({"2, 16, 1.00", "3, 24, 1.15", "3, 24.1, 1.00"})
    void joists_share_load_from_three_on_and_up_to_24_in(int joists, double spacing, double cr) {
        Evaluation.Measured m = measured(
                new MemberBending(), under(pine2x8().side(mm(spacing), joists), Action.IMPOSED, share(1000, 0, 0)));
        assertThat(psi(m)).isCloseTo(925 * cr, HAND);
    }

    @ParameterizedTest
    @CsvSource({"1, 1.00", "2, 1.00", "3, 1.15"})
    void plies_share_load_from_three_on(int plies, double cr) {
        DeckPiece beam = on(DeckPiece.beam(plies), 1.5, 7.25).of(Species.SOUTHERN_PINE, Grade.NO_2);
        Evaluation.Measured m = measured(
                new MemberBending(),
                under(beam.joistsEvery(mm(4)), Action.IMPOSED, share(1000, 0, 0)),
                parameters().with("sideRestraint", "boards"));
        assertThat(psi(m)).isCloseTo(925 * cr, HAND);
    }

    /** Table 4A: a 2x6 laid flat has C_fu 1.15 beside C_F 1.3. */
    @Test
    void lumber_on_its_broad_face_has_a_flat_use_factor() {
        Evaluation.Measured m = measured(
                new MemberBending(), under(joist(Species.WESTERN_CEDARS, 5.5, 1.5), Action.IMPOSED, share(100, 0, 0)));
        assertThat(psi(m)).isCloseTo(700 * 1.3 * 1.15 * 1.15, HAND);
    }

    /** 4.4.1.2 (b): a 2x8 is four times as deep as broad by nominal size, a 2x10 five times. */
    @Test
    void nominal_sizes_tell_what_needs_its_edge_held() {
        StandardParameters loose = parameters().with("sideRestraint", "none");
        assertThat(step(
                        measured(new MemberBending(), under(pine2x8(), Action.IMPOSED, share(1000, 0, 0)), loose),
                        "C_L"))
                .isEqualTo(1);
        assertThat(step(
                        measured(
                                new MemberBending(),
                                under(joist(Species.SOUTHERN_PINE, 1.5, 9.25), Action.IMPOSED, share(1000, 0, 0)),
                                loose),
                        "C_L"))
                .isLessThan(1);
    }

    /**
     * A cantilever of 48 in of one 2x12: l_u/d 4.27 < 7, l_e 1.33 * 48 = 63.84 in, R_B sqrt(63.84 * 11.25 / 2.25) = 17.866,
     * F_bE 1.2 * 459000 / 319.2 = 1725.6 psi, F_b* 750 psi, C_L 0.96513 (3.3-6).
     */
    @Test
    void the_lower_edge_of_a_cantilever_is_not_held() {
        DeckPiece piece = DeckPiece.joist()
                .section(mm(1.5), mm(11.25))
                .of(Species.SOUTHERN_PINE, Grade.NO_2)
                .side(mm(30), 10)
                .length(mm(168))
                .support(mm(0.75), mm(1.5))
                .support(mm(120), mm(1.5))
                .stretch(Span.Kind.BETWEEN_SUPPORTS, mm(0), mm(120))
                .stretch(Span.Kind.CANTILEVER_AT_END, mm(120), mm(168));
        double[] none = {0, 0, 0};
        Share hogging = new Share(
                List.of(new double[] {0, 0, 0, 0}, new double[] {0, nmm(5000), 0, 0}), List.of(none, none), 1);
        Evaluation.Measured m = measured(new MemberBending(), under(piece, Action.IMPOSED, hogging));
        assertThat(step(m, "R_B")).isCloseTo(17.866, HAND);
        assertThat(step(m, "F_bE")).isCloseTo(1725.6, HAND);
        assertThat(step(m, "C_L")).isCloseTo(0.96513, HAND);
        assertThat(psi(m)).isCloseTo(723.85, HAND);
        assertThat(m.remark()).contains("hogging in the cantilever at its end");
    }

    /** 3.3.3.7: one 2x12 unheld over 40 ft has l_e = 1.63 * 480 + 3 * 11.25, R_B 63.9. */
    @Test
    void a_member_with_a_slenderness_ratio_over_50_is_out_of_scope() {
        DeckPiece piece = on(DeckPiece.joist(), 1.5, 11.25)
                .of(Species.SOUTHERN_PINE, Grade.NO_2)
                .span(mm(480), mm(1.5));
        Evaluation e = under(piece, Action.IMPOSED, share(100, 0, 0))
                .evaluate(new MemberBending(), parameters().with("sideRestraint", "none"));
        assertThat(e)
                .isInstanceOfSatisfying(
                        Evaluation.OutOfScope.class, o -> assertThat(o.clause()).isEqualTo("3.3.3.7"));
    }

    /** F_v' = 175 * C_M 0.97 = 169.75 psi; V = 2/3 * 169.75 * 1.5 * 7.25 = 1230.7 lbf (3.4-2). */
    @ParameterizedTest
    @CsvSource({"1230, true", "1231, false"})
    void southern_pine_2x8_takes_a_shear_of_1230_7_lbf(double shear, boolean enough) {
        Evaluation.Measured m = measured(new MemberShear(), under(pine2x8(), Action.IMPOSED, share(0, shear, 0)));
        assertThat(psi(m)).isCloseTo(169.75, HAND);
        assertThat(m.utilisation()).isCloseTo(shear / 1230.69, HAND);
        assertThat(m.utilisation() <= 1).isEqualTo(enough);
    }

    /** d_n 5.5 in: V_r' = 2/3 * 169.75 * 1.5 * 5.5 * (5.5 / 7.25)^2 = 537.3 lbf (3.4-3). */
    @Test
    void a_notch_on_the_side_of_the_support_weakens_with_the_square_of_what_is_left() {
        DeckPiece notched = pine2x8().notched(mm(1.75), mm(2), 0, NotchSide.SUPPORT);
        assertThat(measured(new MemberShear(), under(notched, Action.IMPOSED, share(0, 537.3, 0)))
                        .utilisation())
                .isCloseTo(1, HAND);
    }

    /** e = 2 - 0.75 = 1.25 in: V_r' = 2/3 * 169.75 * 1.5 * (7.25 - 1.75 / 5.5 * 1.25) = 1163.2 lbf (3.4-5). */
    @Test
    void a_notch_on_the_other_side_weakens_by_how_far_it_reaches() {
        DeckPiece notched = pine2x8().notched(mm(1.75), mm(2), 0, NotchSide.OPPOSITE);
        assertThat(measured(new MemberShear(), under(notched, Action.IMPOSED, share(0, 1163.2, 0)))
                        .utilisation())
                .isCloseTo(1, HAND);
    }

    /** 4.4.3.1: a quarter of 7.25 in is 1.8125 in. */
    @ParameterizedTest
    @CsvSource({"1.8125, true", "1.82, false"})
    void a_notch_at_the_support_may_be_a_quarter_of_the_depth(double depth, boolean permitted) {
        Evaluation e = under(pine2x8().notched(mm(depth), mm(2), 0, NotchSide.SUPPORT), Action.IMPOSED, share(0, 1, 0))
                .evaluate(new MemberShear(), parameters());
        assertThat(e instanceof Evaluation.Measured).isEqualTo(permitted);
    }

    /** 4.4.3: ends and single spans alone. */
    @Test
    void a_notch_over_a_support_beyond_which_the_member_goes_on_is_out_of_scope() {
        DeckPiece overhanging = DeckPiece.joist()
                .section(mm(1.5), mm(7.25))
                .of(Species.SOUTHERN_PINE, Grade.NO_2)
                .length(mm(140))
                .support(mm(0.75), mm(1.5))
                .support(mm(120), mm(1.5))
                .stretch(Span.Kind.BETWEEN_SUPPORTS, mm(0.75), mm(120))
                .stretch(Span.Kind.CANTILEVER_AT_END, mm(120), mm(140))
                .notched(mm(1), mm(2), 0, NotchSide.SUPPORT);
        for (Method method : List.of(new MemberBending(), new MemberShear())) {
            assertThat(overhanging.evaluate(method, parameters())).isInstanceOf(Evaluation.OutOfScope.class);
        }
    }

    /** d_n 5.75 in: S = 1.5 * 5.75^2 / 6 = 8.2656 in3; 1063.75 psi at V = 1063.75 * 8.2656 / 2 = 4396.3 lbf 2 in away. */
    @Test
    void at_a_notch_the_section_that_is_left_bends() {
        DeckPiece notched = pine2x8().notched(mm(1.5), mm(2), 0, NotchSide.SUPPORT);
        assertThat(measured(new MemberBending(), under(notched, Action.IMPOSED, share(0, 4396.3, 0)))
                        .utilisation())
                .isCloseTo(1, HAND);
    }

    /** F_cperp' = 565 * C_M 0.67 = 378.55 psi on 1.5 in by 1.5 in at the member's end: 851.7 lbf (3.10.2). */
    @ParameterizedTest
    @CsvSource({"851, true", "852, false"})
    void southern_pine_takes_a_reaction_of_851_7_lbf_at_its_end(double reaction, boolean enough) {
        Evaluation.Measured m = measured(new MemberBearing(), under(pine2x8(), Action.IMPOSED, share(0, reaction, 0)));
        assertThat(m.utilisation()).isCloseTo(reaction / 851.74, HAND);
        assertThat(m.utilisation() <= 1).isEqualTo(enough);
    }

    /** 3.10.4: 3 in from the end on, C_b = (1.5 + 0.375) / 1.5 = 1.25; from 6 in of length on, none. */
    @ParameterizedTest
    @CsvSource({"3, 1.5, 1.25", "2.9, 1.5, 1", "3, 5.9, 1.06356", "3, 6, 1"})
    void a_short_bearing_away_from_the_end_takes_more(double endDistance, double length, double factor) {
        double at = endDistance + length / 2;
        DeckPiece piece = DeckPiece.joist()
                .section(mm(1.5), mm(7.25))
                .of(Species.SOUTHERN_PINE, Grade.NO_2)
                .length(mm(2 * at + SPAN_IN))
                .support(mm(at), mm(length))
                .support(mm(at + SPAN_IN), mm(length))
                .stretch(Span.Kind.BETWEEN_SUPPORTS, mm(at), mm(at + SPAN_IN));
        Evaluation.Measured m = measured(new MemberBearing(), under(piece, Action.IMPOSED, share(0, 100, 0)));
        assertThat(psi(m)).isCloseTo(378.55 * factor, HAND);
    }

    /** Table 4.3.8: incising leaves compression perpendicular to grain as it is; no C_D (Table 4.3.1). */
    @Test
    void neither_incising_nor_duration_changes_bearing() {
        Evaluation.Measured m =
                measured(new MemberBearing(), under(joist(Species.HEM_FIR, 1.5, 7.25), Action.SNOW, share(0, 100, 0)));
        assertThat(psi(m)).isCloseTo(405 * 0.67, HAND);
    }

    @Test
    void hangers_on_a_ledger_without_a_stated_bearing_are_asked_for() {
        DeckPiece piece = DeckPiece.joist()
                .section(mm(1.5), mm(7.25))
                .of(Species.SOUTHERN_PINE, Grade.NO_2)
                .length(mm(SPAN_IN))
                .hanger(0, MemberSupport.Kind.LEDGER)
                .support(mm(SPAN_IN), mm(3))
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 0, mm(SPAN_IN));
        Evaluation e = under(piece, Action.IMPOSED, share(0, 100, 0)).evaluate(new MemberBearing(), parameters());
        assertThat(e).isInstanceOf(Evaluation.Missing.class);
    }

    /** E' = 1.4e6 * 0.9: what deflects 0.3 in with E deflects a third of an inch, L / 360 of 120 in (3.5.1). */
    @ParameterizedTest
    @CsvSource({"0.2999, true", "0.3, true", "0.3001, false"})
    void live_deflection_may_be_a_360th_of_the_span(double withoutWet, boolean enough) {
        Evaluation.Measured m =
                measured(new MemberDeflection(), under(pine2x8(), Action.IMPOSED, share(0, 0, withoutWet)));
        assertThat(((Measure) m.found()).in(INCH)).isCloseTo(withoutWet / 0.9, HAND);
        assertThat(m.sense().holds(m.utilisation(), 1)).isEqualTo(enough);
    }

    @Test
    void permanent_load_is_no_part_of_live_deflection() {
        DeckPiece piece = under(pine2x8(), Action.PERMANENT, share(0, 0, 9));
        assertThat(measured(new MemberDeflection(), piece).utilisation()).isZero();
    }

    /** K_cr 2.0 outdoors: (2 * 0.1 + 0.15) / 0.9 = 0.38889 in against 120 / 240 (3.5-1). */
    @Test
    void permanent_deflection_doubles_in_time() {
        DeckPiece piece = pine2x8()
                .under(a -> a.with(Action.PERMANENT, share(0, 0, 0.1)).with(Action.IMPOSED, share(0, 0, 0.15)));
        Evaluation.Measured m = measured(
                new MemberDeflection(),
                piece,
                parameters().with("deflectionLoad", "total").with("spanRatio", 240));
        assertThat(((Measure) m.found()).in(INCH)).isCloseTo(0.38889, HAND);
        assertThat(m.utilisation()).isCloseTo(0.77778, HAND);
    }

    /** P a^2 (a + L) / 3 E' I = 220 * 24^2 * 120 / (3 * 1.26e6 * 47.635) = 0.084453 in against 24 / 180. */
    @ParameterizedTest
    @CsvSource({"220, 0.63340, true", "347.33, 1, true", "347.5, 1.0005, false"})
    void a_load_at_the_tip_bends_the_span_behind_it_too(double load, double use, boolean enough) {
        DeckPiece piece = DeckPiece.joist()
                .section(mm(1.5), mm(7.25))
                .of(Species.SOUTHERN_PINE, Grade.NO_2)
                .length(mm(120))
                .support(0, mm(1.5))
                .support(mm(96), mm(1.5))
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 0, mm(96))
                .stretch(Span.Kind.CANTILEVER_AT_END, mm(96), mm(120))
                .under(a -> a);
        Evaluation.Measured m =
                measured(new TipDeflection(), piece, parameters().with("tipLoad", load, POUND_FORCE));
        assertThat(m.utilisation()).isCloseTo(use, HAND);
        assertThat(m.utilisation() <= 1).isEqualTo(enough);
    }

    @Test
    void a_member_without_a_cantilever_has_no_tip() {
        assertThat(pine2x8().under(a -> a).evaluate(new TipDeflection(), parameters()))
                .isInstanceOf(Evaluation.NotApplicable.class);
    }

    @Test
    void sizes_that_the_tables_lack_are_out_of_scope() {
        DeckPiece piece = under(joist(Species.SOUTHERN_PINE, 1.5, 13.25), Action.IMPOSED, share(1, 1, 0));
        assertThat(piece.evaluate(new MemberBending(), parameters()))
                .isInstanceOfSatisfying(
                        Evaluation.OutOfScope.class,
                        o -> assertThat(o.reason())
                                .isEqualTo(
                                        "The tables have no design values for southern-pine no.2 of 1.5 in by 13.25 in"));
    }

    @Test
    void lumber_without_species_and_grade_is_asked_for() {
        DeckPiece ungraded = under(on(DeckPiece.joist(), 1.5, 7.25), Action.IMPOSED, share(1, 1, 0));
        assertThat(ungraded.evaluate(new MemberBending(), parameters()))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(Need::what)
                                .singleElement()
                                .asString()
                                .contains("species and grade"));
    }

    /** Both ways to the same span: w L^2 / 8 of a table's span uses up the bending value. */
    @ParameterizedTest
    @CsvSource({"HEM_FIR, 7.25, 16", "SOUTHERN_PINE, 11.25, 24", "PONDEROSA_PINE, 9.25, 24"})
    void the_method_agrees_with_the_spans_of_the_table_test(Species species, double depth, double spacing) {
        double w = spacing / 144;
        SimpleSpan span = new SimpleSpan(species, 1.5, depth, 1, 3, spacing, 40 * w, 10 * w, 1.0, Values.onFile());
        double l = span.byBendingIn();
        Evaluation.Measured m = measured(
                new MemberBending(),
                under(
                        joist(species, 1.5, depth).side(mm(spacing), 3),
                        Action.IMPOSED,
                        share(50 * w * l * l / 8, 0, 0)));
        assertThat(m.utilisation()).isCloseTo(1, within(1e-9));
    }
}
