package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Deflection downwards of joists and beams against a part of the span, 3.5.1, live alone or total with creep, 3.5.2 (3.5-1). */
final class MemberDeflection implements Method {
    private static final ParameterDescription LOAD = ParameterDescription.word(
                    "deflectionLoad",
                    "what the deflection is from: live (all but the permanent load) or total (with creep)")
            .rising("live", "total");
    private static final ParameterDescription SPAN_RATIO =
            ParameterDescription.number("spanRatio", RATIO, "span over largest deflection, between supports");
    private static final ParameterDescription CANTILEVER_RATIO =
            ParameterDescription.number("cantileverRatio", RATIO, "length over largest deflection, of a cantilever");
    private static final ParameterDescription CREEP = ParameterDescription.table(
            "creepFactors",
            "time dependent deformation factor K_cr of lumber dry or wet in service",
            wordColumn("condition"),
            numberColumn("kcr", RATIO));

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "nds2018.deflection",
            Nds2018.SOURCE,
            "deflection",
            INCH,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(List.of(StaticsStiffness.TABLE, LOAD, SPAN_RATIO, CANTILEVER_RATIO, CREEP)),
            "Largest deflection over all combinations, spans and cantilevers, with E' = E C_M C_t C_i (Table 4.3.1),"
                    + " against a part of the span or cantilever: from all loads but the permanent one, or from all with"
                    + " K_cr on the permanent one (3.5-1).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return MemberBasis.evaluate(subject, parameters, context, MemberDeflection::worst);
    }

    private static Evaluation worst(MemberBasis basis) {
        Optional<StaticsStiffness> statics = StaticsStiffness.of(basis);
        if (statics.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "The statics know no stiffness of "
                            + basis.adjustments().lumber().name(),
                    basis.parameters().source(StaticsStiffness.TABLE.name()));
        }
        boolean total = basis.parameters().word(LOAD.name()).equals("total");
        double kcr = basis.parameters()
                .table(CREEP.name())
                .find("condition", basis.adjustments().wet() ? "wet" : "dry")
                .orElseThrow(() -> new IllegalArgumentException("No K_cr for lumber wet or dry in service"))
                .number("kcr", RATIO);
        List<Place> places = new ArrayList<>();
        for (Combination combination : basis.combinations()) {
            ActionFactors f = combination.factors();
            Effects effects = basis.analysis()
                    .effects(new ActionFactors(
                            total ? f.permanent() * kcr : 0, f.imposed(), f.concentrated(), f.snow()));
            for (int i = 0; i < effects.spans().size(); i++) {
                double down = effects.spans().get(i).down().value();
                places.add(new Place(basis, statics.get(), combination, total, kcr, i, down));
            }
        }
        return Case.worst(places);
    }

    /** One span under one combination. */
    private record Place(
            MemberBasis basis,
            StaticsStiffness statics,
            Combination combination,
            boolean total,
            double kcr,
            int spanIndex,
            double staticsMm)
            implements Case {

        private Span span() {
            return basis.member().spans().get(spanIndex);
        }

        private ParameterDescription ratioParameter() {
            return span().isCantilever() ? CANTILEVER_RATIO : SPAN_RATIO;
        }

        private double ratio() {
            return basis.parameters().number(ratioParameter().name(), RATIO);
        }

        private double lengthIn() {
            return MILLIMETRE.convert(span().lengthMm(), INCH);
        }

        private double allowedIn() {
            return lengthIn() / ratio();
        }

        private double staticsIn() {
            return MILLIMETRE.convert(staticsMm, INCH);
        }

        private AdjustedValue elasticity() {
            return basis.adjustments().of(Property.ELASTICITY);
        }

        private double deflectionIn() {
            return staticsIn() * statics.psi() / elasticity().psi();
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
                    place() + ", combination " + combination.id() + (total ? "" : " without the permanent load"),
                    working(),
                    basis.assumptions());
        }

        private String place() {
            return "in " + basis.member().spanName(spanIndex);
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Pointer member = basis.member().pointer();
            Sheet w = Sheet.blank();
            if (total) {
                w.given(
                        "K_cr",
                        kcr,
                        RATIO,
                        "time dependent deformation factor, on the permanent load",
                        p.source(CREEP.name()));
            }
            w.given(
                    "E_0",
                    statics.psi(),
                    POUND_FORCE_PER_SQUARE_INCH,
                    "modulus of elasticity in the statics",
                    p.source(StaticsStiffness.TABLE.name()));
            w.given(
                    "Δ_0",
                    staticsIn(),
                    INCH,
                    "largest deflection with E_0 " + place() + ", " + combination.id()
                            + (total ? ", K_cr on the permanent load" : " without the permanent load"),
                    "3.5.1",
                    member);
            elasticity().write(w, basis.grading());
            String symbol = total ? "Δ_T" : "Δ_L";
            w.step(symbol, "Δ_0 * E_0 / E'", deflectionIn(), INCH, total ? "(3.5-1)" : "3.5.1");
            w.given("L", lengthIn(), INCH, "length of " + basis.member().spanName(spanIndex), "", member);
            w.given(
                    "r",
                    ratio(),
                    RATIO,
                    "length over largest deflection",
                    p.source(ratioParameter().name()));
            w.step("Δ_lim", "L / r", allowedIn(), INCH, "");
            w.step("utilisation", symbol + " / Δ_lim", utilisation(), RATIO, "");
            return w.steps();
        }
    }
}
