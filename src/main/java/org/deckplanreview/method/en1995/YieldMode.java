package org.deckplanreview.method.en1995;

import java.util.List;

/**
 * One way in which a joint of dowel-type fasteners yields, 8.2.2 (8.6) and (8.7).
 *
 * @param letter as the standard writes it
 * @param meaning in plain words
 * @param johansenN its resistance for one shear plane of one fastener without rope effect, N
 * @param expression of f_h,1,k, f_h,2,k, t_1, t_2, d, β and M_y,Rk
 * @param rope whether the rope effect adds to it
 */
record YieldMode(String letter, String meaning, double johansenN, String expression, boolean rope) {
    YieldMode {
        if (!(johansenN >= 0)) {
            throw new IllegalArgumentException("Mode " + letter + " has no resistance: " + johansenN);
        }
    }

    /** With the rope effect, at most a share of the Johansen part, 8.2.2(2). */
    double resistanceN(double axialN, double largestShare) {
        return rope ? johansenN + Math.min(axialN / 4, largestShare * johansenN) : johansenN;
    }

    static YieldMode weakest(List<YieldMode> modes, double axialN, double largestShare) {
        YieldMode weakest = modes.get(0);
        for (YieldMode m : modes) {
            if (m.resistanceN(axialN, largestShare) < weakest.resistanceN(axialN, largestShare)) {
                weakest = m;
            }
        }
        return weakest;
    }
}
