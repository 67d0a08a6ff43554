package org.deckplanreview.method;

import java.util.Comparator;
import java.util.List;

/** One place of a subject under one combination. Its working is written only if it turns out to be the worst. */
public interface Case {
    double utilisation();

    Evaluation.Measured measured();

    /** The case of the largest utilisation; of equal ones the first. */
    static Evaluation.Measured worst(List<? extends Case> cases) {
        return cases.stream()
                .max(Comparator.comparingDouble(Case::utilisation))
                .orElseThrow()
                .measured();
    }
}
