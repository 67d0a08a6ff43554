package org.deckplanreview.method.en1995;

/**
 * A rectangular section.
 *
 * @param breadthMm across the load; of all plies together
 * @param depthMm along the load
 */
record Section(double breadthMm, double depthMm) {
    /** W_y, mm3. */
    double sectionModulusMm3() {
        return breadthMm * depthMm * depthMm / 6;
    }

    /** I_y, mm4. */
    double secondMomentMm4() {
        return breadthMm * depthMm * depthMm * depthMm / 12;
    }

    /** I_z, mm4. */
    double weakSecondMomentMm4() {
        return depthMm * breadthMm * breadthMm * breadthMm / 12;
    }

    /** I_tor, mm4: the usual approximation for a rectangle that is at least as deep as broad. */
    double torsionConstantMm4() {
        double thin = Math.min(breadthMm, depthMm);
        double wide = Math.max(breadthMm, depthMm);
        return wide * thin * thin * thin / 3 * (1 - 0.63 * thin / wide);
    }
}
