package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.LoadPath.BoardLoads;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.BoardProfile;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** What a check of boards starts from: one board as a beam from joist to joist. */
record BoardBasis(
        BoardField field,
        Loads loads,
        StrengthClass strengthClass,
        Psi psi,
        Parameters parameters,
        ReviewContext context) {

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
        return Inputs.gather(
                field.timber(),
                context.submission().timberPointer(field.timber().id()),
                loads,
                context.loadCategories().get(field.platformIndex()),
                parameters,
                (l, strengthClass, psi) ->
                        check.apply(new BoardBasis(field, l, strengthClass, psi, parameters, context)));
    }

    /** Combinations of a state and loading. */
    List<Combination> combinations(State state, Loading loading) {
        return loading.filter(
                Combination.of(parameters, state, psi, loads.board().snowNPerMm() != 0));
    }

    private boolean smooth() {
        return field.boards().profile().filter(p -> p == BoardProfile.SMOOTH).isPresent();
    }

    private double grooveDepthMm() {
        return smooth() ? 0 : parameters.number(GROOVE_DEPTH.name(), MILLIMETRE);
    }

    /** What grooves leave of the board. */
    Section section() {
        return new Section(field.timber().breadth().mm(), field.timber().depth().mm() - grooveDepthMm());
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

    DesignStrength designStrength(String property, double characteristic, Combination combination) {
        return new DesignStrength(
                property,
                characteristic,
                Modification.of(parameters, combination.factors()),
                1,
                parameters.number(DesignStrength.GAMMA_M.name(), RATIO));
    }

    Pointer timberPointer() {
        return context.submission().timberPointer(field.timber().id());
    }

    Pointer strengthClassPointer() {
        return timberPointer().child("strengthClass");
    }

    /** Shows b and h. */
    void writeSection(Sheet w) {
        w.given(
                "b",
                section().breadthMm(),
                MILLIMETRE,
                "width of a board",
                "",
                timberPointer().child("breadth"));
        Pointer depth = timberPointer().child("depth");
        if (smooth()) {
            w.given("h", section().depthMm(), MILLIMETRE, "thickness", "", depth);
            return;
        }
        w.given("h_0", field.timber().depth().mm(), MILLIMETRE, "thickness", "", depth);
        w.given(
                "g",
                grooveDepthMm(),
                MILLIMETRE,
                "depth of grooves",
                parameters.source(GROOVE_DEPTH.name()),
                field.pointer().child("profile"));
        w.step("h", "h_0 - g", section().depthMm(), MILLIMETRE, "");
    }

    /** Shows q_d and, where there is one, P_d. */
    void writeLoads(Sheet w, Combination combination) {
        String source = parameters.source(Combination.COMBINATIONS.name());
        w.given(
                "q_d",
                uniformNPerMm(combination.factors()),
                NEWTON_PER_MILLIMETRE,
                "uniform load along a board, " + combination.id(),
                source,
                field.pointer());
        if (combination.isConcentrated()) {
            w.given(
                    "P_d",
                    concentratedN(combination.factors()),
                    NEWTON_,
                    "concentrated load on a board, " + combination.id(),
                    source,
                    field.pointer());
        }
    }

    void writeSpan(Sheet w) {
        w.given(
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
