package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Deflection of a cantilever's tip under one load there: an overhanging beam, with what the span behind it adds. */
final class TipDeflection implements Method {
    private static final ParameterDescription LOAD =
            ParameterDescription.number("tipLoad", POUND_FORCE, "load at the tip of a cantilever");
    private static final ParameterDescription TIP_RATIO =
            ParameterDescription.number("tipRatio", RATIO, "length over largest deflection, of a cantilever's tip");

    private static final Formula DEFLECTION = Formula.of("Δ = P * a^2 * (a + L) / (3 * E' * I)", INCH, "3.5.1");
    private static final Formula LIMIT = Formula.of("Δ_lim = a / r", INCH, "");
    private static final Formula UTILISATION = Formula.of("utilisation = Δ / Δ_lim", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "nds2018.tipDeflection",
            Nds2018.SOURCE,
            "deflection of the cantilever's tip",
            INCH,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(List.of(LOAD, TIP_RATIO)),
            "Largest deflection of a cantilever's tip under one load there, P a^2 (a + L) / (3 E' I) with E' = E C_M C_t C_i"
                    + " (Table 4.3.1) for a cantilever a beside a span L, against a part of a.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return MemberBasis.evaluate(subject, parameters, context, TipDeflection::worst);
    }

    private static Evaluation worst(MemberBasis basis) {
        List<Span> spans = basis.member().spans();
        List<Case> tips = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            if (spans.get(i).isCantilever()) {
                int behind = spans.get(i).kind() == Span.Kind.CANTILEVER_AT_START ? i + 1 : i - 1;
                tips.add(tip(basis, i, spans.get(behind)));
            }
        }
        return tips.isEmpty() ? new Evaluation.NotApplicable("It has no cantilever") : Case.worst(tips);
    }

    private static Case tip(MemberBasis basis, int index, Span behind) {
        Member member = basis.member();
        Sheet load = Sheet.on(basis.section());
        basis.parameters().enter(load, "P", LOAD);
        load.given(
                "a",
                MILLIMETRE.convert(member.spans().get(index).lengthMm(), INCH),
                INCH,
                () -> "length of " + member.spanName(index),
                "",
                member.pointer());
        load.given("L", MILLIMETRE.convert(behind.lengthMm(), INCH), INCH, "span behind it", "", member.pointer());
        load.calculate(Section.SECOND_MOMENT);
        Sheet sheet = Sheet.on(load, basis.adjustments().elasticity());
        sheet.calculate(DEFLECTION);
        basis.parameters().enter(sheet, "r", TIP_RATIO);
        sheet.calculate(LIMIT);
        return SheetCase.of(
                sheet,
                UTILISATION,
                "Δ",
                Sense.AT_MOST,
                "Δ_lim",
                () -> "at " + member.spanName(index),
                () -> basis.assumptions(
                        "One joist carries the load at the tip of its cantilever alone; spans beyond the"
                                + " one behind it are not counted on."));
    }
}
