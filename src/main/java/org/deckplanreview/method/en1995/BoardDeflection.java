package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.QUARTIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionFactors;
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

/** Final deflection of boards under uniform load, 2.2.3 and 7.2. */
final class BoardDeflection implements Method {
    private static final ParameterDescription SPAN_RATIO = ParameterDescription.number(
                    "spanRatio", RATIO, "span over largest deflection")
            .higherIsStricter();

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.boardDeflection",
            En1995.SOURCE,
            "final deflection",
            MILLIMETRE,
            BoardBasis.SUBJECTS,
            MemberBasis.parameters(
                    Creep.PARAMETERS,
                    List.of(StrengthClass.TABLE, Combination.COMBINATIONS, Combination.Psi.TABLE),
                    BoardBasis.GROOVE_DEPTH,
                    SPAN_RATIO),
            "Deflection after creep, equations (2.3) to (2.5), of one board as a simple beam under uniform load, against a part"
                    + " of its span.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return BoardBasis.evaluate(subject, parameters, context, BoardDeflection::worst);
    }

    private static Evaluation worst(BoardBasis basis) {
        Creep creep = Creep.of(basis.parameters(), basis.field().timber());
        return Case.worst(basis.combinations(State.SERVICEABILITY, Loading.UNIFORM).stream()
                .map(c -> new Place(basis, c, creep))
                .toList());
    }

    /** The span under one combination. */
    private record Place(BoardBasis basis, Combination combination, Creep creep) implements Case {
        private double loadNPerMm() {
            ActionFactors factors = combination.withCreep(creep.kdef(), basis.psi());
            return basis.uniformNPerMm(factors);
        }

        private double deflectionMm() {
            double l = basis.loads().spanMm();
            return 5
                    * loadNPerMm()
                    * l
                    * l
                    * l
                    * l
                    / (384 * basis.strengthClass().e0Mean() * basis.section().secondMomentMm4());
        }

        private double ratio() {
            return basis.parameters().number(SPAN_RATIO.name(), RATIO);
        }

        private double allowedMm() {
            return basis.loads().spanMm() / ratio();
        }

        @Override
        public double utilisation() {
            return deflectionMm() / allowedMm();
        }

        @Override
        public Evaluation.Measured measured() {
            List<String> assumptions = new ArrayList<>(basis.assumptions());
            assumptions.addAll(Creep.assumptions(basis.field().timber()));
            return new Evaluation.Measured(
                    Measure.mm(deflectionMm()),
                    Sense.AT_MOST,
                    Measure.mm(allowedMm()),
                    utilisation(),
                    "between joists, combination " + combination.id(),
                    working(),
                    List.copyOf(assumptions));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            basis.writeSpan(w);
            creep.write(w, p, basis.timberPointer());
            combination.writeCreep(w, p, creep.kdef(), basis.psi());
            w.given(
                    "q_fin",
                    loadNPerMm(),
                    NEWTON_PER_MILLIMETRE,
                    "uniform load along a board with these factors",
                    "2.2.3 (2.2)",
                    basis.field().pointer());
            w.given(
                    "E_0,mean",
                    basis.strengthClass().e0Mean(),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "mean modulus of elasticity of " + basis.strengthClass().name(),
                    p.source(StrengthClass.TABLE.name()),
                    basis.strengthClassPointer());
            w.step("I_y", "b * h^3 / 12", basis.section().secondMomentMm4(), QUARTIC_MILLIMETRE, "");
            w.step("w_fin", "5 * q_fin * l^4 / (384 * E_0,mean * I_y)", deflectionMm(), MILLIMETRE, "2.2.3");
            w.given("r", ratio(), RATIO, "span over largest deflection", p.source(SPAN_RATIO.name()));
            w.step("w_lim", "l / r", allowedMm(), MILLIMETRE, "7.2");
            w.step("utilisation", "w_fin / w_lim", utilisation(), RATIO, "7.2");
            return w.steps();
        }
    }
}
