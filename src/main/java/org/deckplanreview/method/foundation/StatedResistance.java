package org.deckplanreview.method.foundation;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
import org.deckplanreview.submission.Soil;
import org.deckplanreview.submission.SoilClass;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/** A stated bearing resistance against the largest that soil of the stated class has. */
final class StatedResistance implements Method {

    private static final String LARGEST = "largestBearing";
    private static final Formula UTILISATION = Formula.of("utilisation = q / q_max", RATIO, "");
    private static final Pointer SOIL = Pointer.of("/site/soil");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.statedResistance",
            "common practice: a stated value must be possible in the soil that is there",
            "stated bearing resistance",
            KILONEWTON_PER_SQUARE_METRE,
            List.of(SubjectKind.DECK),
            List.of(ParameterDescription.table(
                    LARGEST,
                    "the largest bearing resistance that soil of a class has; a class without a row has none that a class and a"
                            + " number can tell",
                    wordColumn("soilClass"),
                    numberColumn("bearing", KILONEWTON_PER_SQUARE_METRE))),
            "The bearing resistance that is stated against the largest that soil of the stated class has.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        Optional<Soil> soil = context.submission().site().soil();
        Optional<Measure> stated = soil.flatMap(Soil::bearingResistance);
        Optional<SoilClass> soilClass = soil.flatMap(Soil::soilClass);
        if (stated.isEmpty()) {
            return new Evaluation.NotApplicable("no bearing resistance is stated");
        }
        if (soilClass.isEmpty()) {
            return new Evaluation.NotApplicable("no class of soil is stated beside the bearing resistance");
        }
        String word = soilClass.get().word();
        Optional<Table.Row> row = parameters.table(LARGEST).find("soilClass", word);
        if (row.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "a bearing resistance alone does not tell how " + word + " settles", parameters.source(LARGEST));
        }
        Sheet working = Sheet.blank();
        working.given(
                "q",
                stated.get().in(KILONEWTON_PER_SQUARE_METRE),
                KILONEWTON_PER_SQUARE_METRE,
                "bearing resistance that an investigation states",
                "",
                SOIL.child("bearingResistance"));
        working.given(
                "q_max",
                row.get().number("bearing", KILONEWTON_PER_SQUARE_METRE),
                KILONEWTON_PER_SQUARE_METRE,
                "largest bearing resistance of " + word,
                parameters.source(LARGEST),
                SOIL.child("soilClass"));
        return SheetCase.of(working, UTILISATION, "q", Sense.AT_MOST, "q_max", () -> "", List::of)
                .measured();
    }
}
