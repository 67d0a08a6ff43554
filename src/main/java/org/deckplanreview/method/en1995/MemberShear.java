package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Shear of joists and beams, 6.1.7 (6.13) with (6.13a). Load near a support is not left out. */
final class MemberShear implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.shear",
            En1995.SOURCE,
            "shear stress",
            NEWTON_PER_SQUARE_MILLIMETRE,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(
                    Material.PARAMETERS,
                    SystemStrength.PARAMETERS,
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    Loading.PARAMETER,
                    ShearStress.KCR),
            "Largest shear stress beside a support over all combinations, on the breadth that cracks leave (6.13a), against"
                    + " the design shear strength: equation (6.13).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return MemberBasis.evaluate(subject, parameters, context, MemberShear::worst);
    }

    private static Evaluation worst(MemberBasis basis) {
        Sheet breadth = Sheet.on(basis.start());
        ShearStress.enterBreadth(breadth, basis.parameters());
        Sheet characteristic = basis.characteristic(Strength.SHEAR);
        List<Place> places = new ArrayList<>();
        for (Combination combination : Loading.of(basis.parameters()).filter(basis.combinations(State.ULTIMATE))) {
            Sheet strength = basis.design(characteristic, Strength.SHEAR, combination);
            List<Effects.SupportEffects> supports =
                    basis.analysis().effects(combination.factors()).supports();
            for (int i = 0; i < supports.size(); i++) {
                places.add(
                        Place.of(basis, combination, i, supports.get(i).shear().value(), breadth, strength));
            }
        }
        return Case.worst(places);
    }

    /** Beside one support under one combination. */
    private record Place(MemberBasis basis, Combination combination, int support, Sheet sheet, double utilisation)
            implements Case {
        static Place of(
                MemberBasis basis, Combination combination, int support, double shearN, Sheet breadth, Sheet strength) {
            Sheet stress = Sheet.on(breadth);
            basis.enterForce(stress, "V_d", shearN, "design shear force at ", support, combination);
            stress.calculate(ShearStress.OF_RECTANGLE);
            Sheet sheet = Sheet.on(stress, strength);
            return new Place(basis, combination, support, sheet, sheet.calculate(ShearStress.UTILISATION));
        }

        @Override
        public Evaluation.Measured measured() {
            return Evaluation.Measured.on(
                    basis.working(combination.factors(), sheet),
                    sheet.measure("τ_d"),
                    Sense.AT_MOST,
                    sheet.measure("f_v,d"),
                    "at " + basis.supportName(support) + ", " + basis.named(combination),
                    basis.assumptions(List.of()));
        }
    }
}
