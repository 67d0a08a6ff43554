package org.deckplanreview.method.foundation;

import java.util.List;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;

/** Methods for footings. */
public final class Foundation {

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

    static Evaluation missing(Pointer pointer, String what) {
        return new Evaluation.Missing(List.of(new Need(pointer, what)));
    }
}
