package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.QUARTIC_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
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
        List<Tip> tips = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            if (spans.get(i).isCantilever()) {
                int behind = spans.get(i).kind() == Span.Kind.CANTILEVER_AT_START ? i + 1 : i - 1;
                tips.add(new Tip(basis, i, spans.get(i), spans.get(behind)));
            }
        }
        return tips.isEmpty() ? new Evaluation.NotApplicable("It has no cantilever") : Case.worst(tips);
    }

    /** in. */
    static double deflection(
            double loadLbf, double cantileverIn, double spanIn, double elasticityPsi, double momentIn4) {
        return loadLbf * cantileverIn * cantileverIn * (cantileverIn + spanIn) / (3 * elasticityPsi * momentIn4);
    }

    private record Tip(MemberBasis basis, int index, Span cantilever, Span behind) implements Case {

        private double loadLbf() {
            return basis.parameters().number(LOAD.name(), POUND_FORCE);
        }

        private double cantileverIn() {
            return MILLIMETRE.convert(cantilever.lengthMm(), INCH);
        }

        private double spanIn() {
            return MILLIMETRE.convert(behind.lengthMm(), INCH);
        }

        private AdjustedValue elasticity() {
            return basis.adjustments().of(Property.ELASTICITY);
        }

        private double deflectionIn() {
            return deflection(
                    loadLbf(),
                    cantileverIn(),
                    spanIn(),
                    elasticity().psi(),
                    basis.section().secondMomentIn4());
        }

        private double ratio() {
            return basis.parameters().number(TIP_RATIO.name(), RATIO);
        }

        private double allowedIn() {
            return cantileverIn() / ratio();
        }

        @Override
        public double utilisation() {
            return deflectionIn() / allowedIn();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(deflectionIn(), INCH),
                    Sense.AT_MOST,
                    Measure.of(allowedIn(), INCH),
                    utilisation(),
                    "at " + basis.member().spanName(index),
                    working(),
                    basis.assumptions("One joist carries the load at the tip of its cantilever alone; spans beyond the"
                            + " one behind it are not counted on."));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Pointer member = basis.member().pointer();
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given("P", loadLbf(), POUND_FORCE, "load at the tip", p.source(LOAD.name()));
            w.given("a", cantileverIn(), INCH, "length of " + basis.member().spanName(index), "", member);
            w.given("L", spanIn(), INCH, "span behind it", "", member);
            w.step("I", "b * d^3 / 12", basis.section().secondMomentIn4(), QUARTIC_INCH, "3.3.2");
            elasticity().write(w, basis.grading());
            w.step("Δ", "P * a^2 * (a + L) / (3 * E' * I)", deflectionIn(), INCH, "3.5.1");
            w.given("r", ratio(), RATIO, "length over largest deflection", p.source(TIP_RATIO.name()));
            w.step("Δ_lim", "a / r", allowedIn(), INCH, "");
            w.step("utilisation", "Δ / Δ_lim", utilisation(), RATIO, "");
            return w.steps();
        }
    }
}
