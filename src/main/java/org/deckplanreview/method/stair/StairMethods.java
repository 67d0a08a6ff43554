package org.deckplanreview.method.stair;

import java.util.List;
import org.deckplanreview.method.Method;

/** Methods for stairs. */
public final class StairMethods {

    private StairMethods() {}

    public static List<Method> methods() {
        return List.of(new StringBending(), new StringHead(), new TreadBending());
    }
}
