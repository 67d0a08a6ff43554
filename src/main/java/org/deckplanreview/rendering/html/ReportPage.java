package org.deckplanreview.rendering.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.rendering.drawing.Drawing;
import org.deckplanreview.rendering.drawing.DrawingKind;
import org.deckplanreview.rendering.drawing.Drawings;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.rendering.text.MissingMember;
import org.deckplanreview.rendering.text.ReportWords;
import org.deckplanreview.report.AmendedValue;
import org.deckplanreview.report.Counts;
import org.deckplanreview.report.Provenance;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedEdition;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.ruleset.Obligation;

/** What stands on the page, in its order; the template says how it looks. */
public final class ReportPage {
    private static final int FOOTER_REFERENCE = 48;
    private static final int SHORT_DIGEST = 19;
    private static final List<String> COUNTED =
            List.of("Concern", "Does not comply", "Undetermined", "Complies", "Not applicable");

    private final Report report;
    private final Form form;
    private final List<FindingView> findings;
    private final DrawnDeck deck;

    ReportPage(DrawnDeck deck, Form form) {
        this.deck = deck;
        this.report = deck.report();
        this.form = form;
        List<FindingView> numbered = new ArrayList<>();
        report.findings().forEach(f -> numbered.add(FindingView.of(numbered.size() + 1, f, form)));
        this.findings = List.copyOf(numbered);
    }

    /** Findings about one thing, those that are not applicable left out. */
    public record Group(String id, String title, List<FindingView> findings) {}

    /** Findings that there is something to do about. */
    public record ToDo(String title, List<FindingView> findings) {}

    /** A value that an amendment changed. */
    public record Amended(String what, Optional<String> was, String is, String setBy) {}

    public Report report() {
        return report;
    }

    public boolean onPaper() {
        return form == Form.PAPER;
    }

    /** Name of the paper's size in CSS. */
    public String paper() {
        return switch (report.unitSystem()) {
            case METRIC -> "A4";
            case INCH_POUND -> "letter";
        };
    }

    public String outcomeStyle() {
        return FindingView.style(report.outcome());
    }

    /** What the reader does next, in one sentence. */
    public String next() {
        int failing = count(f -> f.determination() == Determination.DOES_NOT_COMPLY && isBinding(f));
        int missing = missing().size();
        if (failing == 0 && missing == 0) {
            return "Nothing in this design has to be put right first. Read the cautions and referrals before work begins.";
        }
        List<String> parts = new ArrayList<>();
        if (failing > 0) {
            parts.add("put right " + failing + (failing == 1 ? " finding" : " findings"));
        }
        if (missing > 0) {
            parts.add("give what is missing in " + missing + (missing == 1 ? " place" : " places"));
        }
        return ReportWords.capital(String.join(", then ", parts)) + "; then have the design reviewed again.";
    }

    private int count(Predicate<ReportedFinding> which) {
        return (int) report.findings().stream().filter(which).count();
    }

    private static boolean isBinding(ReportedFinding finding) {
        return finding.obligation() == Obligation.SHALL;
    }

    public String edition() {
        ReportedEdition edition = report.edition();
        return edition.regionTitle() + " " + edition.edition() + ": " + edition.title() + ", "
                + ReportWords.binding(edition) + "; " + ReportWords.picked(report);
    }

    public List<String> amendments() {
        return report.edition().amendments().stream()
                .map(a -> a.amendment() + ": " + a.title())
                .toList();
    }

    public PageTable counts() {
        List<List<String>> rows = new ArrayList<>();
        report.counts().byConcern().forEach(c -> rows.add(counted(c.concern().word(), c.byDetermination())));
        rows.add(counted("All", report.counts().byDetermination()));
        return PageTable.of("Findings by concern and determination", COUNTED, rows, r -> r);
    }

    private static List<String> counted(String name, Counts.Tally tally) {
        return List.of(
                name,
                "" + tally.doesNotComply(),
                "" + tally.undetermined(),
                "" + tally.complies(),
                "" + tally.notApplicable());
    }

    /** Without those that are empty. */
    public List<ToDo> toDo() {
        return Stream.of(
                        toDo("What must be put right", Determination.DOES_NOT_COMPLY, ReportPage::isBinding),
                        toDo("What is recommended to put right", Determination.DOES_NOT_COMPLY, f -> !isBinding(f)),
                        toDo(
                                "What the rules cannot decide",
                                Determination.UNDETERMINED,
                                f -> f.needs().isEmpty()))
                .filter(t -> !t.findings().isEmpty())
                .toList();
    }

    private ToDo toDo(String title, Determination determination, Predicate<ReportedFinding> which) {
        return new ToDo(title, views(f -> f.determination() == determination && which.test(f)));
    }

    private List<FindingView> views(Predicate<ReportedFinding> which) {
        return findings.stream()
                .filter(v -> which.test(report.findings().get(v.number() - 1)))
                .toList();
    }

    public List<MissingMember> missing() {
        return MissingMember.of(report);
    }

    /** What the submission gives and nothing read, each in words; empty if all was read. */
    public List<String> notReviewed() {
        return report.givenNotReviewed().stream().map(ReportWords::notReviewed).toList();
    }

    public String notReviewedMeans() {
        return ReportWords.NOT_REVIEWED_MEANS;
    }

    public String countNotReviewed() {
        return ReportWords.countNotReviewed(report);
    }

    public List<SheetView> planAndSections() {
        return sheets(Stream.of(DrawingKind.PLAN, DrawingKind.SECTION));
    }

    public List<SheetView> members() {
        return sheets(Stream.of(DrawingKind.MEMBERS));
    }

    /** All drawings. */
    public List<SheetView> sheets() {
        return Stream.concat(planAndSections().stream(), members().stream()).toList();
    }

    private List<SheetView> sheets(Stream<DrawingKind> kinds) {
        return kinds.map(k -> Drawings.of(k, deck))
                .flatMap(List::stream)
                .map((Drawing d) -> SheetView.of(d, form))
                .toList();
    }

    public List<Group> groups() {
        return report.counts().byConcern().stream()
                .map(c -> new Group(
                        "concern-" + c.concern().word(),
                        ReportWords.capital(c.concern().word()),
                        views(f -> f.concern() == c.concern() && f.determination() != Determination.NOT_APPLICABLE)))
                .filter(g -> !g.findings().isEmpty())
                .toList();
    }

    public List<FindingView> notApplicable() {
        return views(f -> f.determination() == Determination.NOT_APPLICABLE);
    }

    public List<SchedulePart> schedule() {
        return report.schedule()
                .map(s -> SchedulePart.of(s, report.unitSystem()))
                .orElse(List.of());
    }

    public List<String> recalled() {
        return report.recalledFromMemory().stream().map(ReportWords::recalled).toList();
    }

    public String recalledMeans() {
        return ReportWords.RECALLED_MEANS;
    }

    public List<Amended> amendedValues() {
        return report.edition().amendedValues().stream()
                .map((AmendedValue v) -> new Amended(
                        v.what() + v.provision().map(p -> " (" + p + ")").orElse("") + ": " + v.strictness(),
                        v.was().map(ReportWords::side),
                        v.is().map(ReportWords::side).orElse("withdrawn"),
                        v.setBy()))
                .toList();
    }

    public PageTable digests() {
        Provenance from = report.provenance();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Bytes received", from.received()));
        rows.add(List.of("Submission in canonical form", from.submission()));
        rows.add(List.of("Edition with its standards", from.edition()));
        report.edition().amendments().forEach(a -> rows.add(List.of("Amendment " + a.amendment(), a.digest())));
        report.edition().bases().forEach(b -> rows.add(List.of(b.title(), b.digest())));
        report.edition()
                .basedOn()
                .forEach(b -> rows.add(
                        List.of(b.edition().isEmpty() ? b.title() : b.title() + ", " + b.edition(), b.digest())));
        rows.add(List.of("This report as JSON, without its provenance", report.digest()));
        return PageTable.of("Digests", List.of("Of", "Digest"), rows, r -> r);
    }

    /** Reference and report's digest, short enough for one line. */
    public String footer() {
        String reference = report.reference();
        String shown = reference.codePointCount(0, reference.length()) > FOOTER_REFERENCE
                ? reference.substring(0, reference.offsetByCodePoints(0, FOOTER_REFERENCE)) + "…"
                : reference;
        String digest = report.digest();
        return shown + " · report " + digest.substring(0, Math.min(SHORT_DIGEST, digest.length()));
    }
}
