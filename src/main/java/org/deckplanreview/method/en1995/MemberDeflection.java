package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

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
        List<Place> places = new ArrayList<>();
        for (Combination combination : Loading.UNIFORM.filter(basis.combinations(State.SERVICEABILITY))) {
            Effects effects = basis.analysis().effects(factors(basis, combination));
            for (int i = 0; i < effects.spans().size(); i++) {
                double down = effects.spans().get(i).down().value();
                places.add(new Place(basis, combination, i, down));
            }
        }
        return Case.worst(places);
    }

    private ActionFactors factors(MemberBasis basis, Combination combination) {
        return state == DeflectionState.FINAL
                ? combination.withCreep(creep(basis).kdef(), basis.psi())
                : combination.factors();
    }

    private static Creep creep(MemberBasis basis) {
        return Creep.of(basis.parameters(), basis.member().timber());
    }

    /** One span under one combination. */
    private final class Place implements Case {
        private final MemberBasis basis;
        private final Combination combination;
        private final int spanIndex;
        private final double deflectionMm;

        Place(MemberBasis basis, Combination combination, int spanIndex, double deflectionMm) {
            this.basis = basis;
            this.combination = combination;
            this.spanIndex = spanIndex;
            this.deflectionMm = deflectionMm;
        }

        private Span span() {
            return basis.member().spans().get(spanIndex);
        }

        private ParameterDescription ratioParameter() {
            return span().isCantilever() ? CANTILEVER_RATIO : SPAN_RATIO;
        }

        private double ratio() {
            return basis.parameters().number(ratioParameter().name(), RATIO);
        }

        private double allowedMm() {
            return span().lengthMm() / ratio();
        }

        @Override
        public double utilisation() {
            return deflectionMm / allowedMm();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.mm(deflectionMm),
                    Sense.AT_MOST,
                    Measure.mm(allowedMm()),
                    utilisation(),
                    place() + ", combination " + combination.id(),
                    working(),
                    basis.assumptions(
                            state == DeflectionState.FINAL
                                    ? Creep.assumptions(basis.member().timber())
                                    : List.of()));
        }

        private String place() {
            return "in " + basis.spanName(spanIndex);
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given(
                    "E_0,mean",
                    basis.strengthClass().e0Mean(),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "mean modulus of elasticity of " + basis.strengthClass().name(),
                    p.source(StrengthClass.TABLE.name()),
                    basis.strengthClassPointer());
            String symbol = state == DeflectionState.FINAL ? "w_fin" : "w_inst";
            if (state == DeflectionState.FINAL) {
                Creep creep = creep(basis);
                creep.write(w, p, basis.timberPointer());
                combination.writeCreep(w, p, creep.kdef(), basis.psi());
            }
            w.given(
                    symbol,
                    deflectionMm,
                    MILLIMETRE,
                    "largest deflection " + place() + ", " + combination.id(),
                    state == DeflectionState.FINAL ? "2.2.3 (2.2)" : "2.2.3",
                    basis.member().pointer());
            w.given(
                    "l",
                    span().lengthMm(),
                    MILLIMETRE,
                    "length of " + basis.spanName(spanIndex),
                    "",
                    basis.member().pointer());
            w.given(
                    "r",
                    ratio(),
                    RATIO,
                    "length over largest deflection",
                    p.source(ratioParameter().name()));
            w.step("w_lim", "l / r", allowedMm(), MILLIMETRE, "7.2");
            w.step("utilisation", symbol + " / w_lim", utilisation(), RATIO, "7.2");
            return w.steps();
        }
    }
}
