package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Submission;

/** Posts between their footings and the beams on them. */
final class Posts {

    private final Submission submission;
    private final Platform platform;
    private final Pointer pointer;
    private final DeckLevels levels;
    private final GroundSurface ground;
    private final List<FootingPlace> footings;

    private Posts(
            Submission submission,
            Platform platform,
            Pointer pointer,
            DeckLevels levels,
            GroundSurface ground,
            List<FootingPlace> footings) {
        this.submission = submission;
        this.platform = platform;
        this.pointer = pointer;
        this.levels = levels;
        this.ground = ground;
        this.footings = footings;
    }

    static List<PostPlace> of(
            Submission submission,
            Platform platform,
            int platformIndex,
            Pointer pointer,
            DeckLevels levels,
            GroundSurface ground,
            List<FootingPlace> footings) {
        Posts posts = new Posts(submission, platform, pointer, levels, ground, footings);
        List<PostPlace> places = new ArrayList<>();
        for (int i = 0; i < platform.posts().size(); i++) {
            places.add(posts.place(
                    platform.posts().get(i),
                    platformIndex,
                    pointer.child("posts").child(i)));
        }
        return places;
    }

    private PostPlace place(Post post, int platformIndex, Pointer postPointer) {
        List<Beam> beams = platform.beams().stream()
                .filter(b -> b.posts().contains(post.id()))
                .toList();
        Derived<Double> top = topLevel(post, beams);
        Derived<Double> groundLevel = ground.levelMm(post.at());
        Optional<FootingPlace> footing =
                footings.stream().filter(f -> f.posts().contains(post.id())).findFirst();
        Derived<FootingPlace> needed =
                Derived.of(footing, postPointer.child("footing"), "the footing under " + post.displayLabel());
        Derived<Double> bottom = needed.flatMap(f -> bottomLevel(f, groundLevel));
        Derived<Double> foot = needed.flatMap(f -> isPad(f) ? bottom : groundLevel);
        return new PostPlace(
                platformIndex,
                postPointer,
                post.displayLabel(),
                post.id(),
                post,
                submission.timber(post.timber()),
                beams.stream().map(Beam::id).toList(),
                top,
                groundLevel,
                bottom,
                top.with(foot, (t, f) -> t - f).flatMap(h -> standing(h, post)),
                footing);
    }

    private Derived<Double> standing(double heightMm, Post post) {
        return Derived.of(
                Optional.of(heightMm).filter(h -> h > 0),
                pointer.child("level"),
                "levels of deck, ground and footing that leave room for " + post.displayLabel());
    }

    private Derived<Double> topLevel(Post post, List<Beam> beams) {
        if (beams.isEmpty()) {
            return Derived.missing(pointer.child("beams"), "the beam that " + post.displayLabel() + " carries");
        }
        Derived<Double> lowest = Derived.known(Double.POSITIVE_INFINITY);
        for (Beam beam : beams) {
            Derived<Plane> seat = beam.seating() == BeamSeating.ON_POST
                    ? levels.carrierUnderside(
                            beam.joists(),
                            submission.timber(beam.timber()).depth().mm())
                    : levels.carrierTop(beam.joists());
            lowest = lowest.with(seat, (l, p) -> Math.min(l, p.levelMm(post.at())));
        }
        return lowest;
    }

    private Derived<Double> bottomLevel(FootingPlace footing, Derived<Double> groundLevel) {
        return isPad(footing)
                ? groundLevel.with(
                        Footings.topAboveGround(footing.footing(), footing.pointer(), submission.units()), Double::sum)
                : groundLevel.with(
                        Footings.embedment(footing.footing(), footing.pointer(), submission.units()), (g, e) -> g - e);
    }

    private static boolean isPad(FootingPlace footing) {
        return footing.footing().kind() == FootingKind.PAD;
    }
}
