package org.deckplanreview.method.stair;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.Working;
import org.deckplanreview.method.en1995.PartialFactors;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.Strings;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/** Bending of the string that carries most: a simple beam over the stair's going in plan. */
final class StringBending implements Method {

    private static final ParameterDescription LOADS = ParameterDescription.table(
            "stairLoads",
            "imposed loads on stairs by occupancy, in plan: on each area, and on one place",
            wordColumn("occupancy"),
            numberColumn("uniform", KILONEWTON_PER_SQUARE_METRE),
            numberColumn("concentrated", KILONEWTON));
    private static final ParameterDescription PERMANENT = ParameterDescription.number(
            "stairPermanentLoad", KILONEWTON_PER_SQUARE_METRE, "weight of treads, risers and strings, in plan");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "stair.stringBending",
            "EN 1995-1-1:2004+A1:2008+A2:2014",
            "bending stress of the strings",
            NEWTON_PER_SQUARE_MILLIMETRE,
            List.of(SubjectKind.STAIRS),
            SingleTimber.parameters(LOADS, PERMANENT, PartialFactors.PARAMETER),
            "Largest bending stress of a string as a simple beam over the flight's going, under the load on each area or on one"
                    + " place, whichever is worse, with its part of the width, against the design bending strength: equation"
                    + " (6.11) for one axis.");

    private static final List<String> ASSUMPTIONS = List.of(
            "Treads hold the strings of a stair against buckling sideways.",
            "A string spans from the foot of the stair to the frame as a simple beam; of more than two strings an inner one"
                    + " carries most.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        StairRun stair = (StairRun) subject;
        String occupancy = context.submission().use().occupancy().word();
        Optional<Table.Row> row = parameters.table(LOADS.name()).find("occupancy", occupancy);
        if (row.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "The table has no loads on stairs for the occupancy " + occupancy, parameters.source(LOADS.name()));
        }
        if (stair.stair().strings().isEmpty()) {
            return missing(Derived.missing(
                    stair.pointer().child("strings"), "the strings of " + stair.label() + ": their timber and number"));
        }
        Strings strings = stair.stair().strings().get();
        Timber timber = context.submission().timber(strings.timber());
        Optional<Evaluation> outOfScope = SingleTimber.outOfScope(timber, parameters);
        if (outOfScope.isPresent()) {
            return outOfScope.get();
        }
        Derived<SingleTimber> single = SingleTimber.of(
                        timber, context.submission().timberPointer(timber.id()), parameters)
                .with(throatMm(stair, strings, timber), (whole, throat) -> left(whole, stair, timber, throat));
        return single.isKnown() ? measured(stair, strings, single.get(), row.get(), parameters) : missing(single);
    }

    private static Pointer throat(StairRun stair) {
        return stair.pointer().child("strings").child("throatDepth");
    }

    /** What is left of the string's depth square to its slope; no more than the timber is deep. */
    private static Derived<Double> throatMm(StairRun stair, Strings strings, Timber timber) {
        return Derived.of(
                        strings.throatDepth(),
                        throat(stair),
                        "what is left of the strings' depth square to their slope where they are cut to the steps, a"
                                + " length; the whole depth where they are not cut")
                .map(t -> Math.min(t.mm(), timber.depth().mm()));
    }

    private static SingleTimber left(SingleTimber whole, StairRun stair, Timber timber, double throatMm) {
        double cut = timber.depth().mm() - throatMm;
        return cut > 0 ? whole.notched(cut, throat(stair)) : whole;
    }

    private static Evaluation missing(Derived<?> value) {
        return new Evaluation.Missing(value.needs());
    }

    private static Evaluation measured(
            StairRun stair, Strings strings, SingleTimber timber, Table.Row loads, Parameters p) {
        PartialFactors factors = PartialFactors.of(p);
        Pointer occupancy = Pointer.of("/use/occupancy");
        int shares = strings.count() <= 2 ? strings.count() : strings.count() - 1;
        Working w = new Working();
        double span = w.given(
                "l",
                stair.goingMm(),
                MILLIMETRE,
                "going of the whole flight, in plan",
                "",
                stair.pointer().child("going"));
        double width = w.given(
                "b_s",
                stair.widthMm(),
                MILLIMETRE,
                "width of the stair",
                "",
                stair.pointer().child("line"));
        double parts = w.given(
                "n_s",
                shares,
                RATIO,
                "parts of the width, of which the most loaded string carries one",
                "",
                stair.pointer().child("strings").child("count"));
        double permanent = w.given(
                "g_k",
                inNewtons(p.number(PERMANENT.name(), KILONEWTON_PER_SQUARE_METRE)),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "weight of the stair, in plan",
                p.source(PERMANENT.name()));
        double gammaG = w.given(
                "γ_G",
                factors.permanent(),
                RATIO,
                "partial factor of weight",
                p.source(PartialFactors.PARAMETER.name()));
        double gammaQ = w.given(
                "γ_Q",
                factors.imposed(),
                RATIO,
                "partial factor of the imposed load",
                p.source(PartialFactors.PARAMETER.name()));
        double uniform = inNewtons(loads.number("uniform", KILONEWTON_PER_SQUARE_METRE));
        double point = loads.number("concentrated", NEWTON_);
        double weightMoment = gammaG * permanent * width / parts * span * span / 8;
        double uniformMoment = weightMoment + gammaQ * uniform * width / parts * span * span / 8;
        double pointMoment = weightMoment + gammaQ * point * span / 4;
        boolean onOnePlace = pointMoment > uniformMoment;
        if (onOnePlace) {
            w.given("Q_k", point, NEWTON_, "imposed load on one place", p.source(LOADS.name()), occupancy);
        } else {
            w.given(
                    "q_k",
                    uniform,
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "imposed load, in plan",
                    p.source(LOADS.name()),
                    occupancy);
        }
        double moment = w.step(
                "M_d",
                onOnePlace
                        ? "γ_G * g_k * b_s / n_s * l^2 / 8 + γ_Q * Q_k * l / 4"
                        : "(γ_G * g_k + γ_Q * q_k) * b_s / n_s * l^2 / 8",
                Math.max(uniformMoment, pointMoment),
                NEWTON_MILLIMETRE,
                "");
        timber.writeBending(w, moment, "a string");
        return new Evaluation.Measured(
                Measure.of(moment / timber.sectionModulusMm3(), NEWTON_PER_SQUARE_MILLIMETRE),
                Sense.AT_MOST,
                Measure.of(timber.bendingStrength(), NEWTON_PER_SQUARE_MILLIMETRE),
                timber.bendingUtilisation(moment),
                (onOnePlace ? "load on one place, " : "load on each area, ") + timber.loadDuration(),
                w.steps(),
                ASSUMPTIONS);
    }

    private static double inNewtons(double kilonewtonsPerSquareMetre) {
        return KILONEWTON_PER_SQUARE_METRE.convert(kilonewtonsPerSquareMetre, NEWTON_PER_SQUARE_MILLIMETRE);
    }
}
