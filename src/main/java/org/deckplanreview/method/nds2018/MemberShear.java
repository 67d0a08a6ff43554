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
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
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

    private static final Formula LEFT_DEPTH = Section.left("3.4.3.2");
    private static final Formula EXTENT = Formula.of("e = min(max(e_s, 0), d_n)", INCH, "3.4.3.2");
    private static final Formula STRESS =
            Formula.of("f_v = 3 * V / (2 * b * d)", POUND_FORCE_PER_SQUARE_INCH, "(3.4-2)");

    /** Which V_r' = 2/3 F_v' b d_n (d_n / d)^2 implies. */
    private static final Formula STRESS_AT_TENSION_NOTCH =
            Formula.of("f_v = 3 * V / (2 * b * d_n * (d_n / d)^2)", POUND_FORCE_PER_SQUARE_INCH, "(3.4-3)");

    /** Which V_r' = 2/3 F_v' b (d - (d - d_n) / d_n e) implies. */
    private static final Formula STRESS_AT_COMPRESSION_NOTCH =
            Formula.of("f_v = 3 * V / (2 * b * (d - (d - d_n) / d_n * e))", POUND_FORCE_PER_SQUARE_INCH, "(3.4-5)");

    private static final Formula ADJUSTED =
            Formula.of("F_v' = F_v * C_D * C_M * C_t * C_i", POUND_FORCE_PER_SQUARE_INCH, "4.3.1");
    private static final Formula UTILISATION = Formula.of("utilisation = f_v / F_v'", RATIO, "3.4.1");

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
        AdjustedValue reference = basis.adjustments().of(Property.SHEAR);
        List<Case> places = new ArrayList<>();
        for (Combination combination : basis.combinations()) {
            Sheet strength = reference.under(combination.duration(basis.parameters()));
            strength.calculate(ADJUSTED);
            List<Effects.SupportEffects> supports =
                    basis.analysis().effects(combination.factors()).supports();
            for (int i = 0; i < supports.size(); i++) {
                places.add(place(basis, combination, i, supports.get(i).shear().value(), strength));
            }
        }
        return Case.worst(places);
    }

    private static Case place(MemberBasis basis, Combination combination, int support, double shearN, Sheet strength) {
        Sheet stress = Sheet.on(basis.section());
        stress.given(
                "V",
                NEWTON_.convert(shearN, POUND_FORCE),
                POUND_FORCE,
                () -> "shear force at " + basis.supportName(support) + ", " + combination.id(),
                basis.combinationSource(),
                basis.member().pointer());
        Optional<EndNotch> notch = basis.member().endNotch();
        notch.ifPresentOrElse(n -> calculateNotched(stress, n, basis, support), () -> stress.calculate(STRESS));
        return SheetCase.of(
                        Sheet.on(stress, strength),
                        UTILISATION,
                        "f_v",
                        Sense.AT_MOST,
                        "F_v'",
                        () -> "at " + basis.supportName(support) + ", combination " + combination.id(),
                        () -> notch.isPresent()
                                ? basis.assumptions("Every support of a notched member has the notch.")
                                : basis.assumptions())
                .after(basis.loads(combination.factors()));
    }

    private static void calculateNotched(Sheet sheet, EndNotch notch, MemberBasis basis, int support) {
        Pointer pointer = basis.member().pointer().child("endNotch");
        sheet.given("a", inches(notch.depth().mm()), INCH, "depth of the notch", "", pointer.child("depth"));
        sheet.calculate(LEFT_DEPTH);
        if (notch.side() == NotchSide.SUPPORT) {
            sheet.calculate(STRESS_AT_TENSION_NOTCH);
            return;
        }
        double contactMm =
                basis.member().supports().get(support).contactLengthMm().orElse(0);
        double beyondMm = notch.supportDistance().mm() - contactMm / 2;
        sheet.given(
                "e_s",
                inches(beyondMm),
                INCH,
                "from the support's inner edge to the notch's corner",
                "3.4.3.2",
                pointer.child("supportDistance"));
        sheet.calculate(EXTENT);
        sheet.calculate(STRESS_AT_COMPRESSION_NOTCH);
    }

    private static double inches(double mm) {
        return MILLIMETRE.convert(mm, INCH);
    }
}
