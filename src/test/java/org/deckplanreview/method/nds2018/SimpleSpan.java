package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Grade;
import org.deckplanreview.submission.Species;
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
        return new Timber(
                "t",
                Optional.empty(),
                Length.ofMm(INCH.convert(thicknessIn, MILLIMETRE)),
                Length.ofMm(INCH.convert(depthIn, MILLIMETRE)),
                Optional.empty(),
                Optional.of(species),
                Optional.of(Grade.NO_2),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private Adjustments adjustments() {
        return Adjustments.of(Lumber.find(parameters, timber()).orElseThrow(), timber(), parameters);
    }

    private Section section() {
        return Section.of(timber(), plies);
    }

    private double loadLbfPerIn() {
        return liveLbfPerIn + deadLbfPerIn;
    }

    /** From w L^2 / 8 = F_b' S. */
    double byBendingIn() {
        double allowed = adjustments()
                .of(Property.BENDING, cd, "")
                .times(adjustments().repetitive(members, spacingIn))
                .psi();
        return Math.sqrt(8 * allowed * section().modulusIn3() / loadLbfPerIn());
    }

    /** From 5 w L^4 / (384 E' I) = L / 360 under live load or snow alone. */
    double byDeflectionIn() {
        double stiffness =
                adjustments().of(Property.ELASTICITY).psi() * section().secondMomentIn4();
        return StrictMath.cbrt(384 * stiffness / (5 * 360 * liveLbfPerIn));
    }

    /** From 3 V / (2 b d) = F_v' with V = w L / 2. */
    double byShearIn() {
        double allowed = adjustments().of(Property.SHEAR, cd, "").psi();
        return 4 * allowed * section().areaIn2() / (3 * loadLbfPerIn());
    }

    double in() {
        return Math.min(byBendingIn(), Math.min(byDeflectionIn(), byShearIn()));
    }

    String governing() {
        double least = in();
        return least == byBendingIn() ? "bending" : least == byDeflectionIn() ? "deflection" : "shear";
    }
}
