package org.deckplanreview.layout;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/**
 * A post between its footing and the beam.
 *
 * @param beams ids of the beams it carries
 * @param topLevelMm level of its upper end
 * @param bottomLevelMm level of its lower end: top of a pad, or the end of the embedded part
 * @param heightMm clear height from the ground or the pad's top to its upper end; missing where the upper end is not above that
 */
public record PostPlace(
        int platformIndex,
        Pointer pointer,
        String label,
        String id,
        Post post,
        Timber timber,
        List<String> beams,
        Derived<Double> topLevelMm,
        Derived<Double> groundLevelMm,
        Derived<Double> bottomLevelMm,
        Derived<Double> heightMm,
        Optional<FootingPlace> footing)
        implements TimberPiece {
    public PostPlace {
        beams = List.copyOf(beams);
    }

    /** Room for the post between the ground, or the pad's top, and what it carries, mm; negative where there is none. */
    public Derived<Double> roomMm() {
        boolean isOnPad =
                footing.filter(f -> f.footing().kind() == FootingKind.PAD).isPresent();
        return topLevelMm.with(isOnPad ? bottomLevelMm : groundLevelMm, (top, foot) -> top - foot);
    }

    @Override
    public SubjectKind kind() {
        return SubjectKind.POSTS;
    }

    @Override
    public String alikeKey() {
        return platformIndex + " " + timber.id();
    }
}
