package org.deckplanreview.method.guard;

import java.util.List;
import org.deckplanreview.method.Method;

/** Methods for guards, from the post to the infill. */
public final class Guards {

    private Guards() {}

    public static List<Method> methods() {
        return List.of(
                new PostBending(),
                new TopDeflection(),
                new PostFixing(),
                new RailBending(),
                new InfillBending(),
                new NearbyDrop(),
                new LargestNearbyDrop(),
                new HeightNearDrop(),
                new OpeningNearDrop(),
                new PostFixingPointLoad());
    }
}
