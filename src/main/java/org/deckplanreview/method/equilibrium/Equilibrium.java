package org.deckplanreview.method.equilibrium;

import java.util.List;
import org.deckplanreview.method.Method;

/** Methods for uplift, in the order of the way down. */
public final class Equilibrium {
    static final String SOURCE = "statics, with the combinations of equilibrium that the ruleset gives";

    private Equilibrium() {}

    public static List<Method> methods() {
        return List.of(
                new MemberUplift(),
                new PostUplift(),
                new FootingUplift(),
                new Overturning(Overturning.Place.FOOT),
                new Overturning(Overturning.Place.BEAM));
    }
}
