package org.deckplanreview.layout;

import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.submission.Tolerances;

/**
 * Where a beam meets a post that it names. The post's breadth lies along the beam and its depth across it. A beam on the
 * post rests on what of the two overlaps; a beam bolted to the post's sides lies against them, and its bolts at the
 * post's axis.
 *
 * @param atMm of the post's axis along the beam, from the beam's start; beyond its ends too
 * @param offMm of the post's axis from the beam's line
 * @param alongMm the length over which the two overlap; negative by how far the beam ends short of the post
 * @param acrossMm the breadth over which they overlap, or how far a bolted beam presses against the post; negative by how far it lies beside it
 */
record PostContact(double atMm, double offMm, double alongMm, double acrossMm, boolean isOnPost) {

    static PostContact of(Submission submission, Beam beam, Post post) {
        Axis axis = Axis.of(beam.line());
        Timber timber = submission.timber(post.timber());
        double at = axis.along(post.at()) - axis.along(beam.line().from());
        double off = Math.abs(axis.across(post.at()) - axis.across(beam.line().from()));
        double length = Axis.length(beam.line());
        double half = timber.breadth().mm() / 2;
        double postDepth = timber.depth().mm();
        double beamBreadth =
                beam.plies() * submission.timber(beam.timber()).breadth().mm();
        boolean onPost = beam.seating() == BeamSeating.ON_POST;
        return new PostContact(
                at,
                off,
                onPost ? Math.min(length, at + half) - Math.max(0, at - half) : Math.min(at, length - at),
                switch (beam.seating()) {
                    case ON_POST -> Math.min(Math.min(postDepth, beamBreadth), (postDepth + beamBreadth) / 2 - off);
                    case ONE_SIDE -> (postDepth + beamBreadth) / 2 - off;
                    case BOTH_SIDES -> -off;
                },
                onPost);
    }

    /** Bolts draw up what a drawing's rounding leaves between a beam and a post's side. */
    boolean carries() {
        return isOnPost
                ? alongMm > Supports.ROUNDING_MM && acrossMm > Supports.ROUNDING_MM
                : alongMm >= -Supports.ROUNDING_MM && acrossMm >= -Tolerances.SEATING_MM;
    }

    boolean endsShort() {
        return alongMm < acrossMm;
    }

    double missedByMm() {
        return Math.max(0, -Math.min(alongMm, acrossMm));
    }
}
