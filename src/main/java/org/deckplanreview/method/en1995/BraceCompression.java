package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Braces in compression over their own length, 6.1.4 (6.2) with k_c of 6.3.2. */
final class BraceCompression implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.brace",
            En1995.SOURCE,
            "force in the brace",
            NEWTON_,
            List.of(SubjectKind.BRACES),
            MemberBasis.parameters(
                    MemberBasis.parameters(BraceBasis.PARAMETERS, DesignStrength.PARAMETERS),
                    MemberBasis.parameters(Buckling.PARAMETERS, HorizontalLoad.DURATION),
                    StrengthClass.TABLE),
            "The brace's share of the horizontal load as a force along it, against k_c f_c,0,d A: (6.2) with (6.23) for no"
                    + " moment, buckling across its thinner side from end to end.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        BraceLine brace = (BraceLine) subject;
        return BraceBasis.evaluate(
                brace,
                parameters,
                context,
                basis -> Inputs.gather(
                        brace.timber(),
                        context.submission().timberPointer(brace.timber().id()),
                        Derived.known(basis),
                        context.loadCategories().get(brace.platformIndex()),
                        parameters,
                        (b, strengthClass, psi) -> Case.worst(b.alternatives().stream()
                                .flatMap(alternative -> alternative.combinations().stream()
                                        .map(c -> new Pushed(alternative, c, strengthClass)))
                                .toList())));
    }

    /** The brace under one combination. */
    private record Pushed(BraceBasis basis, Combination combination, StrengthClass strengthClass) implements Case {
        private double thinMm() {
            return Math.min(breadthMm(), depthMm());
        }

        private double breadthMm() {
            return basis.brace().timber().breadth().mm();
        }

        private double depthMm() {
            return basis.brace().timber().depth().mm();
        }

        private Buckling buckling() {
            return new Buckling("z", basis.brace().lengthMm(), thinMm(), strengthClass, basis.parameters());
        }

        private DesignStrength fc0() {
            return new DesignStrength(
                    "c,0",
                    strengthClass.fc0k(),
                    basis.load().modification(combination, basis.parameters()),
                    1,
                    basis.parameters().number(DesignStrength.GAMMA_M.name(), RATIO));
        }

        private double resistanceN() {
            return buckling().kc() * fc0().value() * breadthMm() * depthMm();
        }

        @Override
        public double utilisation() {
            return basis.forceN(combination) / resistanceN();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(basis.forceN(combination), NEWTON_),
                    Sense.AT_MOST,
                    Measure.of(resistanceN(), NEWTON_),
                    utilisation(),
                    "combination " + combination.id() + ", "
                            + fc0().modification().duration(),
                    working(),
                    basis.assumptions());
        }

        private List<WorkingStep> working() {
            Pointer timber = basis.context()
                    .submission()
                    .timberPointer(basis.brace().timber().id());
            Pointer strength = timber.child("strengthClass");
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            basis.writeForce(w, combination);
            w.given("b", breadthMm(), MILLIMETRE, "breadth", "", timber.child("breadth"));
            w.given("h", depthMm(), MILLIMETRE, "depth", "", timber.child("depth"));
            w.step("t", "min(b, h)", thinMm(), MILLIMETRE, "");
            fc0().write(w, p, "strength along the grain of " + strengthClass.name(), strength);
            w.given(
                    "E_0,05",
                    strengthClass.e005(),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "5 % value of the modulus of elasticity",
                    p.source(StrengthClass.TABLE.name()),
                    strength);
            buckling().write(w, "t", "across its thinner side", basis.brace().pointer());
            w.step("F_R,d", "k_c,z * f_c,0,d * b * h", resistanceN(), NEWTON_, "(6.2), (6.24)");
            w.step("utilisation", "F_b,d / F_R,d", utilisation(), RATIO, "");
            return w.steps();
        }
    }
}
