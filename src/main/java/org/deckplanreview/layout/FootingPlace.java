package org.deckplanreview.layout;

import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.SubjectKind;

/**
 * A footing under a post, or a block under joists.
 *
 * @param posts ids of the posts on it; none on a block
 * @param areaMm2 in plan
 * @param concreteVolumeMm3 less the embedded part of the post
 */
public record FootingPlace(
        int platformIndex,
        Pointer pointer,
        String label,
        Footing footing,
        List<String> posts,
        double areaMm2,
        Derived<Double> concreteVolumeMm3,
        Derived<Double> groundLevelMm)
        implements Subject {
    public FootingPlace {
        posts = List.copyOf(posts);
    }

    /** Whether joists lie on it without beam or post. */
    public boolean isBlock() {
        return footing().kind() == FootingKind.BLOCK;
    }

    /** Whether this is the block that carries a joist there. */
    public boolean carries(MemberSupport support) {
        return isBlock()
                && support.kind() == MemberSupport.Kind.BLOCK
                && support.id().equals(footing().id());
    }

    @Override
    public SubjectKind kind() {
        return SubjectKind.FOOTINGS;
    }

    @Override
    public String alikeKey() {
        return "" + platformIndex;
    }
}
