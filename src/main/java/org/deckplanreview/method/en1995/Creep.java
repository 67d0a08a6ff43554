package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * The deformation factor of a timber, 3.1.4 and 3.2(4).
 *
 * @param dry k_def of the service class
 * @param wetIncrease what is added to it for timber put in near fibre saturation; 0 for other timber
 */
record Creep(double dry, double wetIncrease) {
    static final ParameterDescription KDEF = ParameterDescription.table(
            "kdef",
            "deformation factors of solid timber by service class",
            wordColumn("serviceClass"),
            numberColumn("kdef", RATIO));
    static final ParameterDescription WET_INCREASE = ParameterDescription.number(
            "kdefWetIncrease",
            RATIO,
            "added to k_def for timber put in near fibre saturation and likely to dry under load");
    static final List<ParameterDescription> PARAMETERS = List.of(Modification.SERVICE_CLASS, KDEF, WET_INCREASE);

    static Creep of(Parameters p, Timber timber) {
        String serviceClass = p.word(Modification.SERVICE_CLASS.name());
        double dry = p.table(KDEF.name())
                .find("serviceClass", serviceClass)
                .orElseThrow(() -> new IllegalArgumentException("No k_def for service class " + serviceClass))
                .number("kdef", RATIO);
        boolean wet = timber.installedWet().orElse(false);
        return new Creep(dry, wet ? p.number(WET_INCREASE.name(), RATIO) : 0);
    }

    /** k_def. */
    double kdef() {
        return dry + wetIncrease;
    }

    static List<String> assumptions(Timber timber) {
        return timber.installedWet().isPresent()
                ? List.of()
                : List.of(
                        "Timber is not put in near fibre saturation, unless the submission says so (EN 1995-1-1, 3.2(4)).");
    }

    void write(Sheet w, Parameters p, Pointer timber) {
        String meaning = "deformation factor, service class " + p.word(Modification.SERVICE_CLASS.name());
        if (wetIncrease == 0) {
            w.given("k_def", kdef(), RATIO, meaning, p.source(KDEF.name()));
            return;
        }
        w.given("k_def,dry", dry, RATIO, meaning, p.source(KDEF.name()));
        w.given(
                "k_wet",
                wetIncrease,
                RATIO,
                "for timber put in near fibre saturation",
                p.source(WET_INCREASE.name()),
                timber.child("installedWet"));
        w.step("k_def", "k_def,dry + k_wet", kdef(), RATIO, "3.2(4)");
    }
}
