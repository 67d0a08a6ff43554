package org.deckplanreview.rendering.text;

import static org.deckplanreview.rendering.text.ReportWords.allowed;
import static org.deckplanreview.rendering.text.ReportWords.binding;
import static org.deckplanreview.rendering.text.ReportWords.calculated;
import static org.deckplanreview.rendering.text.ReportWords.cited;
import static org.deckplanreview.rendering.text.ReportWords.located;
import static org.deckplanreview.rendering.text.ReportWords.named;
import static org.deckplanreview.rendering.text.ReportWords.picked;
import static org.deckplanreview.rendering.text.ReportWords.place;
import static org.deckplanreview.rendering.text.ReportWords.remarks;
import static org.deckplanreview.rendering.text.ReportWords.side;
import static org.deckplanreview.rendering.text.ReportWords.titled;
import static org.deckplanreview.rendering.text.ReportWords.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.formula.Expression;
import org.deckplanreview.report.AmendedValue;
import org.deckplanreview.report.Counts;
import org.deckplanreview.report.Provenance;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedEdition;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.ReportedStep;
import org.deckplanreview.ruleset.Obligation;

/**
 * A report as plain text for terminals and logs, to be read from the top down: the outcome, what must be put right, what is
 * missing and where to give it, then the findings with their calculations.
 */
public final class TextRendering {
    private static final int INDENT = 4;
    private static final int NAME = 13;
    private static final int VERDICT = 17;

    private final Report report;
    private final WorkingShown workingShown;
    private final Page page = new Page();

    private TextRendering(Report report, WorkingShown workingShown) {
        this.report = report;
        this.workingShown = workingShown;
    }

    /** Lines of at most 80 characters, each with a line end. */
    public static String render(Report report, WorkingShown workingShown) {
        return new TextRendering(report, workingShown).render();
    }

    private String render() {
        head();
        counts();
        toPutRight("What must be put right", f -> f.obligation() == Obligation.SHALL);
        toPutRight("What is recommended to put right", f -> f.obligation() != Obligation.SHALL);
        missing();
        beyondTheRules();
        notReviewed();
        list("Cautions", report.cautions());
        list("Referrals", report.referrals());
        amended();
        report.counts().byConcern().forEach(this::concern);
        notApplicable();
        report.schedule().ifPresent(s -> SchedulePages.write(s, report.unitSystem(), page));
        list("Assumptions", report.assumptions());
        recalled();
        provenance();
        return page.text();
    }

    private void head() {
        ReportedEdition edition = report.edition();
        page.paragraph(0, "DECK PLAN REVIEW");
        page.blank();
        page.entry(0, NAME, "Reference", report.reference());
        report.title().ifPresent(t -> page.entry(0, NAME, "Title", t));
        page.entry(0, NAME, "Outcome", report.outcome().word().toUpperCase(Locale.ROOT));
        if (!report.givenNotReviewed().isEmpty()) {
            page.entry(0, NAME, "Not reviewed", ReportWords.countNotReviewed(report));
        }
        page.entry(
                0,
                NAME,
                "Edition",
                edition.regionTitle() + " " + edition.edition() + ": " + edition.title() + ", " + binding(edition)
                        + "; " + picked(report));
        edition.amendments().forEach(a -> page.entry(0, NAME, "Amended by", a.amendment() + ": " + a.title()));
        page.blank();
        page.paragraph(0, report.notice());
    }

    /** Each value that an amendment changed, what it replaced, and by whose authority. */
    private void amended() {
        if (report.edition().amendedValues().isEmpty()) {
            return;
        }
        page.heading("Amended values");
        for (AmendedValue value : report.edition().amendedValues()) {
            page.entry(
                    0,
                    2,
                    "-",
                    value.what() + value.provision().map(p -> " (" + p + ")").orElse("") + ": " + value.strictness());
            value.was().ifPresent(side -> page.entry(INDENT, NAME, "Was", side(side)));
            page.entry(INDENT, NAME, "Is", value.is().map(ReportWords::side).orElse("withdrawn"));
            page.entry(INDENT, NAME, "Set by", value.setBy());
        }
    }

    private void counts() {
        page.heading("Findings by concern");
        row("", List.of("does not comply", "undetermined", "complies", "not applicable"));
        report.counts().byConcern().forEach(c -> row(c.concern().word(), cells(c.byDetermination())));
        row("all", cells(report.counts().byDetermination()));
    }

    private static List<String> cells(Counts.Tally tally) {
        return List.of(
                "" + tally.doesNotComply(),
                "" + tally.undetermined(),
                "" + tally.complies(),
                "" + tally.notApplicable());
    }

    private void row(String name, List<String> cells) {
        StringBuilder line = new StringBuilder(Page.padded(name, NAME));
        cells.forEach(c -> line.append(" ".repeat(16 - c.length())).append(c));
        page.line(line.toString());
    }

    private void toPutRight(String heading, Predicate<ReportedFinding> obligation) {
        List<ReportedFinding> open =
                with(Determination.DOES_NOT_COMPLY).filter(obligation).toList();
        if (open.isEmpty()) {
            return;
        }
        page.heading(heading);
        for (int i = 0; i < open.size(); i++) {
            summary(i + 1, open.get(i));
        }
    }

    private void beyondTheRules() {
        List<ReportedFinding> open = with(Determination.UNDETERMINED)
                .filter(f -> f.needs().isEmpty())
                .toList();
        if (open.isEmpty()) {
            return;
        }
        page.heading("What the rules cannot decide");
        for (int i = 0; i < open.size(); i++) {
            summary(i + 1, open.get(i));
        }
    }

    private void summary(int number, ReportedFinding finding) {
        page.entry(0, INDENT, number + ".", titled(finding));
        page.paragraph(INDENT, place(finding.subject()));
        page.paragraph(INDENT, finding.sentence());
        finding.advice().ifPresent(a -> page.paragraph(INDENT, "Advice: " + a));
    }

    private void missing() {
        List<MissingMember> missing = MissingMember.of(report);
        if (missing.isEmpty()) {
            return;
        }
        page.heading("What is missing");
        missing.forEach(m -> {
            page.paragraph(0, located(m.pointer()));
            m.whats().forEach(what -> page.paragraph(INDENT, "Give " + what + "."));
            page.paragraph(INDENT, "Needed for " + String.join(", ", m.provisions()) + ".");
        });
    }

    private void notReviewed() {
        if (report.givenNotReviewed().isEmpty()) {
            return;
        }
        page.heading("Given, not reviewed");
        page.paragraph(0, ReportWords.NOT_REVIEWED_MEANS);
        report.givenNotReviewed().forEach(member -> page.entry(0, 2, "-", ReportWords.notReviewed(member)));
    }

    private void list(String heading, List<String> texts) {
        if (texts.isEmpty()) {
            return;
        }
        page.heading(heading);
        texts.forEach(t -> page.entry(0, 2, "-", t));
    }

    private void concern(Counts.ConcernTally tally) {
        List<ReportedFinding> findings = report.findings().stream()
                .filter(f -> f.concern() == tally.concern())
                .filter(f -> f.determination() != Determination.NOT_APPLICABLE)
                .toList();
        if (findings.isEmpty()) {
            return;
        }
        Optional<ReportedFinding> governing = findings.stream()
                .filter(f -> f.utilisation().isPresent())
                .reduce((a, b) ->
                        b.utilisation().get().compareTo(a.utilisation().get()) > 0 ? b : a);
        page.heading("Findings: " + tally.concern().word());
        for (ReportedFinding finding : findings) {
            if (finding.determination() == Determination.COMPLIES) {
                complying(finding);
            } else {
                full(finding);
            }
            if (showsWorking(finding, governing)) {
                finding.working().forEach(this::step);
            }
        }
    }

    private boolean showsWorking(ReportedFinding finding, Optional<ReportedFinding> governing) {
        return switch (workingShown) {
            case ALL -> true;
            case NONE -> false;
            case GOVERNING ->
                finding.determination() == Determination.DOES_NOT_COMPLY
                        || governing.filter(g -> g == finding).isPresent();
        };
    }

    private void complying(ReportedFinding finding) {
        page.entry(
                0,
                VERDICT,
                finding.determination().word()
                        + finding.utilisation()
                                .map(u -> "  " + u.toPlainString())
                                .orElse(""),
                titled(finding) + ": " + named(finding.subject()));
    }

    private void full(ReportedFinding finding) {
        page.entry(0, VERDICT, finding.determination().word().toUpperCase(Locale.ROOT), titled(finding));
        page.paragraph(INDENT, place(finding.subject()));
        page.paragraph(INDENT, finding.sentence());
        finding.found().flatMap(ReportWords::found).ifPresent(f -> page.entry(INDENT, NAME, "Found", f));
        finding.allowed().ifPresent(a -> page.entry(INDENT, NAME, "Allowed", allowed(a)));
        finding.utilisation().ifPresent(u -> page.entry(INDENT, NAME, "Utilisation", u.toPlainString()));
        finding.calculated().ifPresent(c -> page.entry(INDENT, NAME, "Calculated", calculated(c)));
        page.entry(INDENT, NAME, "Source", cited(finding));
    }

    private void step(ReportedStep step) {
        String start = " ".repeat(INDENT + 2) + step.symbol() + " = ";
        List<String> parts = new ArrayList<>();
        step.expression().map(Expression::text).ifPresent(parts::add);
        step.substituted()
                .filter(s -> !step.expression().equals(Optional.of(s)))
                .map(Expression::text)
                .ifPresent(parts::add);
        parts.add(value(step));
        StringBuilder words = new StringBuilder(String.join(" = ", parts));
        List<String> remarks = remarks(step);
        if (!remarks.isEmpty()) {
            words.append("  [").append(String.join("; ", remarks)).append(']');
        }
        page.hanging(start, INDENT + 6, words.toString());
    }

    private void notApplicable() {
        List<ReportedFinding> findings = with(Determination.NOT_APPLICABLE).toList();
        if (findings.isEmpty()) {
            return;
        }
        page.heading("Not applicable");
        findings.forEach(f -> page.entry(0, 2, "-", titled(f) + ": " + named(f.subject())));
    }

    private void provenance() {
        Provenance provenance = report.provenance();
        page.heading("Provenance");
        page.paragraph(0, "Version of the service: " + provenance.service());
        digest("Bytes received", provenance.received());
        digest("Submission in canonical form", provenance.submission());
        digest("Edition with its standards", provenance.edition());
        report.edition().amendments().forEach(a -> digest("Amendment " + a.amendment(), a.digest()));
        report.edition().bases().forEach(b -> digest(b.title(), b.digest()));
        report.edition()
                .basedOn()
                .forEach(b -> digest(b.edition().isEmpty() ? b.title() : b.title() + ", " + b.edition(), b.digest()));
        digest("This report as JSON, without its provenance", report.digest());
    }

    private void digest(String of, String digest) {
        page.paragraph(0, of);
        page.paragraph(INDENT, digest);
    }

    private Stream<ReportedFinding> with(Determination determination) {
        return report.findings().stream().filter(f -> f.determination() == determination);
    }

    private void recalled() {
        if (report.recalledFromMemory().isEmpty()) {
            return;
        }
        page.heading("Recalled from memory");
        page.paragraph(0, ReportWords.RECALLED_MEANS);
        report.recalledFromMemory().forEach(value -> page.entry(0, 2, "-", ReportWords.recalled(value)));
    }
}
