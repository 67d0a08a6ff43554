package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/**
 * Depth over breadth of joists under boards, BS 5268-2, 2.10.8 and Table 19: what lets the design of 6.3.3 take their supports
 * as held against twisting.
 */
final class JoistUpright implements Method {
    private static final String LIMIT = "limit";
    private static final ParameterDescription RATIOS = ParameterDescription.table(
            "depthOverBreadth",
            "the largest depth over breadth of joists by what holds them: free, held at their ends under boards, or bridged as"
                    + " well",
            wordColumn("state"),
            numberColumn(LIMIT, RATIO));

    private static final Formula DEPTH_OVER_BREADTH = Formula.of("r = h / b", RATIO, "2.10.8");
    private static final Formula UTILISATION = Formula.of("utilisation = r / r_max", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.upright",
            "BS 5268-2:2002 (withdrawn), 2.10.8, Table 19",
            "depth over breadth",
            RATIO,
            List.of(SubjectKind.JOISTS),
            List.of(RATIOS),
            "The depth of the joists over their breadth against the largest for how they are held: free where the submission says"
                    + " that no blocking stands at their supports and no hangers do its work, else held under boards, with"
                    + " bridging beyond that.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        JoistLine joist = (JoistLine) subject;
        Optional<Boolean> blocked =
                context.layout().platformOf(joist).platform().joists().flatMap(JoistField::blocked);
        boolean hung = joist.supports().stream().allMatch(s -> s.seating() == JoistSeating.HANGERS);
        Pointer timber = context.submission().timberPointer(joist.timber().id());
        Sheet sheet = Sheet.blank();
        sheet.given("h", joist.timber().depth().mm(), MILLIMETRE, "depth", "", timber.child("depth"));
        sheet.given("b", joist.timber().breadth().mm(), MILLIMETRE, "breadth", "", timber.child("breadth"));
        String state = state(hung || blocked.orElse(true), sheet.calculate(DEPTH_OVER_BREADTH), parameters);
        sheet.given(
                "r_max",
                limit(state, parameters),
                RATIO,
                "largest depth over breadth, " + state,
                parameters.source(RATIOS.name()),
                joist.pointer().child("blocked"));
        sheet.calculate(UTILISATION);
        return Evaluation.Measured.on(
                sheet,
                sheet.measure("r"),
                Sense.AT_MOST,
                sheet.measure("r_max"),
                state,
                assumptions(state, hung, blocked));
    }

    private static String state(boolean held, double ratio, Parameters parameters) {
        if (!held) {
            return "free";
        }
        return Sense.AT_MOST.holds(ratio, limit("held", parameters)) ? "held" : "bridged";
    }

    private static double limit(String state, Parameters parameters) {
        return parameters
                .table(RATIOS.name())
                .find("state", state)
                .orElseThrow(() -> new IllegalArgumentException("No depth over breadth for " + state))
                .number(LIMIT, RATIO);
    }

    private static List<String> assumptions(String state, boolean hung, Optional<Boolean> blocked) {
        List<String> all = new ArrayList<>();
        if (!hung && blocked.isEmpty()) {
            all.add(
                    "Blocking, a rim joist or hangers hold the joists upright at their supports; the submission does not say.");
        }
        if (state.equals("bridged")) {
            all.add(
                    "Bridging or blocking stands between the joists along their span, no farther apart than six times their"
                            + " depth.");
        }
        return all;
    }
}
