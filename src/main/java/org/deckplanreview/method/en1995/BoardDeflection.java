package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Final deflection of boards under uniform load, 2.2.3 and 7.2. */
final class BoardDeflection implements Method {
    private static final ParameterDescription SPAN_RATIO = ParameterDescription.number(
                    "spanRatio", RATIO, "span over largest deflection")
            .higherIsStricter();

    private static final Formula DEFLECTION =
            Formula.of("w_fin = 5 * q_fin * l^4 / (384 * E_0,mean * I_y)", MILLIMETRE, "2.2.3");

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
        Sheet board = Sheet.on(basis.start());
        basis.enterSpan(board);
        basis.material().enterStiffness(board);
        board.calculate(Section.SECOND_MOMENT);
        DeflectionState.calculateLimit(board, basis.parameters(), SPAN_RATIO);
        Creep creep = new Creep(basis.parameters(), basis.field().timber(), basis.timberPointer());
        creep.calculate(board);
        return Case.worst(basis.combinations(State.SERVICEABILITY, Loading.UNIFORM).stream()
                .map(c -> place(basis, c, creep, board))
                .toList());
    }

    private static Case place(BoardBasis basis, Combination combination, Creep creep, Sheet board) {
        Sheet sheet = Sheet.on(board);
        sheet.given(
                "q_fin",
                basis.uniformNPerMm(creep.factors(sheet, combination, basis.psi())),
                NEWTON_PER_MILLIMETRE,
                "uniform load along a board with these factors",
                "2.2.3 (2.2)",
                basis.field().pointer());
        sheet.calculate(DEFLECTION);
        return DeflectionState.FINAL
                .utilisation()
                .of(
                        sheet,
                        () -> "between joists, combination " + combination.id(),
                        () -> Stream.concat(
                                        basis.assumptions().stream(),
                                        Creep.assumptions(basis.field().timber()).stream())
                                .toList());
    }
}
