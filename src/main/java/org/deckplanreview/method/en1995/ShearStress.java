package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Shear stress of a rectangle, 6.1.7. */
final class ShearStress {
    static final ParameterDescription KCR =
            ParameterDescription.number("kcr", RATIO, "crack factor for shear of solid timber");

    static final Formula EFFECTIVE_BREADTH = Formula.of("b_ef = k_cr * b", MILLIMETRE, "(6.13a)");
    static final Formula OF_RECTANGLE =
            Formula.of("τ_d = 1.5 * V_d / (b_ef * h)", NEWTON_PER_SQUARE_MILLIMETRE, "6.1.7");
    static final Utilisation UTILISATION = Utilisation.atMost("τ_d", "f_v,d", NEWTON_PER_SQUARE_MILLIMETRE, "(6.13)");

    private ShearStress() {}

    /** Calculates the breadth that cracks leave, (6.13a), of the breadth b on the sheet. */
    static void enterBreadth(Sheet sheet, Parameters parameters) {
        parameters.enter(sheet, "k_cr", KCR);
        sheet.calculate(EFFECTIVE_BREADTH);
    }

    /**
     * The worst of a member's supports over all combinations.
     *
     * @param section the sheet on which stands what shears
     * @param stress of V_d
     */
    static Evaluation worst(
            MemberBasis basis, Sheet section, Formula stress, Utilisation utilisation, List<String> assumptions) {
        Sheet characteristic = basis.characteristic(Strength.SHEAR);
        List<Case> places = new ArrayList<>();
        for (Combination combination : Loading.of(basis.parameters()).filter(basis.combinations(State.ULTIMATE))) {
            Sheet strength = basis.design(characteristic, Strength.SHEAR, combination);
            List<Effects.SupportEffects> supports =
                    basis.analysis().effects(combination.factors()).supports();
            for (int i = 0; i < supports.size(); i++) {
                int support = i;
                Sheet sheared = Sheet.on(section);
                double shearN = supports.get(i).shear().value();
                basis.enterForce(sheared, "V_d", shearN, "design shear force at ", i, combination);
                sheared.calculate(stress);
                places.add(basis.place(
                        utilisation,
                        Sheet.on(sheared, strength),
                        combination,
                        () -> "at " + basis.supportName(support),
                        () -> basis.assumptions(assumptions)));
            }
        }
        return Case.worst(places);
    }
}
