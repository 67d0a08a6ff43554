package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Grade;
import org.deckplanreview.submission.Species;
import org.deckplanreview.submission.Stating;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.Parameters;

/**
 * The longest simple span of lumber No. 2, outdoors, under a uniform load, by adjusted design values of this package.
 *
 * @param members that share the load: side by side, or plies of one beam
 * @param plies that carry the line load together
 * @param incised taken as usual for the species where empty
 */
record SimpleSpan(
        Species species,
        double thicknessIn,
        double depthIn,
        int plies,
        int members,
        double spacingIn,
        double liveLbfPerIn,
        double deadLbfPerIn,
        double cd,
        Parameters parameters) {

    private Timber timber() {
        return Stating.a(Timber.class)
                .with("id", "t")
                .with("breadth", Length.ofMm(INCH.convert(thicknessIn, MILLIMETRE)))
                .with("depth", Length.ofMm(INCH.convert(depthIn, MILLIMETRE)))
                .with("species", species)
                .with("grade", Grade.NO_2)
                .made();
    }

    private Adjustments adjustments() {
        return Adjustments.of(
                Lumber.find(parameters, timber()).orElseThrow(), timber(), Pointer.of("/timbers/0"), parameters);
    }

    private double breadthIn() {
        return plies * thicknessIn;
    }

    private double loadLbfPerIn() {
        return liveLbfPerIn + deadLbfPerIn;
    }

    /** With all factors but that of the load duration. */
    private double adjusted(AdjustedValue value) {
        return value.always().steps().stream()
                .mapToDouble(WorkingStep::value)
                .reduce(1, (product, factor) -> product * factor);
    }

    /** From w L^2 / 8 = F_b' S. */
    double byBendingIn() {
        AdjustedValue bending = adjustments().of(Property.BENDING);
        adjustments().enterRepetitive(bending.factors(), members, spacingIn);
        double modulusIn3 = breadthIn() * depthIn * depthIn / 6;
        return Math.sqrt(8 * cd * adjusted(bending) * modulusIn3 / loadLbfPerIn());
    }

    /** From 5 w L^4 / (384 E' I) = L / 360 under live load or snow alone. */
    double byDeflectionIn() {
        double stiffness =
                adjusted(adjustments().of(Property.ELASTICITY)) * breadthIn() * depthIn * depthIn * depthIn / 12;
        return StrictMath.cbrt(384 * stiffness / (5 * 360 * liveLbfPerIn));
    }

    /** From 3 V / (2 b d) = F_v' with V = w L / 2. */
    double byShearIn() {
        double allowed = cd * adjusted(adjustments().of(Property.SHEAR));
        return 4 * allowed * breadthIn() * depthIn / (3 * loadLbfPerIn());
    }

    double in() {
        return Math.min(byBendingIn(), Math.min(byDeflectionIn(), byShearIn()));
    }

    String governing() {
        double least = in();
        return least == byBendingIn() ? "bending" : least == byDeflectionIn() ? "deflection" : "shear";
    }
}
