package org.deckplanreview.method.foundation;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.GroundLine;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** The steepest slope of the ground about a footing. Steeper ground, or a brink, is for an engineer. */
final class SlopeAtFooting implements Method {

    private static final ParameterDescription STEEPEST = ParameterDescription.number(
                    "steepestSlopeRun", RATIO, "run of the steepest slope over its rise")
            .higherIsStricter();
    private static final ParameterDescription WITHIN = ParameterDescription.number(
                    "slopeWithin", MILLIMETRE, "how far from the middle of the footing the ground counts")
            .higherIsStricter();
    private static final Formula LIMIT = Formula.of("i_max = 1 / n", RATIO, "");
    private static final Formula UTILISATION = Formula.of("utilisation = i * n", RATIO, "");
    private static final int DIRECTIONS = 8;

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.slope",
            "common practice",
            "slope of the ground about the footing",
            RATIO,
            List.of(SubjectKind.FOOTINGS),
            List.of(STEEPEST, WITHIN),
            "The steepest slope of the ground within a distance of the footing's middle, looked for in eight directions.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        FootingPlace footing = (FootingPlace) subject;
        double within = parameters.number(WITHIN.name(), MILLIMETRE);
        Derived<Double> steepest = PadPlan.of(footing, context).flatMap(plan -> steepest(plan, within, context));
        if (!steepest.isKnown()) {
            return new Evaluation.Missing(steepest.needs());
        }
        Sheet working = Sheet.blank();
        working.given(
                "i", steepest.get(), RATIO, "steepest slope about the footing", "", Pointer.of("/site/groundLevels"));
        parameters.enter(working, "n", STEEPEST);
        working.calculate(LIMIT);
        return SheetCase.of(working, UTILISATION, "i", Sense.AT_MOST, "i_max", () -> "", List::of)
                .measured();
    }

    private static Derived<Double> steepest(PadPlan plan, double withinMm, ReviewContext context) {
        double largest = 0;
        for (PlanPoint end : ends(plan, withinMm)) {
            PlanLine line = new PlanLine(plan.centre(), end);
            List<List<GroundLine.Place>> stretches = GroundLine.along(context.layout(), line);
            if (stretches.size() != 1 || !reaches(stretches.get(0), line)) {
                return Derived.missing(List.of(new Need(
                        Pointer.of("/site/groundLevels"),
                        "ground levels about " + plan.footing().label() + ", as far as " + Numbers.plain(withinMm)
                                + " mm from its middle")));
            }
            largest = Math.max(largest, steepest(stretches.get(0)));
        }
        return Derived.known(largest);
    }

    private static List<PlanPoint> ends(PadPlan plan, double withinMm) {
        List<PlanPoint> all = new ArrayList<>();
        for (int i = 0; i < DIRECTIONS; i++) {
            double angle = 2 * StrictMath.PI * i / DIRECTIONS;
            double along = withinMm * StrictMath.cos(angle);
            double across = withinMm * StrictMath.sin(angle);
            all.add(new PlanPoint(
                    plan.centre().xMm() + along * plan.alongX() - across * plan.alongY(),
                    plan.centre().yMm() + along * plan.alongY() + across * plan.alongX()));
        }
        return all;
    }

    private static boolean reaches(List<GroundLine.Place> stretch, PlanLine line) {
        return stretch.get(0).at().equals(line.from())
                && stretch.get(stretch.size() - 1).at().equals(line.to());
    }

    private static double steepest(List<GroundLine.Place> stretch) {
        double largest = 0;
        for (int i = 1; i < stretch.size(); i++) {
            GroundLine.Place from = stretch.get(i - 1);
            GroundLine.Place to = stretch.get(i);
            double x = to.at().xMm() - from.at().xMm();
            double y = to.at().yMm() - from.at().yMm();
            double run = Math.sqrt(x * x + y * y);
            if (run > 0) {
                largest = Math.max(largest, Math.abs(to.levelMm() - from.levelMm()) / run);
            }
        }
        return largest;
    }
}
