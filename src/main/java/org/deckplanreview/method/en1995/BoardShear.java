package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Shear of boards beside a joist, 6.1.7 (6.13) with (6.13a). */
final class BoardShear implements Method {
    private static final Formula UNIFORM_SHEAR = Formula.of("V_d = q_d * l / 2", NEWTON_, "");
    private static final Formula SHEAR_WITH_POINT = Formula.of("V_d = q_d * l / 2 + P_d", NEWTON_, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.boardShear",
            En1995.SOURCE,
            "shear stress",
            NEWTON_PER_SQUARE_MILLIMETRE,
            BoardBasis.SUBJECTS,
            MemberBasis.parameters(
                    Inputs.OF_STRENGTH, List.of(), ShearStress.KCR, BoardBasis.GROOVE_DEPTH, BoardBasis.SHARE),
            "Shear stress of one board beside a joist, with the concentrated load next to the joist, on the breadth that"
                    + " cracks leave (6.13a), against the design shear strength: equation (6.13).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return BoardBasis.evaluate(subject, parameters, context, BoardShear::worst);
    }

    private static Evaluation worst(BoardBasis basis) {
        Sheet breadth = Sheet.on(basis.start());
        basis.enterSpan(breadth);
        ShearStress.enterBreadth(breadth, basis.parameters());
        Sheet characteristic = basis.characteristic(Strength.SHEAR);
        return Case.worst(basis.combinations(State.ULTIMATE, Loading.of(basis.parameters())).stream()
                .map(c -> place(basis, c, breadth, basis.design(characteristic, Strength.SHEAR, c)))
                .toList());
    }

    private static Case place(BoardBasis basis, Combination combination, Sheet breadth, Sheet strength) {
        Sheet stress = Sheet.on(breadth);
        basis.enterLoads(stress, combination);
        stress.calculate(combination.isConcentrated() ? SHEAR_WITH_POINT : UNIFORM_SHEAR);
        stress.calculate(ShearStress.OF_RECTANGLE);
        return basis.place(ShearStress.UTILISATION, Sheet.on(stress, strength), combination, "beside a joist");
    }
}
