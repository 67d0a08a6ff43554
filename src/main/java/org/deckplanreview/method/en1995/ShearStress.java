package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import org.deckplanreview.vocabulary.ParameterDescription;

/** Shear stress of a rectangle, 6.1.7. */
final class ShearStress {
    static final ParameterDescription KCR =
            ParameterDescription.number("kcr", RATIO, "crack factor for shear of solid timber");

    private ShearStress() {}

    /** b_ef = k_cr b, mm, (6.13a). */
    static double effectiveBreadth(double kcr, double breadthMm) {
        return kcr * breadthMm;
    }

    /** Largest shear stress of a rectangle, N/mm2. */
    static double ofRectangle(double shearN, double breadthMm, double depthMm) {
        return 1.5 * shearN / (breadthMm * depthMm);
    }
}
