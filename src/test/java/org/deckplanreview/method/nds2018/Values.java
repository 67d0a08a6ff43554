package org.deckplanreview.method.nds2018;

import org.deckplanreview.method.en1995.StandardParameters;

/** The values on file of NDS 2018 and its supplement, for lumber outdoors. */
final class Values {
    private Values() {}

    static StandardParameters onFile() {
        return StandardParameters.of("nds-2018", "nds-supplement-2018", "asce7-2016")
                .with("serviceCondition", "wet")
                .with("sideRestraint", "boards");
    }
}
