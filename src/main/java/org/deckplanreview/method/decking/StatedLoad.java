package org.deckplanreview.method.decking;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.LoadPath.DeckLoads;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.ManufacturedBoards;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * The characteristic load in use on manufactured boards against the one that their maker states: imposed load and snow, the
 * larger whole and a share of the other, and finishes.
 */
final class StatedLoad implements Method {

    private static final ParameterDescription ACCOMPANYING = ParameterDescription.number(
                    "accompanyingShare", RATIO, "part of the smaller of imposed load and snow beside the larger")
            .higherIsStricter();

    private static final Formula LOAD =
            Formula.of("p = g + max(q, s) + r * min(q, s)", KILONEWTON_PER_SQUARE_METRE, "");
    private static final Formula UTILISATION = Formula.of("utilisation = p / p_max", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "decking.load",
            ManufacturedDecking.SOURCE,
            "load on the boards",
            KILONEWTON_PER_SQUARE_METRE,
            ManufacturedDecking.SUBJECTS,
            List.of(ACCOMPANYING),
            "Imposed load and snow, the larger whole and a share of the smaller, with finishes, against the uniform load that"
                    + " the maker of manufactured boards states.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return ManufacturedDecking.ofManufactured(
                subject, (field, boards) -> evaluate(field, boards, parameters, context));
    }

    private static Evaluation evaluate(
            BoardField field, ManufacturedBoards boards, Parameters parameters, ReviewContext context) {
        Derived<Double> stated = Derived.of(
                        boards.load(),
                        ManufacturedDecking.stated(field, "load"),
                        "the uniform load that the maker states for the boards, for example 5 kN/m2")
                .map(load -> load.in(KILONEWTON_PER_SQUARE_METRE));
        Derived<DeckLoads> loads = context.loadPath().deckLoads(field.platformIndex());
        Derived<Double> known = loads.with(stated, (l, s) -> s);
        if (!known.isKnown()) {
            return new Evaluation.Missing(known.needs());
        }
        double finishes = context.layout()
                .platformOf(field)
                .platform()
                .finishes()
                .map(f -> f.in(KILONEWTON_PER_SQUARE_METRE))
                .orElse(0.0);
        Sheet sheet = Sheet.blank();
        sheet.given("g", finishes, KILONEWTON_PER_SQUARE_METRE, "finishes", "");
        sheet.given("q", loads.get().imposed(), KILONEWTON_PER_SQUARE_METRE, "imposed load", "");
        sheet.given("s", loads.get().snow(), KILONEWTON_PER_SQUARE_METRE, "snow on the deck", "");
        parameters.enter(sheet, "r", ACCOMPANYING);
        sheet.calculate(LOAD);
        sheet.given(
                "p_max",
                known.get(),
                KILONEWTON_PER_SQUARE_METRE,
                "load by the maker",
                "",
                ManufacturedDecking.stated(field, "load"));
        return ManufacturedDecking.atMost(sheet, UTILISATION, "p", "p_max");
    }
}
