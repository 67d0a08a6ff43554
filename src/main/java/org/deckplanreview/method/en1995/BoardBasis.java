package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.LoadPath.BoardLoads;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.BoardProfile;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What a check of boards starts from: one board as a beam from joist to joist.
 *
 * @param start the sheet with which every working begins: b, and h that grooves leave
 */
record BoardBasis(
        BoardField field,
        Loads loads,
        Material material,
        Psi psi,
        Parameters parameters,
        Pointer timberPointer,
        Sheet start) {

    private static final Formula LEFT_DEPTH = Formula.of("h = h_0 - g", MILLIMETRE, "");

    static final List<SubjectKind> SUBJECTS = List.of(SubjectKind.BOARDS);

    static final ParameterDescription GROOVE_DEPTH = ParameterDescription.number(
            "grooveDepth", MILLIMETRE, "taken off the thickness of boards that are grooved or may be");
    static final ParameterDescription SHARE = ParameterDescription.number(
            "concentratedShareOnBoard", RATIO, "part of the concentrated load that one board takes");

    /** Loads on one board with the lengths over which it carries them. */
    record Loads(BoardLoads board, double spanMm, double overhangMm) {}

    static Evaluation evaluate(
            Subject subject, Parameters parameters, ReviewContext context, Function<BoardBasis, Evaluation> check) {
        BoardField field = (BoardField) subject;
        if (!field.isSawn()) {
            return new Evaluation.NotApplicable(
                    "the boards are manufactured, and what they carry is their maker's to say");
        }
        Derived<Loads> loads = context.loadPath()
                .boards(field)
                .with(field.spanMm(), (board, span) -> new Loads(board, span, 0))
                .with(field.overhangMm(), (l, overhang) -> new Loads(l.board(), l.spanMm(), overhang));
        Pointer timber = context.submission().timberPointer(field.timber().id());
        return Inputs.gather(
                field.timber(),
                timber,
                loads,
                context.loadCategories().get(field.platformIndex()),
                parameters,
                (l, strengthClass, psi) -> check.apply(new BoardBasis(
                        field,
                        l,
                        new Material(strengthClass, timber.child("strengthClass"), parameters),
                        psi,
                        parameters,
                        timber,
                        section(field, timber, parameters))));
    }

    /** Combinations of a state and loading. */
    List<Combination> combinations(State state, Loading loading) {
        return loading.filter(
                Combination.of(parameters, state, psi, loads.board().snowNPerMm() != 0));
    }

    /** N/mm along the board. */
    double uniformNPerMm(ActionFactors f) {
        BoardLoads b = loads.board();
        return f.permanent() * b.permanentNPerMm() + f.imposed() * b.imposedNPerMm() + f.snow() * b.snowNPerMm();
    }

    /** N. */
    double concentratedN(ActionFactors f) {
        return f.concentrated()
                * parameters.number(SHARE.name(), RATIO)
                * loads.board().concentratedN();
    }

    private static Sheet section(BoardField field, Pointer timber, Parameters parameters) {
        Sheet sheet = Sheet.blank();
        sheet.given("b", field.timber().breadth().mm(), MILLIMETRE, "width of a board", "", timber.child("breadth"));
        boolean isSmooth =
                field.boards().profile().filter(p -> p == BoardProfile.SMOOTH).isPresent();
        double thicknessMm = field.timber().depth().mm();
        sheet.given(isSmooth ? "h" : "h_0", thicknessMm, MILLIMETRE, "thickness", "", timber.child("depth"));
        if (!isSmooth) {
            sheet.given(
                    "g",
                    parameters.number(GROOVE_DEPTH.name(), MILLIMETRE),
                    MILLIMETRE,
                    "depth of grooves",
                    parameters.source(GROOVE_DEPTH.name()),
                    field.pointer().child("profile"));
            sheet.calculate(LEFT_DEPTH);
        }
        return sheet;
    }

    /** What of a strength is the same under all combinations. */
    Sheet characteristic(Strength strength) {
        Sheet sheet = Sheet.on(start);
        material.enter(sheet, strength, 1);
        return sheet;
    }

    /** A strength for design under a combination. */
    Sheet design(Sheet characteristic, Strength strength, Combination combination) {
        Sheet sheet = Sheet.on(characteristic);
        material.calculate(sheet, strength, modification(combination));
        return sheet;
    }

    private Modification modification(Combination combination) {
        return Modification.of(parameters, combination.factors());
    }

    /** A place under a combination, whose utilisation is still to be calculated. */
    Case place(Utilisation utilisation, Sheet sheet, Combination combination, String where) {
        return utilisation.of(
                sheet,
                () -> where + ", combination " + combination.id() + ", "
                        + modification(combination).duration(),
                this::assumptions);
    }

    /** Enters q_d and, where there is one, P_d. */
    void enterLoads(Sheet sheet, Combination combination) {
        String source = parameters.source(Combination.COMBINATIONS.name());
        sheet.given(
                "q_d",
                uniformNPerMm(combination.factors()),
                NEWTON_PER_MILLIMETRE,
                () -> "uniform load along a board, " + combination.id(),
                source,
                field.pointer());
        if (combination.isConcentrated()) {
            sheet.given(
                    "P_d",
                    concentratedN(combination.factors()),
                    NEWTON_,
                    () -> "concentrated load on a board, " + combination.id(),
                    source,
                    field.pointer());
        }
    }

    double enterSpan(Sheet sheet) {
        return sheet.given(
                "l",
                loads.spanMm(),
                MILLIMETRE,
                "largest distance between joists, along the boards",
                "",
                field.pointer());
    }

    List<String> assumptions() {
        List<String> all = new ArrayList<>();
        all.add("A board spans from the middle of one joist to the middle of the next as a simple beam.");
        all.add("Boards do not share load with their neighbours.");
        if (field.boards().profile().isEmpty()) {
            all.add("Boards whose profile is not given are taken as grooved.");
        }
        return List.copyOf(all);
    }
}
