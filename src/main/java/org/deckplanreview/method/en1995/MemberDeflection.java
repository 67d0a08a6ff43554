package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Deflection downwards of joists and beams against a part of the span, 7.2, on loading or after creep, 2.2.3. That the
 * tip of an unloaded cantilever rises when the span behind it sags is not limited.
 */
final class MemberDeflection implements Method {
    private static final ParameterDescription SPAN_RATIO = ParameterDescription.number(
                    "spanRatio", RATIO, "span over largest deflection, between supports")
            .higherIsStricter();
    private static final ParameterDescription CANTILEVER_RATIO = ParameterDescription.number(
                    "cantileverRatio", RATIO, "length over largest deflection, of a cantilever")
            .higherIsStricter();

    private final DeflectionState state;
    private final MethodDescription description;

    MemberDeflection(DeflectionState state) {
        this.state = state;
        boolean creeps = state == DeflectionState.FINAL;
        description = new MethodDescription(
                creeps ? "en1995.finalDeflection" : "en1995.instantaneousDeflection",
                En1995.SOURCE,
                creeps ? "final deflection" : "instantaneous deflection",
                MILLIMETRE,
                MemberBasis.SUBJECTS,
                MemberBasis.parameters(
                        creeps ? Creep.PARAMETERS : List.of(),
                        List.of(StrengthClass.TABLE, Combination.COMBINATIONS, Combination.Psi.TABLE),
                        SPAN_RATIO,
                        CANTILEVER_RATIO),
                creeps
                        ? "Largest deflection after creep, equations (2.3) to (2.5), over all spans and cantilevers, against a"
                                + " part of the span or cantilever."
                        : "Largest deflection on loading under the characteristic combination, over all spans and"
                                + " cantilevers, against a part of the span or cantilever.");
    }

    @Override
    public MethodDescription description() {
        return description;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return MemberBasis.evaluate(subject, parameters, context, this::worst);
    }

    private Evaluation worst(MemberBasis basis) {
        Sheet stiffness = Sheet.on(basis.start());
        basis.material().enterStiffness(stiffness);
        Creep creep = new Creep(basis.parameters(), basis.member().timber(), basis.timberPointer());
        if (state == DeflectionState.FINAL) {
            creep.calculate(stiffness);
        }
        List<Sheet> limits =
                basis.member().spans().stream().map(s -> limit(basis, s)).toList();
        List<Case> places = new ArrayList<>();
        for (Combination combination : Loading.UNIFORM.filter(basis.combinations(State.SERVICEABILITY))) {
            Sheet loaded = Sheet.on(stiffness);
            ActionFactors factors = state == DeflectionState.FINAL
                    ? creep.factors(loaded, combination, basis.psi())
                    : combination.factors();
            Effects effects = basis.analysis().effects(factors);
            for (int i = 0; i < effects.spans().size(); i++) {
                Sheet deflection = Sheet.on(loaded);
                enterDeflection(deflection, basis, effects.spans().get(i).down().value(), i, combination);
                int span = i;
                Sheet sheet = Sheet.on(deflection, limits.get(i));
                places.add(state.utilisation()
                        .of(
                                sheet,
                                () -> basis.working(combination.factors(), sheet),
                                () -> "in " + basis.spanName(span) + ", combination " + combination.id(),
                                () -> basis.assumptions(
                                        state == DeflectionState.FINAL
                                                ? Creep.assumptions(
                                                        basis.member().timber())
                                                : List.of())));
            }
        }
        return Case.worst(places);
    }

    private void enterDeflection(Sheet sheet, MemberBasis basis, double downMm, int span, Combination combination) {
        sheet.given(
                state.symbol(),
                downMm,
                MILLIMETRE,
                () -> "largest deflection in " + basis.spanName(span) + ", " + combination.id(),
                state.clause(),
                basis.member().pointer());
    }

    private static Sheet limit(MemberBasis basis, Span span) {
        Sheet sheet = Sheet.blank();
        sheet.given(
                "l",
                span.lengthMm(),
                MILLIMETRE,
                () -> "length of " + basis.spanName(basis.member().spans().indexOf(span)),
                "",
                basis.member().pointer());
        DeflectionState.calculateLimit(sheet, basis.parameters(), span.isCantilever() ? CANTILEVER_RATIO : SPAN_RATIO);
        return sheet;
    }
}
