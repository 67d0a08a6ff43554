package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
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
                    DesignStrength.PARAMETERS,
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
        List<Place> places = new ArrayList<>();
        for (Combination combination : Loading.of(basis.parameters()).filter(basis.combinations(State.ULTIMATE))) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < effects.supports().size(); i++) {
                double shear = effects.supports().get(i).shear().value();
                places.add(new Place(
                        basis,
                        combination,
                        i,
                        shear,
                        basis.designStrength("v", basis.strengthClass().fvk(), combination)));
            }
        }
        return Case.worst(places);
    }

    /** Beside one support under one combination. */
    private record Place(MemberBasis basis, Combination combination, int support, double shearN, DesignStrength fv)
            implements Case {
        private double kcr() {
            return basis.parameters().number(ShearStress.KCR.name(), RATIO);
        }

        private double effectiveBreadthMm() {
            return ShearStress.effectiveBreadth(kcr(), basis.section().breadthMm());
        }

        private double stress() {
            return ShearStress.ofRectangle(
                    shearN, effectiveBreadthMm(), basis.section().depthMm());
        }

        @Override
        public double utilisation() {
            return stress() / fv.value();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(stress(), NEWTON_PER_SQUARE_MILLIMETRE),
                    Sense.AT_MOST,
                    Measure.of(fv.value(), NEWTON_PER_SQUARE_MILLIMETRE),
                    utilisation(),
                    "at " + basis.supportName(support) + ", combination " + combination.id() + ", "
                            + fv.modification().duration(),
                    working(),
                    basis.assumptions(List.of()));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given(
                    "V_d",
                    shearN,
                    NEWTON_,
                    "design shear force at " + basis.supportName(support) + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            w.given("k_cr", kcr(), RATIO, "crack factor", p.source(ShearStress.KCR.name()));
            w.step("b_ef", "k_cr * b", effectiveBreadthMm(), MILLIMETRE, "(6.13a)");
            w.step("τ_d", "1.5 * V_d / (b_ef * h)", stress(), NEWTON_PER_SQUARE_MILLIMETRE, "6.1.7");
            fv.write(w, p, "shear strength of " + basis.strengthClass().name(), basis.strengthClassPointer());
            w.step("utilisation", "τ_d / f_v,d", utilisation(), RATIO, "(6.13)");
            return w.steps();
        }
    }
}
