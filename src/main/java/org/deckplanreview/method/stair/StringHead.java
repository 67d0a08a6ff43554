package org.deckplanreview.method.stair;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.method.Enough;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Sense;

/** What the most loaded string hands to the frame at its head. */
final class StringHead extends StringMethod {

    private static final Formula UTILISATION = Formula.of("utilisation = F_d / R_d", RATIO, "");

    StringHead() {
        super(new MethodDescription(
                "stair.stringHead",
                "equilibrium",
                "force at the head of one string",
                KILONEWTON,
                List.of(SubjectKind.STAIRS),
                StringActions.PARAMETERS,
                "Force that a string as a simple beam over the flight's going passes on at its head, under the load on each area of its"
                        + " part of the width, or under the whole load on one place at the head; against the design resistance of"
                        + " its fixing that the submission states."));
    }

    @Override
    Evaluation check(StringActions actions, ReviewContext context) {
        List<Place> places = Stream.of(StairLoad.values())
                .map(load -> Place.of(actions, load))
                .toList();
        Place worst = places.stream()
                .reduce((a, b) -> b.forceN() > a.forceN() ? b : a)
                .orElseThrow();
        Pointer pointer = actions.stringsMember("headResistance");
        if (actions.strings().headResistance().isEmpty()) {
            return new Evaluation.Missing(List.of(new Need(
                    pointer,
                    "the design resistance of the fixing of one string of "
                            + actions.stair().label() + " at its head, in "
                            + context.units().unit(KILONEWTON).symbol()
                            + Enough.from(worst.forceN(), context.units()))));
        }
        Sheet sheet = worst.sheet();
        sheet.given(
                "R_d",
                actions.strings().headResistance().get().in(NEWTON_),
                NEWTON_,
                "design resistance of the fixing of one string at its head",
                "",
                pointer);
        sheet.calculate(UTILISATION);
        return Evaluation.Measured.on(
                sheet,
                sheet.measure("F_d").to(KILONEWTON),
                Sense.AT_MOST,
                sheet.measure("R_d").to(KILONEWTON),
                worst.load().meaning(),
                StringActions.ASSUMPTIONS);
    }

    private record Place(StairLoad load, Sheet sheet, double forceN) {
        static Place of(StringActions actions, StairLoad load) {
            Sheet sheet = actions.string(load);
            return new Place(load, sheet, sheet.calculate(load.force()));
        }
    }
}
