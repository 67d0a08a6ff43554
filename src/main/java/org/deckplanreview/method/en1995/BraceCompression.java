package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Braces in compression over their own length, 6.1.4 (6.2) with k_c of 6.3.2. */
final class BraceCompression implements Method {
    private static final Formula THINNER_SIDE = Formula.of("t = min(b, h)", MILLIMETRE, "");
    private static final Formula RESISTANCE = Formula.of("F_R,d = k_c,z * f_c,0,d * b * h", NEWTON_, "(6.2), (6.24)");
    private static final Utilisation UTILISATION = Utilisation.atMost("F_b,d", "F_R,d", NEWTON_, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.brace",
            En1995.SOURCE,
            "force in the brace",
            NEWTON_,
            List.of(SubjectKind.BRACES),
            MemberBasis.parameters(
                    MemberBasis.parameters(BraceBasis.PARAMETERS, Material.PARAMETERS),
                    HorizontalLoad.DURATION,
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
                        (b, strengthClass, psi) -> worst(b, strengthClass)));
    }

    private static Evaluation worst(BraceBasis basis, StrengthClass strengthClass) {
        BraceLine brace = basis.brace();
        Parameters p = basis.parameters();
        Pointer timber =
                basis.context().submission().timberPointer(brace.timber().id());
        Material material = new Material(strengthClass, timber.child("strengthClass"), p);
        Sheet column = Sheet.blank();
        double breadth = brace.timber().breadth().mm();
        column.given("b", breadth, MILLIMETRE, "breadth", "", timber.child("breadth"));
        double depth = brace.timber().depth().mm();
        column.given("h", depth, MILLIMETRE, "depth", "", timber.child("depth"));
        column.calculate(THINNER_SIDE);
        String length = "effective length, buckling across its thinner side";
        column.given("l_ef,z", brace.lengthMm(), MILLIMETRE, length, "", brace.pointer());
        material.enter(column, Strength.COMPRESSION_ALONG, 1);
        material.enterLowStiffness(column);
        Buckling.OF_THINNER_SIDE.calculate(column);
        return Case.worst(basis.pushed().stream()
                .map(pushed -> {
                    Modification modification = pushed.load().modification(pushed.combination(), p);
                    Sheet sheet = Sheet.on(pushed.sheet(), column);
                    material.calculate(sheet, Strength.COMPRESSION_ALONG, modification);
                    sheet.calculate(RESISTANCE);
                    return UTILISATION.of(
                            sheet,
                            () -> "combination " + pushed.combination().id() + ", " + modification.duration(),
                            basis::assumptions);
                })
                .toList());
    }
}
