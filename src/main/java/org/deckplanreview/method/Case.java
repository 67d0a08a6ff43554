package org.deckplanreview.method;

import java.util.List;

/** One place of a subject under one combination. Its working is written only if it turns out to be the worst. */
public interface Case {
    double utilisation();

    Evaluation.Measured measured();

    /** The case of the largest utilisation; of equal ones the first. */
    static Evaluation.Measured worst(List<? extends Case> cases) {
        Case worst = cases.get(0);
        double largest = worst.utilisation();
        for (Case one : cases.subList(1, cases.size())) {
            double utilisation = one.utilisation();
            if (Double.compare(utilisation, largest) > 0) {
                worst = one;
                largest = utilisation;
            }
        }
        return worst.measured();
    }
}
