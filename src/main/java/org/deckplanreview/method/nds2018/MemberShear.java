package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.submission.NotchSide;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/**
 * Shear of joists and beams, 3.4.2 (3.4-2), and at notched supports, 3.4.3.2. Load near a support is not left out, though
 * 3.4.3.1 lets it be.
 */
final class MemberShear implements Method {
    private static final ParameterDescription LARGEST_NOTCH = ParameterDescription.number(
            "largestEndNotch", RATIO, "largest depth of a notch at a support over the depth of the member");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "nds2018.shear",
            Nds2018.SOURCE,
            "shear stress",
            POUND_FORCE_PER_SQUARE_INCH,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(List.of(LARGEST_NOTCH)),
            "Largest shear stress beside a support over all combinations, f_v = 3V/2bd (3.4-2), or on what a notch leaves"
                    + " (3.4.3.2), against F_v' = F_v C_D C_M C_t C_i (Table 4.3.1).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        Member member = (Member) subject;
        double largest = parameters.number(LARGEST_NOTCH.name(), RATIO);
        boolean tooDeep = member.endNotch()
                .filter(n -> n.side() == NotchSide.SUPPORT)
                .filter(n -> !Sense.AT_MOST.holds(
                        n.depth().mm(), largest * member.timber().depth().mm()))
                .isPresent();
        if (tooDeep) {
            return new Evaluation.OutOfScope(
                    "A notch on the side of the support is deeper than " + Numbers.plain(largest)
                            + " of the member's depth, which is not permitted",
                    parameters.source(LARGEST_NOTCH.name()));
        }
        return NotchLimit.exceeded(member)
                .orElseGet(() -> MemberBasis.evaluate(subject, parameters, context, MemberShear::worst));
    }

    private static Evaluation worst(MemberBasis basis) {
        List<Place> places = new ArrayList<>();
        for (Combination combination : basis.combinations()) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < effects.supports().size(); i++) {
                places.add(new Place(
                        basis, combination, i, effects.supports().get(i).shear().value()));
            }
        }
        return Case.worst(places);
    }

    /** f_v of a rectangle, psi, (3.4-2). */
    static double stress(double shearLbf, Section section) {
        return 3 * shearLbf / (2 * section.areaIn2());
    }

    /** f_v that (3.4-3) implies for a notch on the tension side, psi: V_r' = 2/3 F_v' b d_n (d_n / d)^2. */
    static double atTensionNotch(double shearLbf, Section section, double leftIn) {
        double share = leftIn / section.depthIn();
        return 3 * shearLbf / (2 * section.breadthIn() * leftIn * share * share);
    }

    /** f_v that (3.4-5) implies for a notch on the compression side: V_r' = 2/3 F_v' b (d - (d - d_n) / d_n e). */
    static double atCompressionNotch(double shearLbf, Section section, double leftIn, double extentIn) {
        double d = section.depthIn();
        return 3 * shearLbf / (2 * section.breadthIn() * (d - (d - leftIn) / leftIn * extentIn));
    }

    /** Beside one support under one combination. */
    private record Place(MemberBasis basis, Combination combination, int support, double shearN) implements Case {

        private Optional<EndNotch> notch() {
            return basis.member().endNotch();
        }

        private double shearLbf() {
            return NEWTON_.convert(shearN, POUND_FORCE);
        }

        private static double leftIn(EndNotch notch, Section section) {
            return section.depthIn() - inches(notch.depth().mm());
        }

        /** e, from the inner edge of the support to the notch's corner, at most d_n. */
        private double extentIn(EndNotch notch) {
            double contact =
                    basis.member().supports().get(support).contactLengthMm().orElse(0);
            double beyond = notch.supportDistance().mm() - contact / 2;
            return Math.min(Math.max(0, inches(beyond)), leftIn(notch, basis.section()));
        }

        private double stress() {
            Section section = basis.section();
            if (notch().isEmpty()) {
                return MemberShear.stress(shearLbf(), section);
            }
            EndNotch notch = notch().get();
            double left = leftIn(notch, section);
            return notch.side() == NotchSide.SUPPORT
                    ? atTensionNotch(shearLbf(), section, left)
                    : atCompressionNotch(shearLbf(), section, left, extentIn(notch));
        }

        private AdjustedValue allowed() {
            return basis.adjustments().of(Property.SHEAR, combination);
        }

        @Override
        public double utilisation() {
            return stress() / allowed().psi();
        }

        @Override
        public Evaluation.Measured measured() {
            String[] notched = notch().isPresent()
                    ? new String[] {"Every support of a notched member has the notch."}
                    : new String[0];
            return new Evaluation.Measured(
                    Measure.of(stress(), POUND_FORCE_PER_SQUARE_INCH),
                    Sense.AT_MOST,
                    Measure.of(allowed().psi(), POUND_FORCE_PER_SQUARE_INCH),
                    utilisation(),
                    "at " + basis.supportName(support) + ", combination " + combination.id(),
                    working(),
                    basis.assumptions(notched));
        }

        private List<WorkingStep> working() {
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given(
                    "V",
                    shearLbf(),
                    POUND_FORCE,
                    "shear force at " + basis.supportName(support) + ", " + combination.id(),
                    basis.parameters().source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            if (notch().isPresent()) {
                writeNotch(w, notch().get());
            } else {
                w.step("f_v", "3 * V / (2 * b * d)", stress(), POUND_FORCE_PER_SQUARE_INCH, "(3.4-2)");
            }
            allowed().write(w, basis.grading());
            w.step("utilisation", "f_v / F_v'", utilisation(), RATIO, "3.4.1");
            return w.steps();
        }

        private void writeNotch(Sheet w, EndNotch notch) {
            Pointer pointer = basis.member().pointer().child("endNotch");
            w.given("a", inches(notch.depth().mm()), INCH, "depth of the notch", "", pointer.child("depth"));
            w.step("d_n", "d - a", leftIn(notch, basis.section()), INCH, "3.4.3.2");
            if (notch.side() == NotchSide.SUPPORT) {
                w.step("f_v", "3 * V / (2 * b * d_n * (d_n / d)^2)", stress(), POUND_FORCE_PER_SQUARE_INCH, "(3.4-3)");
                return;
            }
            w.given(
                    "e",
                    extentIn(notch),
                    INCH,
                    "from the support's inner edge to the notch's corner, at most d_n",
                    "3.4.3.2",
                    pointer.child("supportDistance"));
            w.step(
                    "f_v",
                    "3 * V / (2 * b * (d - (d - d_n) / d_n * e))",
                    stress(),
                    POUND_FORCE_PER_SQUARE_INCH,
                    "(3.4-5)");
        }

        private static double inches(double mm) {
            return MILLIMETRE.convert(mm, INCH);
        }
    }
}
