package org.deckplanreview.schedule;

import java.util.Comparator;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.FrameLevels;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;

/**
 * A post to be set out and cut.
 *
 * @param alongMm of its centre, along the baseline
 * @param offsetMm of its centre, square to the baseline
 * @param lengthMm from its lower to its upper end, with what is embedded
 * @param bottomLevelMm top of a pad, or the end of the embedded part
 */
public record PostCut(
        Pointer pointer,
        String label,
        double alongMm,
        double offsetMm,
        Derived<Double> lengthMm,
        Derived<Double> bottomLevelMm,
        Derived<Double> topLevelMm,
        Derived<TopCut> top) {

    /**
     * The slope of a post's upper end along the beam that it carries.
     *
     * @param beam label of the beam
     * @param degrees to the horizontal, not negative
     * @param mmOverBreadth by how much one side of the post is lower than the other
     * @param lowerTowards what lies on the lower side: the next post, or the beam's end; empty where the top is level
     */
    public record TopCut(String beam, double degrees, double mmOverBreadth, Optional<String> lowerTowards) {}

    private record Seat(BeamLine beam, int support, double levelMm) {}

    static PostCut of(PostPlace post, PlatformLayout platform, FrameLevels levels, Baseline baseline) {
        return new PostCut(
                post.pointer(),
                post.label(),
                baseline.alongMm(post.post().at()),
                baseline.offsetMm(post.post().at()),
                lengthMm(post, platform),
                post.bottomLevelMm(),
                post.topLevelMm(),
                top(post, platform, levels));
    }

    static Derived<Double> lengthMm(PostPlace post, PlatformLayout platform) {
        return post.topLevelMm()
                .with(post.bottomLevelMm(), (top, bottom) -> top - bottom)
                .flatMap(l -> Derived.of(
                        Optional.of(l).filter(length -> length > 0),
                        platform.pointer().child("level"),
                        "levels of deck, ground and footing that leave room for " + post.label()));
    }

    /** The top follows the lowest of the beams on the post, the first of them where they are alike. */
    private static Derived<TopCut> top(PostPlace post, PlatformLayout platform, FrameLevels levels) {
        Derived<Optional<Seat>> lowest = Derived.known(Optional.empty());
        for (BeamLine beam : platform.beams()) {
            for (int i = 0; i < beam.supports().size(); i++) {
                MemberSupport support = beam.supports().get(i);
                if (support.id().equals(post.id())) {
                    int at = i;
                    Derived<Seat> seat = levels.seatMm(beam, support.atMm()).map(l -> new Seat(beam, at, l));
                    lowest = lowest.with(seat, PostCut::lower);
                }
            }
        }
        return lowest.flatMap(s ->
                        Derived.of(s, platform.pointer().child("beams"), "the beam that " + post.label() + " carries"))
                .flatMap(s -> levels.topMm(s.beam(), 0)
                        .with(levels.topMm(s.beam(), s.beam().lengthMm()), (from, to) -> from - to)
                        .map(drop -> cut(post, s, drop / s.beam().lengthMm())));
    }

    private static Optional<Seat> lower(Optional<Seat> lowest, Seat other) {
        return lowest.isPresent() && lowest.get().levelMm() <= other.levelMm() ? lowest : Optional.of(other);
    }

    /** @param gradient drop over run from the beam's first end to its last */
    private static TopCut cut(PostPlace post, Seat seat, double gradient) {
        double slope = Math.abs(gradient);
        return new TopCut(
                seat.beam().label(),
                StrictMath.toDegrees(StrictMath.atan(slope)),
                slope * post.timber().breadth().mm(),
                gradient == 0 ? Optional.empty() : Optional.of(neighbour(seat, gradient > 0)));
    }

    private static String neighbour(Seat seat, boolean towardsLastEnd) {
        Comparator<MemberSupport> byPlace = Comparator.comparingDouble(MemberSupport::atMm);
        double at = seat.beam().supports().get(seat.support()).atMm();
        Optional<MemberSupport> next = towardsLastEnd
                ? seat.beam().supports().stream().filter(s -> s.atMm() > at).min(byPlace)
                : seat.beam().supports().stream().filter(s -> s.atMm() < at).max(byPlace);
        return next.map(MemberSupport::label).orElse("the end of " + seat.beam().label());
    }
}
