package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;

/**
 * The area of a platform that each post carries, from geometry alone: borders lie midway between the supports of each
 * joist and midway between the posts of each beam; what overhangs belongs to the last support. No lever of an overhang is
 * counted.
 */
public record CarriedArea(PlatformLayout platform) {

    /** The area that rests on a post through all its beams, mm2. */
    public Derived<Double> ofPostMm2(PostPlace post) {
        List<BeamLine> beams = platform.beams().stream()
                .filter(b -> post.beams().contains(b.id()))
                .toList();
        List<Need> needs = needs(post, beams);
        return needs.isEmpty()
                ? Derived.known(
                        beams.stream().mapToDouble(b -> onPostMm2(b, post.id())).sum())
                : Derived.missing(needs);
    }

    /** The area that rests on a footing through all posts on it, mm2. */
    public Derived<Double> ofFootingMm2(FootingPlace footing) {
        if (footing.isBlock()) {
            return ofBlockMm2(footing);
        }
        List<PostPlace> posts = platform.posts().stream()
                .filter(p -> footing.posts().contains(p.id()))
                .toList();
        Derived<Double> sum = posts.isEmpty()
                ? Derived.missing(footing.pointer(), "a post that stands on " + footing.label())
                : Derived.known(0.0);
        for (PostPlace post : posts) {
            sum = sum.with(ofPostMm2(post), Double::sum);
        }
        return sum;
    }

    private Derived<Double> ofBlockMm2(FootingPlace block) {
        double area = 0;
        boolean carries = false;
        for (int j = 0; j < platform.joists().size(); j++) {
            List<MemberSupport> supports = platform.joists().get(j).supports();
            for (int s = 0; s < supports.size(); s++) {
                if (block.carries(supports.get(s))) {
                    area += ofJoistMm2(new JoistBearing(j, s, 0));
                    carries = true;
                }
            }
        }
        return carries
                ? Derived.known(area)
                : Derived.missing(block.pointer().child("at"), "a place of " + block.label() + " under a joist");
    }

    private List<Need> needs(PostPlace post, List<BeamLine> beams) {
        List<Need> needs = new ArrayList<>();
        Pointer at = platform.pointer();
        if (beams.isEmpty()) {
            needs.add(new Need(at.child("beams"), "the beam that " + post.label() + " carries"));
        }
        if (platform.joists().isEmpty()) {
            needs.add(new Need(at.child("joists"), "the joists: their timber, direction and spacing"));
        } else if (!beams.isEmpty() && beams.stream().allMatch(b -> b.joists().isEmpty())) {
            needs.add(new Need(
                    beams.get(0).pointer().child("line"),
                    "a line of " + beams.get(0).label() + " that joists cross"));
        }
        return needs;
    }

    private double onPostMm2(BeamLine beam, String post) {
        int index = index(beam, post);
        if (index < 0) {
            return 0;
        }
        double from = border(beam.supports(), index - 1, Double.NEGATIVE_INFINITY);
        double to = border(beam.supports(), index, Double.POSITIVE_INFINITY);
        double area = 0;
        for (int i = 0; i < beam.joists().size(); i++) {
            double start = i == 0 ? edge(beam, i, -1) : middle(beam, i - 1);
            double end = i == beam.joists().size() - 1 ? edge(beam, i, 1) : middle(beam, i);
            double within = Math.max(0, Math.min(to, end) - Math.max(from, start));
            area += ofJoistMm2(beam.joists().get(i)) * within / (end - start);
        }
        return area;
    }

    private static int index(BeamLine beam, String post) {
        for (int i = 0; i < beam.supports().size(); i++) {
            if (beam.supports().get(i).id().equals(post)) {
                return i;
            }
        }
        return -1;
    }

    /** Midway between a support and the next; beyond the first and the last there is no border. */
    private static double border(List<MemberSupport> supports, int before, double none) {
        return before < 0 || before + 1 >= supports.size()
                ? none
                : (supports.get(before).atMm() + supports.get(before + 1).atMm()) / 2;
    }

    private static double middle(BeamLine beam, int joist) {
        return (beam.joists().get(joist).atMm() + beam.joists().get(joist + 1).atMm()) / 2;
    }

    /** The side of the first or last joist, where the area that it carries ends. */
    private double edge(BeamLine beam, int bearing, int side) {
        JoistBearing b = beam.joists().get(bearing);
        JoistLine joist = platform.joists().get(b.joist());
        double sine = Axis.of(joist.line()).sineTo(Axis.of(beam.line()));
        return b.atMm() + side * joist.timber().breadth().mm() / 2 / sine;
    }

    /** The part of a joist's area that rests on one of its supports. */
    private double ofJoistMm2(JoistBearing bearing) {
        JoistLine joist = platform.joists().get(bearing.joist());
        double from = border(joist.supports(), bearing.joistSupport() - 1, Double.NEGATIVE_INFINITY);
        double to = border(joist.supports(), bearing.joistSupport(), Double.POSITIVE_INFINITY);
        return joist.strips().stream()
                .filter(s -> s.heavyItem().isEmpty())
                .mapToDouble(s -> s.areaMm2(from, to))
                .sum();
    }
}
