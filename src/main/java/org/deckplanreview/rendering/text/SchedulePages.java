package org.deckplanreview.rendering.text;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.schedule.BeamTop;
import org.deckplanreview.schedule.BoardCount;
import org.deckplanreview.schedule.PlatformSchedule;
import org.deckplanreview.schedule.PostCut;
import org.deckplanreview.schedule.SetOutRectangle;
import org.deckplanreview.schedule.SiteSchedule;
import org.deckplanreview.schedule.TimberOrder;
import org.deckplanreview.schedule.WorkStep;
import org.deckplanreview.submission.PlanPoint;

/** The site schedule as tables to be taken to site. */
final class SchedulePages {
    private static final int NAME = 24;
    private static final int INDENT = 4;
    private static final String UNKNOWN = "?";

    private final SiteSchedule schedule;
    private final SiteFigures figures;
    private final Page page;

    private SchedulePages(SiteSchedule schedule, SiteFigures figures, Page page) {
        this.schedule = schedule;
        this.figures = figures;
        this.page = page;
    }

    static void write(SiteSchedule schedule, UnitSystem units, Page page) {
        new SchedulePages(schedule, SiteFigures.of(units), page).write();
    }

    private void write() {
        page.heading("Site schedule: order of work");
        int number = 1;
        for (WorkStep step : schedule.orderOfWork()) {
            page.entry(0, INDENT, number++ + ".", (step.hold() ? "HOLD: " : "") + step.step());
        }
        for (PlatformSchedule platform : schedule.platforms()) {
            page.heading("Site schedule: setting out");
            settingOut(platform);
            posts(platform.posts());
            rectangles(platform.rectangles());
            beamTops(platform.beamTops());
        }
        timber();
        quantities();
        notes();
    }

    private void settingOut(PlatformSchedule platform) {
        page.paragraph(
                0,
                platform.label() + ": datum at " + point(platform.datum()) + ", baseline from there to "
                        + point(platform.baselineEnd()) + ". All figures in " + figures.unit() + ".");
    }

    private String point(PlanPoint p) {
        return "x = " + length(p.xMm()) + ", y = " + length(p.yMm());
    }

    private void posts(List<PostCut> posts) {
        if (posts.isEmpty()) {
            return;
        }
        Columns<PostCut> places = new Columns<>(
                List.of("along", "offset", "length"),
                p -> List.of(length(p.alongMm()), length(p.offsetMm()), length(p.lengthMm())));
        Columns<PostCut> levels = new Columns<>(
                List.of("bottom", "top"), p -> List.of(length(p.bottomLevelMm()), length(p.topLevelMm())));
        Columns<PostCut> all = places.and(levels);
        if (fits(all)) {
            table("Posts", posts, PostCut::label, all);
        } else {
            table("Posts", posts, PostCut::label, places);
            table("Levels of posts", posts, PostCut::label, levels);
        }
        table("Tops of posts", "angle", "over post", "lower towards");
        for (PostCut p : posts) {
            String[] cells = p.top()
                    .optional()
                    .map(t -> new String[] {
                        SiteFigures.decimals(t.degrees(), 1) + " deg",
                        figures.fine(t.mmOverBreadth()),
                        t.lowerTowards().orElse("level")
                    })
                    .orElse(new String[] {UNKNOWN, UNKNOWN, ""});
            row(p.label(), cells);
        }
    }

    private void rectangles(List<SetOutRectangle> rectangles) {
        if (rectangles.isEmpty()) {
            return;
        }
        page.blank();
        page.paragraph(0, "Rectangles: both diagonals must measure the same");
        for (SetOutRectangle r : rectangles) {
            page.entry(0, 2, "-", String.join(", ", r.corners()));
            page.paragraph(
                    INDENT,
                    "sides " + length(r.firstSideMm()) + " and " + length(r.secondSideMm()) + "; diagonals "
                            + figures.fine(r.diagonalMm()) + " and " + figures.fine(r.otherDiagonalMm())
                            + r.triangle()
                                    .map(t -> "; right angle by " + length(t.shorterLegMm()) + ", "
                                            + length(t.longerLegMm()) + ", " + length(t.hypotenuseMm()))
                                    .orElse(""));
        }
    }

    private void beamTops(List<BeamTop> beams) {
        if (beams.isEmpty()) {
            return;
        }
        table("Tops of beams", "at", "level");
        for (BeamTop beam : beams) {
            page.paragraph(0, beam.label());
            for (BeamTop.At at : beam.levels()) {
                row("  " + at.place(), length(at.alongMm()), length(at.levelMm()));
            }
        }
    }

    private void timber() {
        if (schedule.timber().isEmpty()) {
            return;
        }
        page.heading("Site schedule: timber");
        boolean isFirst = true;
        for (TimberOrder order : schedule.timber()) {
            if (!isFirst) {
                page.blank();
            }
            isFirst = false;
            page.paragraph(
                    0,
                    order.label() + " for " + order.use().word() + ", " + figures.length(order.breadthMm()) + " x "
                            + figures.length(order.depthMm()) + ": " + figures.inAll(order.lengthMm()) + " in all");
            order.pieces()
                    .forEach(p -> page.entry(INDENT, figures.counted(), counted(p.count(), p.lengthMm()), p.member()));
            if (!order.stock().isEmpty()) {
                page.paragraph(2, "Buy and cut:");
            }
            for (TimberOrder.Stock s : order.stock()) {
                page.entry(
                        INDENT,
                        figures.counted(),
                        counted(s.count(), s.lengthMm()),
                        "each into " + s.cutsMm().stream().map(figures::length).collect(Collectors.joining(" + ")));
            }
            if (!order.stock().isEmpty()) {
                page.paragraph(
                        2,
                        "Stock " + figures.inAll(order.stockLengthMm()) + ", waste " + figures.inAll(order.wasteMm())
                                + " (" + SiteFigures.decimals(order.wastePercent(), 1) + " %)");
            }
            if (!order.overlong().isEmpty()) {
                page.paragraph(2, "Longer than any stock, to be jointed over a support or ordered to length:");
                order.overlong()
                        .forEach(p ->
                                page.entry(INDENT, figures.counted(), counted(p.count(), p.lengthMm()), p.member()));
            }
        }
    }

    private String counted(int count, double lengthMm) {
        return count + " x " + length(lengthMm);
    }

    private void quantities() {
        page.heading("Site schedule: concrete, boards, cut ends, membrane");
        for (PlatformSchedule platform : schedule.platforms()) {
            platform.concrete().forEach(c -> row(c.label(), volume(c.volumeM3())));
        }
        row("concrete in all", volume(schedule.concreteM3()));
        for (PlatformSchedule platform : schedule.platforms()) {
            platform.boards().forEach(this::boards);
        }
        schedule.cutEnds()
                .forEach(c -> row(
                        "cut ends of " + c.of(),
                        c.ends().map(n -> "" + n).optional().orElse(UNKNOWN)));
        row(
                "cut ends in all",
                schedule.cutEndsInAll().map(n -> "" + n).optional().orElse(UNKNOWN));
        for (PlatformSchedule platform : schedule.platforms()) {
            row("membrane", figures.area(platform.membraneAreaM2()), platform.label());
        }
    }

    private void boards(BoardCount boards) {
        String laid = boards.laid()
                .map(l -> ", " + l.rows() + " rows, " + l.pieces() + " boards, " + figures.inAll(l.lengthMm()) + ", "
                        + l.fixings() + " fixings at " + l.crossings() + " crossings with joists")
                .optional()
                .orElse("");
        page.paragraph(0, boards.label() + ": " + figures.area(boards.areaM2()) + laid);
    }

    private void notes() {
        page.heading("Site schedule: how to read it");
        schedule.notes().forEach(n -> page.entry(0, 2, "-", n));
        if (!schedule.needs().isEmpty()) {
            page.paragraph(0, "What shows as " + UNKNOWN + " or is left out follows once this is given:");
            for (Need need : schedule.needs()) {
                page.entry(0, 2, "-", need.what() + ": " + need.pointer().value());
            }
        }
    }

    /** Cells beside a name, under their headings. */
    private record Columns<T>(List<String> headings, Function<T, List<String>> cells) {
        Columns<T> and(Columns<T> more) {
            return new Columns<>(joined(headings, more.headings), t -> joined(cells.apply(t), more.cells.apply(t)));
        }

        private static List<String> joined(List<String> some, List<String> more) {
            return Stream.concat(some.stream(), more.stream()).toList();
        }
    }

    private boolean fits(Columns<?> columns) {
        return NAME + columns.headings().size() * figures.cell() <= Page.WIDTH;
    }

    private <T> void table(String name, List<T> rows, Function<T, String> label, Columns<T> columns) {
        table(name, columns.headings().toArray(String[]::new));
        rows.forEach(r -> row(label.apply(r), columns.cells().apply(r).toArray(String[]::new)));
    }

    private void table(String name, String... columns) {
        page.blank();
        row(name, columns);
    }

    /** A long name has a line of its own; what follows the columns of figures is wrapped. */
    private void row(String name, String... untrusted) {
        String[] cells = Stream.of(untrusted).map(PlainText::of).toArray(String[]::new);
        String safe = PlainText.of(name);
        if (safe.length() >= NAME) {
            page.paragraph(0, safe);
            safe = "";
        }
        int cell = figures.cell();
        StringBuilder columns = new StringBuilder();
        int shown = (int) IntStream.range(0, cells.length)
                .takeWhile(i -> cells[i].length() < cell)
                .count();
        for (int i = 0; i < shown; i++) {
            columns.append(" ".repeat(cell - cells[i].length())).append(cells[i]);
        }
        String start = Page.padded(safe, NAME) + columns;
        String rest =
                IntStream.range(shown, cells.length).mapToObj(i -> cells[i]).collect(Collectors.joining("  "));
        if (rest.isEmpty()) {
            page.line(start);
        } else {
            page.hanging(start + "  ", start.length() + 2, rest);
        }
    }

    private String length(Derived<Double> mm) {
        return mm.map(figures::length).optional().orElse(UNKNOWN);
    }

    private String length(double mm) {
        return figures.length(mm);
    }

    private String volume(Derived<Double> m3) {
        return m3.map(figures::volume).optional().orElse(UNKNOWN) + " " + figures.volumeUnit();
    }
}
