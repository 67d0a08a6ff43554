package org.deckplanreview.rendering.html;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.rendering.text.SiteFigures;
import org.deckplanreview.schedule.BeamTop;
import org.deckplanreview.schedule.BoardCount;
import org.deckplanreview.schedule.PlatformSchedule;
import org.deckplanreview.schedule.PostCut;
import org.deckplanreview.schedule.SetOutRectangle;
import org.deckplanreview.schedule.SiteSchedule;
import org.deckplanreview.schedule.TimberOrder;
import org.deckplanreview.submission.PlanPoint;

/**
 * A part of the site schedule on the page.
 *
 * @param texts before the tables
 * @param items a list after the tables
 * @param isOrdered whether its order counts
 */
public record SchedulePart(
        String title, List<String> texts, List<PageTable> tables, List<String> items, boolean isOrdered) {

    static List<SchedulePart> of(SiteSchedule schedule, UnitSystem units) {
        return new Writer(schedule, SiteFigures.of(units)).parts();
    }

    /** Figures come from {@link SiteFigures}, as in every form of the schedule. */
    private record Writer(SiteSchedule schedule, SiteFigures figures) {
        private static final String UNKNOWN = "?";

        /** A piece, or stock, or what is left to order, of one timber. */
        private record Line(TimberOrder order, String about, String what, int count, double lengthMm) {}

        /** A level of one beam. */
        private record Level(BeamTop beam, BeamTop.At at) {}

        List<SchedulePart> parts() {
            List<SchedulePart> parts = new ArrayList<>();
            parts.add(orderOfWork());
            schedule.platforms().forEach(p -> parts.add(settingOut(p)));
            parts.add(timber());
            parts.add(quantities());
            parts.add(howToRead());
            return parts.stream()
                    .filter(p -> !p.tables().isEmpty() || !p.items().isEmpty())
                    .toList();
        }

        private SchedulePart orderOfWork() {
            return new SchedulePart(
                    "Order of work",
                    List.of("Where a step says hold, work stops until it is checked."),
                    List.of(),
                    schedule.orderOfWork().stream()
                            .map(s -> (s.hold() ? "HOLD: " : "") + s.step())
                            .toList(),
                    true);
        }

        private SchedulePart settingOut(PlatformSchedule platform) {
            String unit = ", " + figures.unit();
            List<PageTable> tables = new ArrayList<>();
            tables.addAll(tables(
                    List.of("Post", "Along", "Offset", "Length", "Bottom", "Top"),
                    "Posts: place, length to cut, levels of ends" + unit,
                    platform.posts().stream()
                            .map(p -> List.of(
                                    p.label(),
                                    figures.length(p.alongMm()),
                                    figures.length(p.offsetMm()),
                                    length(p.lengthMm()),
                                    length(p.bottomLevelMm()),
                                    length(p.topLevelMm())))
                            .toList()));
            tables.addAll(tables(
                    List.of("Post", "Angle", "Over post", "Lower towards"),
                    "Tops of posts: cut along the beam" + unit,
                    platform.posts().stream().map(this::top).toList()));
            tables.addAll(tables(
                    List.of("Corners", "Sides", "Diagonals, both alike", "Right angle by"),
                    "Rectangles to check" + unit,
                    platform.rectangles().stream().map(this::rectangle).toList()));
            tables.addAll(tables(
                    List.of("Beam", "At", "Along", "Level"),
                    "Tops of beams" + unit,
                    platform.beamTops().stream()
                            .flatMap(b -> b.levels().stream().map(at -> new Level(b, at)))
                            .map(l -> List.of(
                                    l.beam().label(),
                                    l.at().place(),
                                    figures.length(l.at().alongMm()),
                                    length(l.at().levelMm())))
                            .toList()));
            return new SchedulePart(
                    "Setting out: " + platform.label(),
                    List.of("Datum at " + point(platform.datum()) + "; baseline from there to "
                            + point(platform.baselineEnd()) + ". All figures in " + figures.unit() + "."),
                    tables,
                    List.of(),
                    false);
        }

        private String point(PlanPoint p) {
            return "x = " + figures.length(p.xMm()) + ", y = " + figures.length(p.yMm());
        }

        private List<String> top(PostCut post) {
            return post.top()
                    .map(t -> List.of(
                            post.label(),
                            SiteFigures.decimals(t.degrees(), 1) + "°",
                            figures.fine(t.mmOverBreadth()),
                            t.lowerTowards().orElse("level")))
                    .optional()
                    .orElseGet(() -> List.of(post.label(), UNKNOWN, UNKNOWN, UNKNOWN));
        }

        private List<String> rectangle(SetOutRectangle r) {
            return List.of(
                    String.join(", ", r.corners()),
                    figures.length(r.firstSideMm()) + " and " + figures.length(r.secondSideMm()),
                    figures.fine(r.diagonalMm()) + " and " + figures.fine(r.otherDiagonalMm()),
                    r.triangle()
                            .map(t -> Stream.of(t.shorterLegMm(), t.longerLegMm(), t.hypotenuseMm())
                                    .map(figures::length)
                                    .collect(Collectors.joining(", ")))
                            .orElse("–"));
        }

        private SchedulePart timber() {
            List<PageTable> tables = new ArrayList<>();
            tables.addAll(tables(
                    List.of("Timber", "For", "Section", "Pieces in all", "Stock", "Waste"),
                    "Timber",
                    schedule.timber().stream().map(this::order).toList()));
            tables.addAll(tables(
                    List.of("Timber", "Member", "Pieces", "Length"),
                    "Pieces to cut, " + figures.unit(),
                    lines(o -> o.pieces().stream()
                            .map(p -> new Line(o, o.label(), p.member(), p.count(), p.lengthMm())))));
            tables.addAll(tables(
                    List.of("Timber", "Cut each into", "Pieces", "Length"),
                    "Buy and cut, " + figures.unit(),
                    lines(o -> o.stock().stream().map(s -> new Line(o, o.label(), cuts(s), s.count(), s.lengthMm())))));
            tables.addAll(tables(
                    List.of("Timber", "Member", "Pieces", "Length"),
                    "Longer than any stock: joint over a support or order to length, " + figures.unit(),
                    lines(o -> o.overlong().stream()
                            .map(p -> new Line(o, o.label(), p.member(), p.count(), p.lengthMm())))));
            return new SchedulePart("Timber", List.of(), tables, List.of(), false);
        }

        private List<String> order(TimberOrder order) {
            return List.of(
                    order.label(),
                    order.use().word(),
                    figures.length(order.breadthMm()) + " x " + figures.length(order.depthMm()),
                    figures.inAll(order.lengthMm()),
                    order.stock().isEmpty() ? "–" : figures.inAll(order.stockLengthMm()),
                    order.stock().isEmpty()
                            ? "–"
                            : figures.inAll(order.wasteMm()) + " (" + SiteFigures.decimals(order.wastePercent(), 1)
                                    + " %)");
        }

        private String cuts(TimberOrder.Stock stock) {
            return stock.cutsMm().stream().map(figures::length).collect(Collectors.joining(" + "));
        }

        private List<List<String>> lines(Function<TimberOrder, Stream<Line>> of) {
            return schedule.timber().stream()
                    .flatMap(of)
                    .map(l -> List.of(l.about(), l.what(), "" + l.count(), figures.length(l.lengthMm())))
                    .toList();
        }

        private SchedulePart quantities() {
            List<PageTable> tables = new ArrayList<>();
            List<List<String>> concrete = new ArrayList<>();
            schedule.platforms()
                    .forEach(p -> p.concrete().forEach(c -> concrete.add(List.of(c.label(), volume(c.volumeM3())))));
            concrete.add(List.of("In all", volume(schedule.concreteM3())));
            tables.addAll(tables(List.of("Footing", "Volume"), "Concrete", concrete));
            tables.addAll(tables(
                    List.of("Boards", "Area", "Rows", "Pieces", "Length in all", "Crossings with joists", "Fixings"),
                    "Boards",
                    schedule.platforms().stream()
                            .flatMap(p -> p.boards().stream())
                            .map(this::boards)
                            .toList()));
            List<List<String>> ends = new ArrayList<>();
            schedule.cutEnds().forEach(c -> ends.add(List.of(c.of(), count(c.ends()))));
            ends.add(List.of("In all", count(schedule.cutEndsInAll())));
            tables.addAll(tables(List.of("Of", "Ends"), "Cut ends to treat", ends));
            tables.addAll(tables(
                    List.of("Platform", "Area"),
                    "Membrane under the deck, without laps",
                    schedule.platforms().stream()
                            .map(p -> List.of(p.label(), figures.area(p.membraneAreaM2())))
                            .toList()));
            return new SchedulePart("Concrete, boards, cut ends, membrane", List.of(), tables, List.of(), false);
        }

        private List<String> boards(BoardCount boards) {
            String area = figures.area(boards.areaM2());
            return boards.laid()
                    .map(l -> List.of(
                            boards.label(),
                            area,
                            "" + l.rows(),
                            "" + l.pieces(),
                            figures.inAll(l.lengthMm()),
                            "" + l.crossings(),
                            "" + l.fixings()))
                    .optional()
                    .orElseGet(() -> List.of(boards.label(), area, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN));
        }

        private SchedulePart howToRead() {
            List<String> items = new ArrayList<>(schedule.notes());
            schedule.needs()
                    .forEach(n -> items.add("What shows as " + UNKNOWN + " or is left out follows once this is given: "
                            + n.what() + ": " + n.pointer().value()));
            return new SchedulePart("How to read the schedule", List.of(), List.of(), items, false);
        }

        private String length(Derived<Double> mm) {
            return mm.map(figures::length).optional().orElse(UNKNOWN);
        }

        private String volume(Derived<Double> m3) {
            return m3.map(figures::volume).optional().orElse(UNKNOWN) + " " + figures.volumeUnit();
        }

        private static String count(Derived<Integer> n) {
            return n.map(i -> "" + i).optional().orElse(UNKNOWN);
        }

        private static List<PageTable> tables(List<String> headings, String caption, List<List<String>> rows) {
            return rows.isEmpty() ? List.of() : List.of(PageTable.of(caption, headings, rows, r -> r));
        }
    }
}
