package org.deckplanreview.method.nds2018;

import java.util.List;
import org.deckplanreview.method.Method;

/** The methods of NDS 2018 for sawn lumber: joists and beams, posts, and posts of guards. */
public final class Nds2018 {
    static final String SOURCE = "ANSI/AWC NDS-2018";

    private Nds2018() {}

    public static List<Method> methods() {
        return List.of(
                new MemberBending(),
                new MemberShear(),
                new MemberBearing(),
                new MemberDeflection(),
                new TipDeflection(),
                new PostColumn(),
                new GuardPostBending());
    }
}
