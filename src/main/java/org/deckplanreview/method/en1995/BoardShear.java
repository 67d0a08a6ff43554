package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Shear of boards beside a joist, 6.1.7 (6.13) with (6.13a). */
final class BoardShear implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.boardShear",
            En1995.SOURCE,
            "shear stress",
            NEWTON_PER_SQUARE_MILLIMETRE,
            BoardBasis.SUBJECTS,
            MemberBasis.parameters(
                    DesignStrength.PARAMETERS,
                    List.of(StrengthClass.TABLE, Combination.COMBINATIONS, Combination.Psi.TABLE),
                    Loading.PARAMETER,
                    ShearStress.KCR,
                    BoardBasis.GROOVE_DEPTH,
                    BoardBasis.SHARE),
            "Shear stress of one board beside a joist, with the concentrated load next to the joist, on the breadth that"
                    + " cracks leave (6.13a), against the design shear strength: equation (6.13).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return BoardBasis.evaluate(subject, parameters, context, BoardShear::worst);
    }

    private static Evaluation worst(BoardBasis basis) {
        return Case.worst(basis.combinations(State.ULTIMATE, Loading.of(basis.parameters())).stream()
                .map(c -> new Place(
                        basis,
                        c,
                        basis.designStrength("v", basis.strengthClass().fvk(), c)))
                .toList());
    }

    /** Beside a joist under one combination. */
    private record Place(BoardBasis basis, Combination combination, DesignStrength fv) implements Case {
        private double shearN() {
            return basis.uniformNPerMm(combination.factors()) * basis.loads().spanMm() / 2
                    + basis.concentratedN(combination.factors());
        }

        private double kcr() {
            return basis.parameters().number(ShearStress.KCR.name(), RATIO);
        }

        private double effectiveBreadthMm() {
            return ShearStress.effectiveBreadth(kcr(), basis.section().breadthMm());
        }

        private double stress() {
            return ShearStress.ofRectangle(
                    shearN(), effectiveBreadthMm(), basis.section().depthMm());
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
                    "beside a joist, combination " + combination.id() + ", "
                            + fv.modification().duration(),
                    working(),
                    basis.assumptions());
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            basis.writeLoads(w, combination);
            basis.writeSpan(w);
            w.step("V_d", "q_d * l / 2" + (combination.isConcentrated() ? " + P_d" : ""), shearN(), NEWTON_, "");
            w.given("k_cr", kcr(), RATIO, "crack factor", p.source(ShearStress.KCR.name()));
            w.step("b_ef", "k_cr * b", effectiveBreadthMm(), MILLIMETRE, "(6.13a)");
            w.step("τ_d", "1.5 * V_d / (b_ef * h)", stress(), NEWTON_PER_SQUARE_MILLIMETRE, "6.1.7");
            fv.write(w, p, "shear strength of " + basis.strengthClass().name(), basis.strengthClassPointer());
            w.step("utilisation", "τ_d / f_v,d", utilisation(), RATIO, "(6.13)");
            return w.steps();
        }
    }
}
