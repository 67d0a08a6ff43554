package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Map;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.submission.NotchSide;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Shear at notched supports of joists and beams, 6.5.2 (6.60). */
final class MemberNotch implements Method {
    private static final ParameterDescription KN =
            ParameterDescription.number("kn", RATIO, "factor of solid timber for notches, with depths in mm");

    static final Formula LEFT_SHARE = Formula.of("α = h_ef / h", RATIO, "6.5.2");

    /** Of a notch on the support's side, of the run of its incline over its depth i and the distance x to its corner. */
    static final Formula FACTOR = Formula.ofNumbers(
            "k_v = min(1, k_n * (1 + 1.1 * i^1.5 / sqrt(h))"
                    + " / (sqrt(h) * (sqrt(α * (1 - α)) + 0.8 * x / h * sqrt(1 / α - α^2))))",
            RATIO,
            "(6.62)",
            Map.of("k_n", RATIO, "i", RATIO, "h", MILLIMETRE, "α", RATIO, "x", MILLIMETRE));

    private static final Formula OPPOSITE_FACTOR = Formula.of("k_v = 1", RATIO, "(6.61)");
    private static final Formula STRESS =
            Formula.of("τ_d = 1.5 * V_d / (b_ef * h_ef)", NEWTON_PER_SQUARE_MILLIMETRE, "(6.60)");
    private static final Utilisation UTILISATION =
            Utilisation.atMost("τ_d", "k_v * f_v,d", NEWTON_PER_SQUARE_MILLIMETRE, "(6.60)");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.notch",
            En1995.SOURCE,
            "shear stress at a notch",
            NEWTON_PER_SQUARE_MILLIMETRE,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(Inputs.OF_STRENGTH, SystemStrength.PARAMETERS, ShearStress.KCR, KN),
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
        List<String> assumptions = List.of("Every support of a notched member has the notch.");
        return ShearStress.worst(basis, left(basis, notch), STRESS, UTILISATION, assumptions);
    }

    /** What the notch leaves, and k_v, which are the same under all combinations. */
    private static Sheet left(MemberBasis basis, EndNotch notch) {
        Pointer pointer = basis.member().pointer().child("endNotch");
        Sheet sheet = Sheet.on(basis.start());
        sheet.given("d_n", notch.depth().mm(), MILLIMETRE, "depth of the notch", "", pointer.child("depth"));
        sheet.calculate(Section.LEFT_DEPTH);
        ShearStress.enterBreadth(sheet, basis.parameters());
        if (notch.side() == NotchSide.OPPOSITE) {
            sheet.calculate(OPPOSITE_FACTOR);
            return sheet;
        }
        sheet.calculate(LEFT_SHARE);
        sheet.given("i", notch.slope(), RATIO, "run over depth of the notch's incline", "", pointer.child("slope"));
        sheet.given(
                "x",
                notch.supportDistance().mm(),
                MILLIMETRE,
                "from the line of the reaction to the notch's corner",
                "",
                pointer.child("supportDistance"));
        basis.parameters().enter(sheet, "k_n", KN);
        sheet.calculate(FACTOR);
        return sheet;
    }
}
