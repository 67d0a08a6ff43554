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
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
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
            ParameterDescription.number("spanRatio", RATIO, "length over largest deflection, between supports");
    private static final ParameterDescription CANTILEVER_RATIO =
            ParameterDescription.number("cantileverRatio", RATIO, "length over largest deflection, of a cantilever");
    private static final ParameterDescription CREEP = ParameterDescription.table(
            "creepFactors",
            "time dependent deformation factor K_cr of lumber dry or wet in service",
            wordColumn("condition"),
            numberColumn("kcr", RATIO));

    private static final Formula LIMIT = Formula.of("Δ_lim = L / r", INCH, "");

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
        Kind kind = basis.parameters().word(LOAD.name()).equals("total") ? Kind.TOTAL : Kind.LIVE;
        Sheet start = Sheet.blank();
        double permanent = kind == Kind.TOTAL ? enterCreep(start, basis) : 0;
        start.given(
                "E_0",
                statics.get().psi(),
                POUND_FORCE_PER_SQUARE_INCH,
                "modulus of elasticity in the statics",
                basis.parameters().source(StaticsStiffness.TABLE.name()));
        Sheet elasticity = basis.adjustments().elasticity();
        List<Case> places = new ArrayList<>();
        for (Combination combination : basis.combinations()) {
            ActionFactors f = combination.factors();
            ActionFactors factors =
                    new ActionFactors(f.permanent() * permanent, f.imposed(), f.concentrated(), f.snow());
            Effects effects = basis.analysis().effects(factors);
            for (int i = 0; i < effects.spans().size(); i++) {
                double downMm = effects.spans().get(i).down().value();
                places.add(place(basis, combination, kind, i, downMm, start, elasticity)
                        .after(basis.loads(f)));
            }
        }
        return Case.worst(places);
    }

    /** The load that a deflection is from. */
    private enum Kind {
        LIVE("Δ_L", "3.5.1", " without the permanent load"),
        TOTAL("Δ_T", "(3.5-1)", "");

        private final String symbol;
        private final Formula deflection;
        private final Formula utilisation;
        private final String without;

        Kind(String symbol, String clause, String without) {
            this.symbol = symbol;
            this.without = without;
            deflection = Formula.of(symbol + " = Δ_0 * E_0 / E'", INCH, clause);
            utilisation = Formula.of("utilisation = " + symbol + " / Δ_lim", RATIO, "");
        }
    }

    private static double enterCreep(Sheet sheet, MemberBasis basis) {
        String condition = basis.adjustments().wet() ? "wet" : "dry";
        double kcr = basis.parameters()
                .table(CREEP.name())
                .find("condition", condition)
                .orElseThrow(() -> new IllegalArgumentException("No K_cr for lumber " + condition + " in service"))
                .number("kcr", RATIO);
        return sheet.given(
                "K_cr",
                kcr,
                RATIO,
                "time dependent deformation factor, on the permanent load",
                basis.parameters().source(CREEP.name()));
    }

    private static SheetCase place(
            MemberBasis basis,
            Combination combination,
            Kind kind,
            int spanIndex,
            double staticsMm,
            Sheet start,
            Sheet elasticity) {
        Member member = basis.member();
        Span span = member.spans().get(spanIndex);
        Sheet statics = Sheet.on(start);
        statics.given(
                "Δ_0",
                MILLIMETRE.convert(staticsMm, INCH),
                INCH,
                () -> "largest deflection with E_0 in " + member.spanName(spanIndex) + ", " + combination.id()
                        + (kind == Kind.TOTAL ? ", K_cr on the permanent load" : kind.without),
                "3.5.1",
                member.pointer());
        Sheet sheet = Sheet.on(statics, elasticity);
        sheet.calculate(kind.deflection);
        sheet.given(
                "L",
                MILLIMETRE.convert(span.lengthMm(), INCH),
                INCH,
                () -> "length of " + member.spanName(spanIndex),
                "",
                member.pointer());
        basis.parameters().enter(sheet, "r", span.isCantilever() ? CANTILEVER_RATIO : SPAN_RATIO);
        sheet.calculate(LIMIT);
        return SheetCase.of(
                sheet,
                kind.utilisation,
                kind.symbol,
                Sense.AT_MOST,
                "Δ_lim",
                () -> "in " + member.spanName(spanIndex) + ", combination " + combination.id() + kind.without,
                basis::assumptions);
    }
}
