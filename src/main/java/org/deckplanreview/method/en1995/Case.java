package org.deckplanreview.method.en1995;

import java.util.Comparator;
import java.util.List;
import org.deckplanreview.method.Evaluation;

/** One place of a member under one combination. Its working is written only if it turns out to be the worst. */
interface Case {
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
