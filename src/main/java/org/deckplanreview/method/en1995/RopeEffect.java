package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * The tension F_ax,Rk that a bolt can hold between its washers, 8.5.2.
 *
 * @param fc90k of the weaker timber under a washer, N/mm2
 * @param fuk of the bolt's steel, N/mm2
 */
record RopeEffect(
        double washerDiameterMm,
        double diameterMm,
        double fc90k,
        double fuk,
        double clearanceMm,
        double washerFactor,
        double tensionFactor,
        double stressAreaRatio) {
    static final ParameterDescription LARGEST_SHARE = ParameterDescription.number(
            "ropeLargestShare", RATIO, "largest rope effect of bolts as a part of the Johansen part");
    private static final ParameterDescription CLEARANCE =
            ParameterDescription.number("boltHoleClearance", MILLIMETRE, "largest clearance of a hole around its bolt");
    private static final ParameterDescription WASHER_FACTOR = ParameterDescription.number(
            "washerBearingFactor", RATIO, "strength under a washer as a multiple of f_c,90,k");
    private static final ParameterDescription TENSION_FACTOR =
            ParameterDescription.number("boltTensionFactor", RATIO, "k_2 of a bolt in tension");
    private static final ParameterDescription STRESS_AREA =
            ParameterDescription.number("boltStressAreaRatio", RATIO, "tensile stress area over the shank's area");
    static final List<ParameterDescription> PARAMETERS =
            List.of(LARGEST_SHARE, CLEARANCE, WASHER_FACTOR, TENSION_FACTOR, STRESS_AREA);

    static RopeEffect of(Parameters p, double washerDiameterMm, double diameterMm, double fc90k, double fuk) {
        return new RopeEffect(
                washerDiameterMm,
                diameterMm,
                fc90k,
                fuk,
                p.number(CLEARANCE.name(), MILLIMETRE),
                p.number(WASHER_FACTOR.name(), RATIO),
                p.number(TENSION_FACTOR.name(), RATIO),
                p.number(STRESS_AREA.name(), RATIO));
    }

    /** The washer's area without the hole, mm2. */
    double areaMm2() {
        double hole = diameterMm + clearanceMm;
        return StrictMath.PI * Math.max(0, washerDiameterMm * washerDiameterMm - hole * hole) / 4;
    }

    /** 8.5.2(2), N. */
    double washerN() {
        return washerFactor * fc90k * areaMm2();
    }

    /** Tensile capacity of the bolt, EN 1993-1-8, Table 3.4, N. */
    double boltN() {
        return tensionFactor * fuk * stressAreaRatio * StrictMath.PI * diameterMm * diameterMm / 4;
    }

    /** F_ax,Rk, 8.5.2(1), N. */
    double axialN() {
        return Math.min(washerN(), boltN());
    }

    /** Shows F_ax,Rk; d and f_u,k stand in the working already. */
    void write(Sheet w, Parameters p, Pointer joint) {
        String pi = Numbers.plain(StrictMath.PI);
        w.given("d_w", washerDiameterMm, MILLIMETRE, "diameter of the washers", "", joint.child("washerDiameter"));
        w.given("c", clearanceMm, MILLIMETRE, "clearance of the hole", p.source(CLEARANCE.name()));
        w.given(
                "f_c,90,k",
                fc90k,
                NEWTON_PER_SQUARE_MILLIMETRE,
                "strength across the grain of the weaker timber under a washer",
                p.source(StrengthClass.TABLE.name()));
        w.step("A_w", pi + " * max(0, d_w^2 - (d + c)^2) / 4", areaMm2(), SQUARE_MILLIMETRE, "8.5.2(2)");
        w.step("F_w,Rk", Numbers.plain(washerFactor) + " * f_c,90,k * A_w", washerN(), NEWTON_, "8.5.2(2)");
        w.step(
                "F_t,Rk",
                Numbers.plain(tensionFactor) + " * f_u,k * " + Numbers.plain(stressAreaRatio) + " * " + pi
                        + " * d^2 / 4",
                boltN(),
                NEWTON_,
                p.source(TENSION_FACTOR.name()));
        w.step("F_ax,Rk", "min(F_w,Rk, F_t,Rk)", axialN(), NEWTON_, "8.5.2(1)");
    }
}
