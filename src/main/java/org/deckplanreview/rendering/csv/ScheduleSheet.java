package org.deckplanreview.rendering.csv;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_METRE_;
import static org.deckplanreview.measure.MeasureUnit.DEGREE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_METRE_;

import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.report.Report;
import org.deckplanreview.schedule.BeamTop;
import org.deckplanreview.schedule.BoardCount;
import org.deckplanreview.schedule.CutEnds;
import org.deckplanreview.schedule.FootingConcrete;
import org.deckplanreview.schedule.PlatformSchedule;
import org.deckplanreview.schedule.PostCut;
import org.deckplanreview.schedule.SetOutRectangle;
import org.deckplanreview.schedule.SiteSchedule;
import org.deckplanreview.schedule.TimberOrder;
import org.deckplanreview.schedule.WorkStep;

/** The site schedule, a row a figure. What is not known is an empty value. */
final class ScheduleSheet {

    private static final List<String> HEADINGS = List.of("platform", "list", "item", "figure", "value", "unit");
    private static final String WHOLE_DECK = "";

    private final UnitSystem units;
    private final Sheet sheet = new Sheet(HEADINGS);

    private ScheduleSheet(UnitSystem units) {
        this.units = units;
    }

    static byte[] of(Report report) {
        ScheduleSheet rows = new ScheduleSheet(report.unitSystem());
        report.schedule().ifPresent(rows::write);
        return rows.sheet.bytes();
    }

    private void write(SiteSchedule schedule) {
        int number = 1;
        for (WorkStep step : schedule.orderOfWork()) {
            sheet.row(WHOLE_DECK, "order of work", number++, step.hold() ? "hold" : "step", step.step(), "");
        }
        schedule.platforms().forEach(this::platform);
        schedule.timber().forEach(this::timber);
        for (CutEnds ends : schedule.cutEnds()) {
            count(WHOLE_DECK, "cut ends", ends.of(), "ends", ends.ends());
        }
        measure(WHOLE_DECK, "concrete", "in all", "volume", schedule.concreteM3(), CUBIC_METRE_);
        count(WHOLE_DECK, "cut ends", "in all", "ends", schedule.cutEndsInAll());
    }

    private void platform(PlatformSchedule platform) {
        String on = platform.label();
        for (PostCut post : platform.posts()) {
            length(on, "posts", post.label(), "along the baseline", post.alongMm());
            length(on, "posts", post.label(), "offset from the baseline", post.offsetMm());
            length(on, "posts", post.label(), "length", post.lengthMm());
            length(on, "posts", post.label(), "bottom level", post.bottomLevelMm());
            length(on, "posts", post.label(), "top level", post.topLevelMm());
            measure(on, "posts", post.label(), "slope of the top", post.top().map(PostCut.TopCut::degrees), DEGREE);
        }
        for (SetOutRectangle rectangle : platform.rectangles()) {
            String corners = String.join(", ", rectangle.corners());
            length(on, "rectangles", corners, "first side", rectangle.firstSideMm());
            length(on, "rectangles", corners, "second side", rectangle.secondSideMm());
            length(on, "rectangles", corners, "diagonal", rectangle.diagonalMm());
            length(on, "rectangles", corners, "other diagonal", rectangle.otherDiagonalMm());
        }
        for (BeamTop beam : platform.beamTops()) {
            for (BeamTop.At at : beam.levels()) {
                length(on, "tops of beams", beam.label() + ", " + at.place(), "along", at.alongMm());
                length(on, "tops of beams", beam.label() + ", " + at.place(), "level", at.levelMm());
            }
        }
        for (FootingConcrete concrete : platform.concrete()) {
            measure(on, "concrete", concrete.label(), "volume", concrete.volumeM3(), CUBIC_METRE_);
        }
        for (BoardCount boards : platform.boards()) {
            area(on, "boards", boards.label(), "area", boards.areaM2());
            count(on, "boards", boards.label(), "rows", boards.laid().map(BoardCount.Laid::rows));
            count(on, "boards", boards.label(), "boards", boards.laid().map(BoardCount.Laid::pieces));
            length(on, "boards", boards.label(), "length in all", boards.laid().map(BoardCount.Laid::lengthMm));
            count(on, "boards", boards.label(), "fixings", boards.laid().map(BoardCount.Laid::fixings));
        }
        area(on, "membrane", on, "area", platform.membraneAreaM2());
    }

    private void timber(TimberOrder order) {
        String what = order.label() + " for " + order.use().word();
        for (TimberOrder.Pieces pieces : order.pieces()) {
            String each = what + ", " + pieces.member();
            sheet.row(WHOLE_DECK, "timber", each, "pieces", pieces.count(), "");
            length(WHOLE_DECK, "timber", each, "length of each", pieces.lengthMm());
        }
        for (TimberOrder.Stock stock : order.stock()) {
            sheet.row(WHOLE_DECK, "timber to buy", what, "lengths", stock.count(), "");
            length(WHOLE_DECK, "timber to buy", what, "length of each", stock.lengthMm());
        }
        length(WHOLE_DECK, "timber", what, "waste", order.wasteMm());
    }

    private void length(String platform, String list, String item, String figure, double mm) {
        length(platform, list, item, figure, Derived.known(mm));
    }

    private void length(String platform, String list, String item, String figure, Derived<Double> mm) {
        measure(platform, list, item, figure, mm, MILLIMETRE);
    }

    private void area(String platform, String list, String item, String figure, double m2) {
        measure(platform, list, item, figure, Derived.known(m2), SQUARE_METRE_);
    }

    private void measure(
            String platform, String list, String item, String figure, Derived<Double> value, MeasureUnit unit) {
        Object shown =
                value.isKnown() ? units.measure(Measure.of(value.get(), unit)).value() : "";
        sheet.row(platform, list, item, figure, shown, units.unit(unit).symbol());
    }

    private void count(String platform, String list, String item, String figure, Derived<Integer> count) {
        sheet.row(platform, list, item, figure, count.isKnown() ? count.get() : "", "");
    }
}
