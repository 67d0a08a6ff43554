package org.deckplanreview.schedule;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FrameLevels;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.submission.PlanPoint;

/**
 * What the site needs of one platform.
 *
 * @param datum the outline's first corner, from which setting out counts
 * @param baselineEnd the other end of the outline's first edge
 * @param boards empty where none are described
 * @param membraneAreaM2 of the ground under the platform, without laps
 */
public record PlatformSchedule(
        Pointer pointer,
        String label,
        PlanPoint datum,
        PlanPoint baselineEnd,
        List<PostCut> posts,
        List<SetOutRectangle> rectangles,
        List<BeamTop> beamTops,
        List<FootingConcrete> concrete,
        List<BoardCount> boards,
        double membraneAreaM2) {
    public PlatformSchedule {
        posts = List.copyOf(posts);
        rectangles = List.copyOf(rectangles);
        beamTops = List.copyOf(beamTops);
        concrete = List.copyOf(concrete);
        boards = List.copyOf(boards);
    }

    private static final double MM2_IN_M2 = 1e6;

    /** @param boards cut from the outline, by index of the platform */
    static PlatformSchedule of(
            Layout layout,
            PlatformLayout platform,
            SortedMap<Integer, Derived<BoardPieces>> boards,
            SitePractice practice) {
        FrameLevels levels = FrameLevels.of(layout, platform);
        List<PlanPoint> outline = platform.platform().outline();
        Baseline baseline = Baseline.of(outline);
        return new PlatformSchedule(
                platform.pointer(),
                platform.label(),
                outline.get(0),
                outline.get(1),
                platform.posts().stream()
                        .map(p -> PostCut.of(p, platform, levels, baseline))
                        .toList(),
                Rectangles.of(platform, practice),
                platform.beams().stream().map(b -> BeamTop.of(b, levels)).toList(),
                platform.footings().stream().map(FootingConcrete::of).toList(),
                platform.boards().stream()
                        .map(b -> BoardCount.of(b, platform, boards.get(platform.platformIndex()), practice))
                        .toList(),
                platform.areaMm2() / MM2_IN_M2);
    }

    /** Of all footings; missing where none are described, since a deck cannot do without. */
    Derived<Double> concreteM3() {
        return concrete.isEmpty()
                ? Derived.missing(pointer.child("footings"), "the footings of " + label)
                : concrete.stream()
                        .map(FootingConcrete::volumeM3)
                        .reduce(Derived.known(0.0), (a, b) -> a.with(b, Double::sum));
    }

    List<Need> needs() {
        Stream<Derived<?>> ofPosts =
                posts.stream().flatMap(p -> Stream.of(p.lengthMm(), p.topLevelMm(), p.bottomLevelMm(), p.top()));
        Stream<Derived<?>> ofBeams =
                beamTops.stream().flatMap(b -> b.levels().stream()).map(BeamTop.At::levelMm);
        Stream<Derived<?>> ofConcrete = Stream.of(concreteM3());
        Stream<Derived<?>> ofBoards = boards.stream().map(BoardCount::laid);
        return SiteSchedule.needsOf(
                Stream.of(ofPosts, ofBeams, ofConcrete, ofBoards).flatMap(s -> s));
    }
}
