package org.deckplanreview.method.foundation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.Working;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.Soil;
import org.deckplanreview.submission.SoilClass;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/**
 * Pressure under a footing from service loads, centred: everything that comes down on it and its own weight, over its area in
 * plan. Allowed is the bearing resistance that an investigation states, else the presumed value of the soil's class.
 */
final class BearingPressure implements Method {

    private static final String PRESUMED = "presumedBearing";
    private static final Pointer SOIL = Pointer.of("/site/soil");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.pressure",
            "common practice: service loads over the area, against an allowable bearing value",
            "pressure under the footing",
            MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
            List.of(SubjectKind.FOOTINGS),
            List.of(ParameterDescription.table(
                    PRESUMED,
                    "the presumed bearing value of each class of soil; a class without a row has none that can be relied on",
                    ParameterDescription.wordColumn("soilClass"),
                    ParameterDescription.numberColumn("bearing", MeasureUnit.KILONEWTON_PER_SQUARE_METRE))),
            "Permanent load, the larger of the uniform and the concentrated imposed load, snow and the footing's own weight,"
                    + " all without partial factors, over its area in plan.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        FootingPlace footing = (FootingPlace) subject;
        Optional<Measure> stated = context.submission().site().soil().flatMap(Soil::bearingResistance);
        Optional<SoilClass> soilClass = context.submission().site().soil().flatMap(Soil::soilClass);
        if (stated.isEmpty() && soilClass.isEmpty()) {
            return Foundation.missing(
                    SOIL.child("soilClass"),
                    "the class of the soil under the footings, for example firm-clay, or its bearing resistance");
        }
        Optional<Table.Row> presumed =
                soilClass.flatMap(s -> parameters.table(PRESUMED).find("soilClass", s.word()));
        if (stated.isEmpty() && presumed.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "no presumed bearing value can be relied on in "
                            + soilClass.get().word() + "; an investigation must state one",
                    parameters.source(PRESUMED));
        }
        if (stated.filter(q -> q.value() <= 0).isPresent()) {
            return new Evaluation.OutOfScope("ground without bearing resistance carries no footing", "");
        }
        Derived<ActionForces> forces = context.loadPath().footing(footing);
        Derived<Double> weight = context.loadPath().footingWeightN(footing);
        Derived<Loads> loads = forces.with(weight, Loads::new);
        if (!loads.isKnown()) {
            return new Evaluation.Missing(loads.needs());
        }

        Working working = new Working();
        double p = pressure(footing, loads.get(), working);
        List<String> assumptions = new ArrayList<>();
        assumptions.add("The load on each footing acts through its middle.");
        double allowed;
        if (stated.isPresent()) {
            allowed = working.given(
                    "q",
                    stated.get().in(MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
                    MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                    "bearing resistance that an investigation states",
                    "",
                    SOIL.child("bearingResistance"));
        } else {
            allowed = working.given(
                    "q",
                    presumed.orElseThrow().number("bearing", MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
                    MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                    "presumed bearing value of " + soilClass.orElseThrow().word(),
                    parameters.source(PRESUMED),
                    SOIL.child("soilClass"));
            assumptions.add(
                    "Presumed bearing values are for preliminary use and must be confirmed on site; those of gravel and"
                            + " sand suppose a base at least 1 m wide and ground water at least one width below it, so that a small pad"
                            + " may carry less.");
        }
        return new Evaluation.Measured(
                Measure.of(p, MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
                Sense.AT_MOST,
                Measure.of(allowed, MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
                p / allowed,
                "under service loads",
                working.steps(),
                assumptions);
    }

    private record Loads(ActionForces forces, double weightN) {}

    private static double pressure(FootingPlace footing, Loads loads, Working working) {
        double g = force(working, "G", loads.forces().permanentN(), "permanent load from the deck and the posts");
        double q =
                force(working, "Q", loads.forces().imposedLargestN(), "uniform imposed load, at its worst arrangement");
        double c = force(working, "Q_k", loads.forces().concentratedN(), "concentrated imposed load, in its place");
        double s = force(working, "S", loads.forces().snowN(), "snow");
        double w = force(working, "W", loads.weightN(), "weight of the footing");
        double n = working.step("N", "G + max(Q, Q_k) + S + W", g + Math.max(q, c) + s + w, MeasureUnit.KILONEWTON, "");
        double a = working.given(
                "A",
                MeasureUnit.SQUARE_MILLIMETRE.convert(footing.areaMm2(), MeasureUnit.SQUARE_METRE_),
                MeasureUnit.SQUARE_METRE_,
                "area of the footing in plan",
                "",
                footing.pointer().child("breadth"));
        return working.step("p", "N / A", n / a, MeasureUnit.KILONEWTON_PER_SQUARE_METRE, "");
    }

    private static double force(Working working, String symbol, double newtons, String meaning) {
        return working.given(
                symbol,
                MeasureUnit.NEWTON_.convert(newtons, MeasureUnit.KILONEWTON),
                MeasureUnit.KILONEWTON,
                meaning,
                "");
    }
}
