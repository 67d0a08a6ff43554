package org.deckplanreview.method.foundation;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Soil;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.VolumeChange;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/**
 * Depth of a footing in clay that shrinks and swells. The depths hold away from trees: a footing that is too shallow even
 * without them fails, any other near trees is out of scope.
 */
final class ClayDepth implements Method {

    private static final String DEPTHS = "clayDepth";
    private static final Depth DEPTH = Depth.of("d", "d_min");
    private static final Pointer SOIL = Pointer.of("/site/soil");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.clayDepth",
            "common practice",
            "depth of the footing's underside",
            MeasureUnit.MILLIMETRE,
            List.of(SubjectKind.FOOTINGS),
            List.of(ParameterDescription.table(
                    DEPTHS,
                    "the least depth of a footing's underside away from trees; a volume change without a row needs none",
                    ParameterDescription.wordColumn("volumeChange"),
                    ParameterDescription.numberColumn("depth", MeasureUnit.MILLIMETRE))),
            "The depth of the footing's underside against the least depth for the soil's volume change potential. Near trees"
                    + " a footing deep enough without them is out of scope.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        FootingPlace footing = (FootingPlace) subject;
        Optional<Soil> soil = context.submission().site().soil();
        Optional<VolumeChange> change = soil.flatMap(Soil::volumeChange);
        if (change.isEmpty()) {
            return Foundation.missing(
                    SOIL.child("volumeChange"), "the volume change potential of the soil: none, low, medium or high");
        }
        Optional<Table.Row> row =
                parameters.table(DEPTHS).find("volumeChange", change.get().word());
        if (row.isEmpty()) {
            return new Evaluation.NotApplicable("the soil does not shrink");
        }
        Pointer pointer = footing.pointer().child("depth");
        Optional<Length> depth = footing.footing().depth();
        if (depth.isEmpty()) {
            return Foundation.missing(pointer, "the depth of " + footing.label() + " from the ground to its underside");
        }
        Sheet working = Sheet.blank();
        double d = working.given("d", depth.get().mm(), MeasureUnit.MILLIMETRE, "depth of the footing", "", pointer);
        double allowed = working.given(
                "d_min",
                row.get().number("depth", MeasureUnit.MILLIMETRE),
                MeasureUnit.MILLIMETRE,
                "least depth in clay of " + change.get().word() + " volume change potential",
                parameters.source(DEPTHS),
                SOIL.child("volumeChange"));
        Evaluation awayFromTrees = DEPTH.measured(working);
        if (!Sense.AT_LEAST.holds(d, allowed)) {
            return awayFromTrees;
        }
        Optional<Boolean> trees = soil.flatMap(Soil::treesNearby);
        if (trees.isEmpty()) {
            return Foundation.missing(
                    SOIL.child("treesNearby"), "whether trees stand, or stood, near enough to dry the soil");
        }
        return trees.get()
                ? new Evaluation.OutOfScope(
                        "trees nearby dry the clay deeper than these depths allow for", parameters.source(DEPTHS))
                : awayFromTrees;
    }
}
