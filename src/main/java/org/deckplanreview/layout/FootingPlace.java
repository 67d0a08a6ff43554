package org.deckplanreview.layout;

import java.util.List;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.SubjectKind;

/**
 * A footing under a post.
 *
 * @param posts ids of the posts on it
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

    @Override
    public SubjectKind kind() {
        return SubjectKind.FOOTINGS;
    }

    @Override
    public String alikeKey() {
        return "" + platformIndex;
    }
}
