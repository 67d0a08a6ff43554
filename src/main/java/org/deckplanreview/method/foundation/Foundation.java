package org.deckplanreview.method.foundation;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.vocabulary.Sense;

/** Methods for footings. */
public final class Foundation {

    /** A depth of nothing has no utilisation; it counts as this, so that the finding still carries a finite one. */
    private static final double SMALLEST_DEPTH_MM = 1;

    private Foundation() {}

    public static List<Method> methods() {
        return List.of(
                new BearingPressure(),
                new FrostDepth(),
                new ClayDepth(),
                new Embedment(),
                new PostCover(),
                new PlainThickness(),
                new StatedResistance(),
                new SlopeAtFooting());
    }

    /** A depth, in mm, against the least that is allowed. */
    static Evaluation.Measured atLeast(
            double foundMm, double allowedMm, String remark, Sheet working, List<String> assumptions) {
        return new Evaluation.Measured(
                Measure.mm(foundMm),
                Sense.AT_LEAST,
                Measure.mm(allowedMm),
                allowedMm / Math.max(foundMm, SMALLEST_DEPTH_MM),
                remark,
                working.steps(),
                assumptions);
    }

    static Evaluation missing(Pointer pointer, String what) {
        return new Evaluation.Missing(List.of(new Need(pointer, what)));
    }
}
