package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.submission.NotchSide;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Shear at notched supports of joists and beams, 6.5.2 (6.60). */
final class MemberNotch implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.notch",
            En1995.SOURCE,
            "shear stress at a notch",
            NEWTON_PER_SQUARE_MILLIMETRE,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(
                    MemberBasis.parameters(DesignStrength.PARAMETERS, SystemStrength.PARAMETERS),
                    NotchedSupport.PARAMETERS,
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    Loading.PARAMETER,
                    ShearStress.KCR),
            "Largest shear stress on the depth that a notch leaves at a support, on the breadth that cracks leave, against"
                    + " k_v f_v,d: equations (6.60) to (6.63); k_v is 1 for a notch opposite the support (6.61).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        Member member = (Member) subject;
        if (member.endNotch().isEmpty()) {
            return new Evaluation.NotApplicable("It is not notched at its supports");
        }
        EndNotch notch = member.endNotch().get();
        if (notch.depth().mm() >= member.timber().depth().mm()) {
            return new Evaluation.OutOfScope("The notch takes the whole depth of the member", "6.5.2");
        }
        return MemberBasis.evaluate(subject, parameters, context, basis -> worst(basis, notch));
    }

    private static Evaluation worst(MemberBasis basis, EndNotch notch) {
        List<Place> places = new ArrayList<>();
        for (Combination combination : Loading.of(basis.parameters()).filter(basis.combinations(State.ULTIMATE))) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < effects.supports().size(); i++) {
                double shear = effects.supports().get(i).shear().value();
                places.add(new Place(
                        basis,
                        notch,
                        combination,
                        i,
                        shear,
                        basis.designStrength("v", basis.strengthClass().fvk(), combination)));
            }
        }
        return Case.worst(places);
    }

    /** One support under one combination. */
    private record Place(
            MemberBasis basis, EndNotch notch, Combination combination, int support, double shearN, DesignStrength fv)
            implements Case {
        private double kcr() {
            return basis.parameters().number(ShearStress.KCR.name(), RATIO);
        }

        private double depthMm() {
            return basis.section().depthMm();
        }

        private double effectiveDepthMm() {
            return depthMm() - notch.depth().mm();
        }

        private double effectiveBreadthMm() {
            return ShearStress.effectiveBreadth(kcr(), basis.section().breadthMm());
        }

        private double stress() {
            return ShearStress.ofRectangle(shearN, effectiveBreadthMm(), effectiveDepthMm());
        }

        private boolean opposite() {
            return notch.side() == NotchSide.OPPOSITE;
        }

        /** (6.61), (6.62). */
        private double kv() {
            return opposite()
                    ? 1
                    : NotchedSupport.of(basis.parameters())
                            .kv(
                                    depthMm(),
                                    effectiveDepthMm(),
                                    notch.slope(),
                                    notch.supportDistance().mm());
        }

        private double allowed() {
            return kv() * fv.value();
        }

        @Override
        public double utilisation() {
            return stress() / allowed();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(stress(), NEWTON_PER_SQUARE_MILLIMETRE),
                    Sense.AT_MOST,
                    Measure.of(allowed(), NEWTON_PER_SQUARE_MILLIMETRE),
                    utilisation(),
                    "at " + basis.supportName(support) + ", combination " + combination.id() + ", "
                            + fv.modification().duration(),
                    working(),
                    basis.assumptions(List.of("Every support of a notched member has the notch.")));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Pointer pointer = basis.member().pointer().child("endNotch");
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given("d_n", notch.depth().mm(), MILLIMETRE, "depth of the notch", "", pointer.child("depth"));
            w.step("h_ef", "h - d_n", effectiveDepthMm(), MILLIMETRE, "6.5.2");
            w.given(
                    "V_d",
                    shearN,
                    NEWTON_,
                    "design shear force at " + basis.supportName(support) + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            w.given("k_cr", kcr(), RATIO, "crack factor", p.source(ShearStress.KCR.name()));
            w.step("b_ef", "k_cr * b", effectiveBreadthMm(), MILLIMETRE, "(6.13a)");
            w.step("τ_d", "1.5 * V_d / (b_ef * h_ef)", stress(), NEWTON_PER_SQUARE_MILLIMETRE, "(6.60)");
            writeKv(w, p, pointer);
            fv.write(w, p, "shear strength of " + basis.strengthClass().name(), basis.strengthClassPointer());
            w.step("utilisation", "τ_d / (k_v * f_v,d)", utilisation(), RATIO, "(6.60)");
            return w.steps();
        }

        private void writeKv(Sheet w, Parameters p, Pointer pointer) {
            if (opposite()) {
                w.step("k_v", "1", 1, RATIO, "(6.61)");
                return;
            }
            NotchedSupport rule = NotchedSupport.of(p);
            w.step("α", "h_ef / h", effectiveDepthMm() / depthMm(), RATIO, "6.5.2");
            w.given("i", notch.slope(), RATIO, "run over depth of the notch's incline", "", pointer.child("slope"));
            w.given(
                    "x",
                    notch.supportDistance().mm(),
                    MILLIMETRE,
                    "from the line of the reaction to the notch's corner",
                    "",
                    pointer.child("supportDistance"));
            w.given("k_n", rule.kn(), RATIO, "factor of solid timber", p.source("kn"));
            w.step("k_v", rule.expression(), kv(), RATIO, "(6.62)");
        }
    }
}
