package org.deckplanreview.rendering.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.deckplanreview.schedule.BeamTop;
import org.deckplanreview.schedule.BoardCount;
import org.deckplanreview.schedule.PlatformSchedule;
import org.deckplanreview.schedule.PostCut;
import org.deckplanreview.schedule.PracticeValue;
import org.deckplanreview.schedule.SetOutRectangle;
import org.deckplanreview.schedule.SiteSchedule;
import org.deckplanreview.schedule.TimberOrder;
import org.deckplanreview.schedule.WorkStep;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.Need;
import org.deckplanreview.submission.PlanPoint;

/** The site schedule as tables to be taken to site: lengths and levels in whole mm, but for what is cut to less. */
final class SchedulePages {
    private static final int NAME = 24;
    private static final int CELL = 10;
    private static final int INDENT = 4;
    private static final String UNKNOWN = "?";

    private final SiteSchedule schedule;
    private final Page page;

    private SchedulePages(SiteSchedule schedule, Page page) {
        this.schedule = schedule;
        this.page = page;
    }

    static void write(SiteSchedule schedule, Page page) {
        new SchedulePages(schedule, page).write();
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
                        + point(platform.baselineEnd()) + ". All figures in mm.");
    }

    private static String point(PlanPoint p) {
        return "x = " + mm(p.xMm()) + ", y = " + mm(p.yMm());
    }

    private void posts(List<PostCut> posts) {
        if (posts.isEmpty()) {
            return;
        }
        table("Posts", "along", "offset", "length", "bottom", "top");
        for (PostCut p : posts) {
            row(
                    p.label(),
                    mm(p.alongMm()),
                    mm(p.offsetMm()),
                    mm(p.lengthMm()),
                    mm(p.bottomLevelMm()),
                    mm(p.topLevelMm()));
        }
        table("Tops of posts", "angle", "over post", "lower towards");
        for (PostCut p : posts) {
            String[] cells = p.top()
                    .optional()
                    .map(t -> new String[] {
                        decimals(t.degrees(), 1) + " deg",
                        decimals(t.mmOverBreadth(), 1),
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
                    "sides " + mm(r.firstSideMm()) + " and " + mm(r.secondSideMm()) + "; diagonals "
                            + decimals(r.diagonalMm(), 1) + " and " + decimals(r.otherDiagonalMm(), 1)
                            + r.triangle()
                                    .map(t -> "; right angle by " + mm(t.shorterLegMm()) + ", " + mm(t.longerLegMm())
                                            + ", " + mm(t.hypotenuseMm()))
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
                row("  " + at.place(), mm(at.alongMm()), mm(at.levelMm()));
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
                    order.label() + " for " + order.use().word() + ", " + decimals(order.breadthMm(), 0) + " x "
                            + decimals(order.depthMm(), 0) + ": " + metres(order.lengthMm()) + " m in all");
            order.pieces().forEach(p -> page.entry(INDENT, 12, counted(p.count(), p.lengthMm()), p.member()));
            if (!order.stock().isEmpty()) {
                page.paragraph(2, "Buy and cut:");
            }
            for (TimberOrder.Stock s : order.stock()) {
                page.entry(
                        INDENT,
                        12,
                        counted(s.count(), s.lengthMm()),
                        "each into "
                                + s.cutsMm().stream().map(SchedulePages::mm).collect(Collectors.joining(" + ")));
            }
            if (!order.stock().isEmpty()) {
                page.paragraph(
                        2,
                        "Stock " + metres(order.stockLengthMm()) + " m, waste " + metres(order.wasteMm()) + " m ("
                                + decimals(order.wastePercent(), 1) + " %)");
            }
            if (!order.overlong().isEmpty()) {
                page.paragraph(2, "Longer than any stock, to be jointed over a support or ordered to length:");
                order.overlong().forEach(p -> page.entry(INDENT, 12, counted(p.count(), p.lengthMm()), p.member()));
            }
        }
    }

    private static String counted(int count, double lengthMm) {
        return count + " x " + mm(lengthMm);
    }

    private void quantities() {
        page.heading("Site schedule: concrete, boards, cut ends, membrane");
        for (PlatformSchedule platform : schedule.platforms()) {
            platform.concrete().forEach(c -> row(c.label(), decimals(c.volumeM3(), 3) + " m3"));
        }
        row("concrete in all", decimals(schedule.concreteM3(), 3) + " m3");
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
            row("membrane", decimals(platform.membraneAreaM2(), 2) + " m2", platform.label());
        }
    }

    private void boards(BoardCount boards) {
        String laid = boards.laid()
                .map(l -> ", " + l.rows() + " rows, " + l.pieces() + " boards, " + metres(l.lengthMm()) + " m, "
                        + l.fixings() + " fixings at " + l.crossings() + " crossings with joists")
                .optional()
                .orElse("");
        page.paragraph(0, boards.label() + ": " + decimals(boards.areaM2(), 2) + " m2" + laid);
    }

    private void notes() {
        page.heading("Site schedule: how to read it");
        schedule.notes().forEach(n -> page.entry(0, 2, "-", n));
        String recalled = schedule.practice().stream()
                .filter(PracticeValue::recalled)
                .map(PracticeValue::parameter)
                .collect(Collectors.joining(", "));
        if (!recalled.isEmpty()) {
            page.entry(0, 2, "-", "Recalled from memory, to be checked before relying on them: " + recalled + ".");
        }
        if (!schedule.needs().isEmpty()) {
            page.paragraph(0, "What shows as " + UNKNOWN + " or is left out follows once this is given:");
            for (Need need : schedule.needs()) {
                page.entry(0, 2, "-", need.what() + ": " + need.pointer().value());
            }
        }
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
        StringBuilder figures = new StringBuilder();
        int shown = (int) IntStream.range(0, cells.length)
                .takeWhile(i -> cells[i].length() <= CELL - 1)
                .count();
        for (int i = 0; i < shown; i++) {
            figures.append(" ".repeat(CELL - cells[i].length())).append(cells[i]);
        }
        String start = Page.padded(safe, NAME) + figures;
        String rest =
                IntStream.range(shown, cells.length).mapToObj(i -> cells[i]).collect(Collectors.joining("  "));
        if (rest.isEmpty()) {
            page.line(start);
        } else {
            page.hanging(start + "  ", start.length() + 2, rest);
        }
    }

    private static String mm(Derived<Double> length) {
        return length.map(SchedulePages::mm).optional().orElse(UNKNOWN);
    }

    private static String mm(double length) {
        return decimals(length, 0);
    }

    private static String metres(double mm) {
        return decimals(mm / 1000, 2);
    }

    private static String decimals(Derived<Double> value, int digits) {
        return value.map(v -> decimals(v, digits)).optional().orElse(UNKNOWN);
    }

    private static String decimals(double value, int digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN);
        return (rounded.signum() == 0 ? BigDecimal.ZERO.setScale(digits) : rounded).toPlainString();
    }
}
