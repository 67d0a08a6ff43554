package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Creep of a timber: the deformation factor, 3.1.4 and 3.2(4), and how far it raises the factors of actions, 2.2.3.
 *
 * @param pointer of the timber
 */
record Creep(Parameters parameters, Timber timber, Pointer pointer) {
    private static final ParameterDescription KDEF = ParameterDescription.table(
            "kdef",
            "deformation factors of solid timber by service class",
            wordColumn("serviceClass"),
            numberColumn("kdef", RATIO));
    private static final ParameterDescription WET_INCREASE = ParameterDescription.number(
            "kdefWetIncrease",
            RATIO,
            "added to k_def for timber put in near fibre saturation and likely to dry under load");
    static final List<ParameterDescription> PARAMETERS = List.of(Modification.SERVICE_CLASS, KDEF, WET_INCREASE);

    private static final Formula WET = Formula.of("k_def = k_def,dry + k_wet", RATIO, "3.2(4)");
    private static final Formula PERMANENT = Formula.of("φ_G,fin = φ_G * (1 + k_def)", RATIO, "(2.3)");

    /** A variable action, whose quasi-permanent part creeps. */
    private enum Variable {
        IMPOSED("Q", "imposed load"),
        CONCENTRATED("P", "concentrated load"),
        SNOW("S", "snow");

        private final String index;
        private final String meaning;
        private final Formula factor;

        Variable(String index, String meaning) {
            this.index = index;
            this.meaning = meaning;
            factor = Formula.of(
                    "φ_" + index + ",fin = φ_" + index + " + ψ_2," + index + " * k_def", RATIO, "(2.4), (2.5)");
        }
    }

    static List<String> assumptions(Timber timber) {
        return timber.installedWet().isPresent()
                ? List.of()
                : List.of(
                        "Timber is not put in near fibre saturation, unless the submission says so (EN 1995-1-1, 3.2(4)).");
    }

    /** Calculates k_def. */
    double calculate(Sheet sheet) {
        String serviceClass = parameters.word(Modification.SERVICE_CLASS.name());
        double dry = parameters
                .table(KDEF.name())
                .find("serviceClass", serviceClass)
                .orElseThrow(() -> new IllegalArgumentException("No k_def for service class " + serviceClass))
                .number("kdef", RATIO);
        boolean isWet = timber.installedWet().orElse(false);
        sheet.given(
                isWet ? "k_def,dry" : "k_def",
                dry,
                RATIO,
                () -> "deformation factor, service class " + serviceClass,
                parameters.source(KDEF.name()));
        if (!isWet) {
            return dry;
        }
        sheet.given(
                "k_wet",
                parameters.number(WET_INCREASE.name(), RATIO),
                RATIO,
                "for timber put in near fibre saturation",
                parameters.source(WET_INCREASE.name()),
                pointer.child("installedWet"));
        return sheet.calculate(WET);
    }

    /**
     * Calculates the factors for the final deflection, 2.2.3 (2.3) to (2.5): creep follows the permanent action and the
     * quasi-permanent part of the variable ones. k_def stands on the sheet.
     */
    ActionFactors factors(Sheet sheet, Combination combination, Combination.Psi psi) {
        ActionFactors factors = combination.factors();
        sheet.given("φ_G", factors.permanent(), RATIO, "factor of the permanent action", combinations());
        return new ActionFactors(
                sheet.calculate(PERMANENT),
                factor(sheet, Variable.IMPOSED, factors.imposed(), psi.imposed2()),
                factor(sheet, Variable.CONCENTRATED, factors.concentrated(), psi.imposed2()),
                factor(sheet, Variable.SNOW, factors.snow(), psi.snow2()));
    }

    private double factor(Sheet sheet, Variable action, double factor, double psi2) {
        if (factor == 0) {
            return 0;
        }
        sheet.given("φ_" + action.index, factor, RATIO, () -> "factor of the " + action.meaning, combinations());
        sheet.given(
                "ψ_2," + action.index,
                psi2,
                RATIO,
                () -> "quasi-permanent part of the " + action.meaning,
                parameters.source(Combination.Psi.TABLE.name()));
        return sheet.calculate(action.factor);
    }

    private String combinations() {
        return parameters.source(Combination.COMBINATIONS.name());
    }
}
