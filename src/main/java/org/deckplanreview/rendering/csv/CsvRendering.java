package org.deckplanreview.rendering.csv;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.report.Allowed;
import org.deckplanreview.report.Found;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedCalculation;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.ReportedSubject;
import org.deckplanreview.report.ShownValue;
import org.deckplanreview.submission.NotReviewed;

/** The findings of a report and its site schedule, each as a CSV file of its own. */
public final class CsvRendering {

    private static final List<String> HEADINGS = List.of(
            "number",
            "determination",
            "obligation",
            "concern",
            "provision",
            "title",
            "subject",
            "pointer",
            "also",
            "quantity",
            "found",
            "found unit",
            "needed",
            "limit",
            "limit unit",
            "utilisation",
            "calculated",
            "sentence",
            "advice",
            "source",
            "source edition",
            "clause",
            "standing",
            "confirmed",
            "still to be told");

    private CsvRendering() {}

    /**
     * One row a finding, in the report's order and numbered so, then one without a number for each member that was given and
     * not reviewed.
     */
    public static byte[] findings(Report report) {
        Sheet sheet = new Sheet(HEADINGS);
        int number = 1;
        for (ReportedFinding finding : report.findings()) {
            row(sheet, number++, finding);
        }
        report.givenNotReviewed().forEach(member -> row(sheet, member));
        return sheet.bytes();
    }

    /**
     * One row a figure of the site schedule: platform, list, item, figure, value, unit. The headings alone where the edition
     * gives no site practice.
     */
    public static byte[] schedule(Report report) {
        return ScheduleSheet.of(report);
    }

    private static void row(Sheet sheet, int number, ReportedFinding f) {
        sheet.row(
                number,
                f.determination().word(),
                f.obligation().word(),
                f.concern().word(),
                f.provision(),
                f.title(),
                f.subject().label(),
                f.subject().pointer().value(),
                f.subject().also().stream().map(ReportedSubject.Also::label).collect(Collectors.joining("; ")),
                f.found().map(Found::quantity).orElse(""),
                f.found().flatMap(Found::value).map(CsvRendering::cell).orElse(""),
                f.found().flatMap(Found::unit).map(MeasureUnit::symbol).orElse(""),
                f.allowed().map(a -> a.sense().phrase()).orElse(""),
                f.allowed().map(CsvRendering::cell).orElse(""),
                f.allowed().flatMap(Allowed::unit).map(MeasureUnit::symbol).orElse(""),
                f.utilisation().map(Object.class::cast).orElse(""),
                f.calculated()
                        .flatMap(ReportedCalculation::utilisation)
                        .map(Object.class::cast)
                        .orElse(""),
                f.sentence(),
                f.advice().orElse(""),
                f.citation().source().title(),
                f.citation().source().edition(),
                f.citation().clause().orElse(""),
                f.standing().word(),
                f.citation().confirmed().by().word(),
                f.needs().stream().map(CsvRendering::need).collect(Collectors.joining("; ")));
    }

    private static void row(Sheet sheet, NotReviewed member) {
        Map<String, String> cells = Map.of(
                "determination",
                "given, not reviewed",
                "title",
                member.meaning(),
                "pointer",
                member.pointer().value(),
                "also",
                member.also().stream().map(Pointer::value).collect(Collectors.joining("; ")));
        sheet.row(HEADINGS.stream()
                .map(heading -> cells.getOrDefault(heading, ""))
                .toArray());
    }

    private static Object cell(ShownValue value) {
        return value instanceof ShownValue.Number n ? n.number() : value.text();
    }

    private static Object cell(Allowed allowed) {
        return allowed.values().size() == 1
                ? cell(allowed.values().get(0))
                : allowed.values().stream().map(ShownValue::text).collect(Collectors.joining(" or "));
    }

    private static String need(Need need) {
        return need.what() + " at " + need.pointer().value();
    }
}
