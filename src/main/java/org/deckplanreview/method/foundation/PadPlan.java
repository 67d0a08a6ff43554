package org.deckplanreview.method.foundation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.PlanPoint;

/**
 * A footing and its posts in plan. Nothing in a submission turns a footing: its sides are taken to lie along and across the
 * line through its posts, or along and across the beam on its only post.
 *
 * @param centre of the footing
 * @param alongX direction of one side, of length 1
 * @param posts on it; none on a block
 * @param loads where the posts, or the joists of a block, press on it, at least one
 */
record PadPlan(
        FootingPlace footing,
        PlanPoint centre,
        double alongX,
        double alongY,
        List<PostPlace> posts,
        List<PlanPoint> loads) {

    static final String ASSUMPTION =
            "The sides of a footing lie along and across the beam over it, or the line through its posts.";

    /** Missing without a post, and for several posts without the footing's own place. */
    static Derived<PadPlan> of(FootingPlace footing, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(footing);
        if (footing.isBlock()) {
            return ofBlock(footing, platform);
        }
        List<PostPlace> posts = platform.posts().stream()
                .filter(p -> footing.posts().contains(p.id()))
                .toList();
        if (posts.isEmpty()) {
            return Derived.missing(footing.pointer(), "a post that stands on " + footing.label());
        }
        Optional<PlanPoint> centre = footing.footing()
                .at()
                .or(() -> posts.size() == 1 ? Optional.of(posts.get(0).post().at()) : Optional.empty());
        return Derived.of(
                        centre,
                        footing.pointer().child("at"),
                        "the centre of " + footing.label() + " in plan, since several posts stand on it")
                .map(c -> turned(footing, c, posts, platform));
    }

    /** Turned with its joists. A joist presses in the middle of the block along it, and on its own line across. */
    private static Derived<PadPlan> ofBlock(FootingPlace block, PlatformLayout platform) {
        List<PlanPoint> loads = new ArrayList<>();
        double[] along = {1, 0};
        for (JoistLine joist : platform.joists()) {
            double[] direction = direction(joist);
            for (MemberSupport support : joist.supports()) {
                if (block.carries(support)) {
                    double part = support.atMm() / joist.lengthMm();
                    PlanPoint from = joist.line().from();
                    loads.add(new PlanPoint(from.xMm() + part * direction[0], from.yMm() + part * direction[1]));
                    along = direction;
                }
            }
        }
        double length = Math.sqrt(along[0] * along[0] + along[1] * along[1]);
        return loads.isEmpty()
                ? Derived.missing(block.pointer().child("at"), "a place of " + block.label() + " under a joist")
                : Derived.known(new PadPlan(
                        block,
                        block.footing().at().orElseThrow(),
                        along[0] / length,
                        along[1] / length,
                        List.of(),
                        loads));
    }

    private static PadPlan turned(
            FootingPlace footing, PlanPoint centre, List<PostPlace> posts, PlatformLayout platform) {
        PlanPoint first = posts.get(0).post().at();
        PlanPoint last = posts.get(posts.size() - 1).post().at();
        double[] along = posts.size() > 1
                ? new double[] {last.xMm() - first.xMm(), last.yMm() - first.yMm()}
                : platform.beams().stream()
                        .filter(b -> posts.get(0).beams().contains(b.id()))
                        .map(PadPlan::direction)
                        .findFirst()
                        .orElse(new double[] {1, 0});
        double length = Math.sqrt(along[0] * along[0] + along[1] * along[1]);
        List<PlanPoint> loads = posts.stream().map(p -> p.post().at()).toList();
        return length > 0
                ? new PadPlan(footing, centre, along[0] / length, along[1] / length, posts, loads)
                : new PadPlan(footing, centre, 1, 0, posts, loads);
    }

    private static double[] direction(Member member) {
        PlanPoint from = member.line().from();
        PlanPoint to = member.line().to();
        return new double[] {to.xMm() - from.xMm(), to.yMm() - from.yMm()};
    }

    boolean isRound() {
        return footing.footing().shape() == FootingShape.ROUND;
    }

    double breadthMm() {
        return footing.footing().breadth().mm();
    }

    double lengthMm() {
        return isRound()
                ? breadthMm()
                : footing.footing().length().map(Length::mm).orElse(breadthMm());
    }

    /** Sides along and across. A footing under several posts is turned with its longer side along them. */
    List<Sides> turns() {
        double longer = Math.max(breadthMm(), lengthMm());
        double shorter = Math.min(breadthMm(), lengthMm());
        return posts.size() > 1 || longer == shorter
                ? List.of(new Sides(longer, shorter))
                : List.of(new Sides(longer, shorter), new Sides(shorter, longer));
    }

    record Sides(double alongMm, double acrossMm) {}

    /** Offset of a point from the centre, along. */
    double along(PlanPoint p) {
        return (p.xMm() - centre.xMm()) * alongX + (p.yMm() - centre.yMm()) * alongY;
    }

    /** Offset of a point from the centre, across. */
    double across(PlanPoint p) {
        return (p.yMm() - centre.yMm()) * alongX - (p.xMm() - centre.xMm()) * alongY;
    }

    /**
     * Smallest distance from a post's face to the footing's edge; negative where a post reaches beyond it. A post's breadth
     * lies along the beam on it.
     */
    double leastCoverMm() {
        if (isRound()) {
            return posts.stream().mapToDouble(this::coverInCircle).min().orElseThrow();
        }
        return turns().stream()
                .mapToDouble(sides ->
                        posts.stream().mapToDouble(p -> cover(p, sides)).min().orElseThrow())
                .max()
                .orElseThrow();
    }

    private double cover(PostPlace post, Sides sides) {
        PlanPoint at = post.post().at();
        return Math.min(
                sides.alongMm() / 2 - Math.abs(along(at)) - halfAlong(post),
                sides.acrossMm() / 2 - Math.abs(across(at)) - halfAcross(post));
    }

    private double coverInCircle(PostPlace post) {
        PlanPoint at = post.post().at();
        double x = Math.abs(along(at)) + halfAlong(post);
        double y = Math.abs(across(at)) + halfAcross(post);
        return breadthMm() / 2 - Math.sqrt(x * x + y * y);
    }

    /** Largest distance from a post's face to the footing's edge, over the worse turn. */
    double largestProjectionMm() {
        if (posts.size() > 1) {
            throw new IllegalStateException("Several posts share the footing");
        }
        PostPlace post = posts.get(0);
        PlanPoint at = post.post().at();
        double along = Math.abs(along(at)) - halfAlong(post);
        double across = Math.abs(across(at)) - halfAcross(post);
        return turns().stream()
                .flatMap(s -> Stream.of(s.alongMm() / 2 + along, s.acrossMm() / 2 + across))
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
    }

    private static double halfAlong(PostPlace post) {
        return post.timber().breadth().mm() / 2;
    }

    private static double halfAcross(PostPlace post) {
        return post.timber().depth().mm() / 2;
    }
}
