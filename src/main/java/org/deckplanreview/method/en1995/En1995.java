package org.deckplanreview.method.en1995;

import java.util.List;
import org.deckplanreview.method.Method;

/** The methods of EN 1995-1-1:2004+A1+A2, in the order of its clauses: members, posts and braces, boards, connections. */
public final class En1995 {
    static final String SOURCE = "EN 1995-1-1:2004+A1:2008+A2:2014";

    private En1995() {}

    public static List<Method> methods() {
        return List.of(
                new MemberBending(),
                new MemberShear(),
                new MemberNotch(),
                new MemberBearing(),
                new CarrierBearing(),
                new JoistUpright(),
                new GradedStrength(),
                new MemberDeflection(DeflectionState.INSTANTANEOUS),
                new MemberDeflection(DeflectionState.FINAL),
                new PostCompression(),
                new PostSway(),
                new PostLean(),
                new Slenderness(),
                new BraceCompression(),
                new BraceFixing(),
                new BoardBending(),
                new BoardShear(),
                new BoardDeflection(),
                new JointShear(),
                new JointSplitting(),
                new PlySideLoad(),
                new JointDistance(),
                new HangerForce(),
                new LedgerFixingForce(),
                new LedgerPull(),
                new LedgerFixingDistance());
    }
}
