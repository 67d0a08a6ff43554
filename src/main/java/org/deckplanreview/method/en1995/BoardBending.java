package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;

import java.util.ArrayList;
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

/** Bending of boards, flat, 6.1.6 (6.11): between joists and over the last one. */
final class BoardBending implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.boardBending",
            En1995.SOURCE,
            "bending stress",
            NEWTON_PER_SQUARE_MILLIMETRE,
            BoardBasis.SUBJECTS,
            MemberBasis.parameters(Inputs.OF_STRENGTH, List.of(), BoardBasis.GROOVE_DEPTH, BoardBasis.SHARE),
            "Largest bending stress of one board as a simple beam between joists, or beyond the last one, against the design"
                    + " bending strength with k_h (3.1) of its thickness: equation (6.11) for one axis.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return BoardBasis.evaluate(subject, parameters, context, BoardBending::worst);
    }

    private static Evaluation worst(BoardBasis basis) {
        Sheet characteristic = Sheet.on(basis.start());
        basis.material().enterBending(characteristic, 1, Material.SIZE_FACTOR);
        List<Case> places = new ArrayList<>();
        for (Combination c : basis.combinations(State.ULTIMATE, Loading.of(basis.parameters()))) {
            Sheet strength = basis.design(characteristic, Strength.BENDING, c);
            for (Stretch stretch : Stretch.values()) {
                places.add(place(basis, c, stretch, strength));
            }
        }
        return Case.worst(places);
    }

    /** A part of a board that bends. */
    private enum Stretch {
        BETWEEN_JOISTS("between joists", "q_d * l^2 / 8", "P_d * l / 4"),
        OVERHANG("over the last joist", "q_d * l^2 / 2", "P_d * l");

        private final String place;
        private final Formula uniformMoment;
        private final Formula momentWithPoint;

        Stretch(String place, String uniform, String point) {
            this.place = place;
            uniformMoment = Formula.of("M_d = " + uniform, NEWTON_MILLIMETRE, "");
            momentWithPoint = Formula.of("M_d = " + uniform + " + " + point, NEWTON_MILLIMETRE, "");
        }

        void enterLength(Sheet sheet, BoardBasis basis) {
            if (this == BETWEEN_JOISTS) {
                basis.enterSpan(sheet);
            } else {
                sheet.given(
                        "l",
                        basis.loads().overhangMm(),
                        MILLIMETRE,
                        "largest length of board beyond the last joist",
                        "",
                        basis.field().pointer());
            }
        }
    }

    private static Case place(BoardBasis basis, Combination combination, Stretch stretch, Sheet strength) {
        Sheet stress = Sheet.on(basis.start());
        basis.enterLoads(stress, combination);
        stretch.enterLength(stress, basis);
        stress.calculate(combination.isConcentrated() ? stretch.momentWithPoint : stretch.uniformMoment);
        stress.calculate(Section.MODULUS);
        stress.calculate(BendingStress.OF_SECTION);
        return basis.place(BendingStress.UTILISATION, Sheet.on(stress, strength), combination, stretch.place);
    }
}
