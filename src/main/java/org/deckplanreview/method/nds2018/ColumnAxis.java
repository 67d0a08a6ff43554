package org.deckplanreview.method.nds2018;

/**
 * One direction in which a column can buckle.
 *
 * @param lengthIn l_e
 * @param sideIn d, along the direction
 */
record ColumnAxis(double lengthIn, double sideIn) {

    /** l_e / d, 3.7.1.3. */
    double slenderness() {
        return lengthIn / sideIn;
    }

    /** F_cE, psi, 3.7.1.5. */
    double critical(double factor, double stabilityPsi) {
        return factor * stabilityPsi / (slenderness() * slenderness());
    }

    /** C_P from the ratio of F_cE to F_c*, (3.7-1). */
    static double stabilityFactor(double ratio, double c) {
        double half = (1 + ratio) / (2 * c);
        return half - Math.sqrt(half * half - ratio / c);
    }
}
