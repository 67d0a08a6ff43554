package org.deckplanreview.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What the site takes along. A value that does not follow from the submission is missing; what would give it stands in
 * the needs.
 *
 * @param timber by timber and use, in the submission's order of timbers
 * @param concreteM3 of all footings
 * @param notes how lengths, plans and counts are to be read
 * @param needs sorted, without repetition
 * @param practice where the values of site practice come from
 */
public record SiteSchedule(
        List<PlatformSchedule> platforms,
        List<TimberOrder> timber,
        Derived<Double> concreteM3,
        List<CutEnds> cutEnds,
        Derived<Integer> cutEndsInAll,
        List<WorkStep> orderOfWork,
        List<String> notes,
        List<Need> needs,
        List<PracticeValue> practice) {
    public SiteSchedule {
        platforms = List.copyOf(platforms);
        timber = List.copyOf(timber);
        cutEnds = List.copyOf(cutEnds);
        orderOfWork = List.copyOf(orderOfWork);
        notes = List.copyOf(notes);
        needs = List.copyOf(needs);
        practice = List.copyOf(practice);
    }

    private static final List<String> NOTES = List.of(
            "Lengths are on the centre line of each piece. Measure on site before cutting.",
            "Levels refer to the datum of the submission's levels. Setting out counts from the first corner of the"
                    + " outline: along the baseline, which is the outline's first edge, and square to it, positive on"
                    + " the platform's side.",
            "A post's top follows the fall along the beam that it carries; a weathering cut comes on top of that.",
            "Rectangles are those of neighbouring posts on neighbouring parallel beams, that of the outermost posts,"
                    + " and the outline where it is one.",
            "The first board lies along the outline; the last is ripped to what remains.",
            "The cutting plan is first-fit decreasing: the longest piece first, each into the first length that has"
                    + " room for it, then the shortest stock that holds the pieces. Waste counts saw cuts and"
                    + " offcuts; it leaves out pieces longer than any stock, which are to be jointed over a support"
                    + " or ordered to length.",
            "Both ends of each piece count as cut ends, but for the ground end of a post that is left uncut; notches and"
                    + " holes come on top.",
            "Stairs, guards, noggings and packers are not in the lists.");

    /** @param practice the parameters of {@link SitePractice#PARAMETERS} */
    public static SiteSchedule derive(Layout layout, Parameters practice) {
        return derive(layout, SitePractice.of(practice));
    }

    static SiteSchedule derive(Layout layout, SitePractice practice) {
        SortedMap<Integer, Derived<BoardPieces>> boards = BoardPieces.of(layout);
        List<PlatformSchedule> platforms = layout.platforms().stream()
                .map(p -> PlatformSchedule.of(layout, p, boards, practice))
                .toList();
        TimberTaking taking = TimberTaking.of(layout, boards);
        Derived<Double> concrete = platforms.stream()
                .map(PlatformSchedule::concreteM3)
                .reduce(Derived.known(0.0), (a, b) -> a.with(b, Double::sum));
        List<CutEnds> cutEnds = taking.cutEnds();
        Derived<Integer> inAll =
                cutEnds.stream().map(CutEnds::ends).reduce(Derived.known(0), (a, b) -> a.with(b, Integer::sum));
        TreeSet<Need> needs = new TreeSet<>(taking.needs());
        platforms.forEach(p -> needs.addAll(p.needs()));
        return new SiteSchedule(
                platforms,
                taking.orders(practice),
                concrete,
                cutEnds,
                inAll,
                practice.orderOfWork(),
                NOTES,
                new ArrayList<>(needs),
                practice.sources());
    }

    static List<Need> needsOf(Stream<Derived<?>> values) {
        return values.flatMap(v -> v.needs().stream()).distinct().sorted().toList();
    }
}
