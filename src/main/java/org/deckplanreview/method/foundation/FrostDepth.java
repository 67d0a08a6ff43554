package org.deckplanreview.method.foundation;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Depth of a footing below the frost: the least depth of the ruleset, or the frost depth stated for the site if it is larger. */
final class FrostDepth implements Method {

    private static final ParameterDescription LEAST =
            ParameterDescription.number("leastFrostDepth", MeasureUnit.MILLIMETRE, "least depth against frost");
    private static final Formula LARGER = Formula.of("d_req = max(d_min, d_frost)", MeasureUnit.MILLIMETRE, "");
    private static final Depth LEAST_DEPTH = Depth.of("d", "d_min");
    private static final Depth REQUIRED_DEPTH = Depth.of("d", "d_req");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.frostDepth",
            "common practice",
            "depth of the footing's underside",
            MeasureUnit.MILLIMETRE,
            List.of(SubjectKind.FOOTINGS),
            List.of(LEAST),
            "The depth of the footing's underside against the least depth, or against the frost depth that the local"
                    + " authority states for the site if that is larger. Footings that are protected from frost or stand on rock need none.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        FootingPlace footing = (FootingPlace) subject;
        if (footing.footing().frostProtected().orElse(false)) {
            return new Evaluation.NotApplicable("it is protected from frost or stands on solid rock");
        }
        Pointer pointer = footing.pointer().child("depth");
        Optional<Length> depth = footing.footing().depth();
        if (depth.isEmpty()) {
            return Foundation.missing(pointer, "the depth of " + footing.label() + " from the ground to its underside");
        }
        Sheet working = Sheet.blank();
        working.given("d", depth.get().mm(), MeasureUnit.MILLIMETRE, "depth of the footing", "", pointer);
        parameters.enter(working, "d_min", LEAST);
        Optional<Length> frost = context.submission().site().frostDepth();
        if (frost.isEmpty()) {
            return LEAST_DEPTH.measured(working, "No local frost depth is stated; the least depth alone counts.");
        }
        working.given(
                "d_frost",
                frost.get().mm(),
                MeasureUnit.MILLIMETRE,
                "frost depth that the local authority states",
                "",
                Pointer.of("/site/frostDepth"));
        working.calculate(LARGER);
        return REQUIRED_DEPTH.measured(working);
    }
}
