package org.deckplanreview.method.decking;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.LoadPath.BoardLoads;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.ManufacturedBoards;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** The characteristic concentrated load, whole on one manufactured board, against the one that the maker states. */
final class StatedConcentratedLoad implements Method {

    private static final Formula UTILISATION = Formula.of("utilisation = P / P_max", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "decking.concentratedLoad",
            ManufacturedDecking.SOURCE,
            "concentrated load on one board",
            KILONEWTON,
            ManufacturedDecking.SUBJECTS,
            List.of(),
            "The concentrated imposed load, whole on one board, against the one that the maker of manufactured boards states.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return ManufacturedDecking.ofManufactured(subject, (field, boards) -> evaluate(field, boards, context));
    }

    private static Evaluation evaluate(BoardField field, ManufacturedBoards boards, ReviewContext context) {
        Derived<BoardLoads> loads = context.loadPath().boards(field);
        if (loads.isKnown() && loads.get().concentratedN() == 0) {
            return new Evaluation.NotApplicable("no concentrated load is asked for");
        }
        Derived<Double> stated = Derived.of(
                        boards.concentratedLoad(),
                        ManufacturedDecking.stated(field, "concentratedLoad"),
                        "the concentrated load that the maker states for one board, for example 2 kN")
                .map(load -> load.in(NEWTON_));
        Derived<Double> known = loads.with(stated, (l, s) -> s);
        if (!known.isKnown()) {
            return new Evaluation.Missing(known.needs());
        }
        Sheet w = Sheet.blank();
        w.given("P", loads.get().concentratedN(), NEWTON_, "concentrated imposed load", "");
        w.given(
                "P_max",
                known.get(),
                NEWTON_,
                "concentrated load by the maker",
                "",
                ManufacturedDecking.stated(field, "concentratedLoad"));
        return ManufacturedDecking.atMost(w, UTILISATION, "P", "P_max");
    }
}
