package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_INCH;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.method.Bearing;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.Notches;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Compression perpendicular to grain where joists and beams bear, 3.10.2, with the bearing area factor, 3.10.4 (3.10-2). */
final class MemberBearing implements Method {
    private static final Formula AREA = Formula.of("A = b * l_b", SQUARE_INCH, "");
    private static final Formula AREA_ON_POST = Formula.of("A = min(b, b_p) * l_b", SQUARE_INCH, "");
    private static final Formula AREA_BESIDE_AXIS =
            Formula.of("A = min(b, b_p, (b + b_p) / 2 - o) * l_b", SQUARE_INCH, "");
    private static final Formula STRESS = Formula.of("f_c,perp = R / A", POUND_FORCE_PER_SQUARE_INCH, "3.10.2");
    private static final Formula AREA_FACTOR = Formula.of(
            "C_b = (l_b + 0.375 [in]) / l_b if l_b < 6 [in] and l_end >= 3 [in]; 1", RATIO, "(3.10-2); 3.10.4");
    private static final Formula ADJUSTED =
            Formula.of("F_c,perp' = F_c,perp * C_M * C_t * C_i * C_b", POUND_FORCE_PER_SQUARE_INCH, "4.3.1");
    private static final Formula UTILISATION = Formula.of("utilisation = f_c,perp / F_c,perp'", RATIO, "3.10.2");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "nds2018.bearing",
            Nds2018.SOURCE,
            "bearing stress perpendicular to grain",
            POUND_FORCE_PER_SQUARE_INCH,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(List.of()),
            "Largest stress perpendicular to grain over all supports on which the member lies, against F_cperp' = F_cperp"
                    + " C_M C_t C_i C_b (Table 4.3.1, 3.10.2), with C_b of (3.10-2). Joists in hangers on a beam's face and"
                    + " beams bolted to a post's side are left to the connection.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return Bearing.evaluate(
                (Member) subject,
                context,
                () -> MemberBasis.evaluate(subject, parameters, context, MemberBearing::worst));
    }

    private static Evaluation worst(MemberBasis basis) {
        Sheet reference = basis.adjustments().of(Property.BEARING).always();
        List<Case> places = new ArrayList<>();
        List<MemberSupport> supports = basis.member().supports();
        for (Combination combination : basis.combinations()) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < supports.size(); i++) {
                if (supports.get(i).contactLengthMm().isPresent()) {
                    double reactionN = effects.supports().get(i).largestReactionN();
                    places.add(place(basis, combination, i, Math.max(0, reactionN), reference));
                }
            }
        }
        return Case.worst(places);
    }

    private static Case place(
            MemberBasis basis, Combination combination, int support, double reactionN, Sheet reference) {
        Sheet stress = Sheet.on(basis.section());
        stress.given(
                "R",
                NEWTON_.convert(reactionN, POUND_FORCE),
                POUND_FORCE,
                () -> "reaction at " + basis.supportName(support) + ", " + combination.id(),
                basis.combinationSource(),
                basis.member().pointer());
        stress.given(
                "l_b",
                inches(bearsMm(basis, support, -1) + bearsMm(basis, support, 1)),
                INCH,
                () -> "bearing length along the member at " + basis.supportName(support),
                "",
                basis.member().supports().get(support).pointer());
        calculateArea(stress, basis, support);
        stress.calculate(STRESS);
        Sheet sheet = Sheet.on(stress, reference);
        sheet.given(
                "l_end",
                inches(Math.min(beyondMm(basis, support, -1), beyondMm(basis, support, 1))),
                INCH,
                "from the bearing to the nearer end of the member",
                "3.10.4",
                basis.member().pointer());
        sheet.calculate(AREA_FACTOR);
        sheet.calculate(ADJUSTED);
        return SheetCase.of(
                        sheet,
                        UTILISATION,
                        "f_c,perp",
                        Sense.AT_MOST,
                        "F_c,perp'",
                        () -> "at " + basis.supportName(support) + ", combination " + combination.id(),
                        () -> basis.assumptions("Members lie square and in full contact on what carries them."))
                .after(basis.loads(combination.factors()));
    }

    private static double inches(double mm) {
        return MILLIMETRE.convert(mm, INCH);
    }

    private static double bearsMm(MemberBasis basis, int support, int towards) {
        return Notches.bearsMm(basis.member(), support, towards);
    }

    /** From where the member bears to its end that way, or to the notch before it. */
    private static double beyondMm(MemberBasis basis, int support, int towards) {
        double atMm = basis.member().supports().get(support).atMm();
        double toEndMm = towards < 0 ? atMm : basis.member().lengthMm() - atMm;
        double freeMm = Math.min(toEndMm, Notches.cornerMm(basis.member(), support, towards));
        return Math.max(0, freeMm - bearsMm(basis, support, towards));
    }

    private static void calculateArea(Sheet sheet, MemberBasis basis, int support) {
        Bearing bearing = new Bearing(basis.member(), support, basis.context());
        Optional<PostPlace> post = bearing.post();
        if (post.isEmpty()) {
            sheet.calculate(AREA);
            return;
        }
        Timber timber = post.get().timber();
        sheet.given(
                "b_p",
                inches(timber.depth().mm()),
                INCH,
                "side of the post across the beam",
                "",
                basis.context().submission().timberPointer(timber.id()).child("depth"));
        double offMm = bearing.offMm(post.get());
        if (offMm == 0) {
            sheet.calculate(AREA_ON_POST);
            return;
        }
        sheet.given(
                "o",
                inches(offMm),
                INCH,
                "from the post's axis to the beam's line",
                "",
                post.get().pointer());
        sheet.calculate(AREA_BESIDE_AXIS);
    }
}
