package org.deckplanreview.cli;

import java.util.Locale;
import org.deckplanreview.comparison.ComparisonSummary;
import org.deckplanreview.comparison.SubmissionComparison;
import org.deckplanreview.rendering.text.PlainText;

/** A summary of comparisons as plain text. */
final class SummaryText {
    private static final int MOST_CAUSES = 20;

    private SummaryText() {}

    static String of(ComparisonSummary summary) {
        StringBuilder text = new StringBuilder();
        line(text, "DECK COMPARISON");
        line(text, "");
        line(
                text,
                "From         " + summary.from().name() + ": " + summary.from().title());
        line(text, "To           " + summary.to().name() + ": " + summary.to().title());
        line(text, "Submissions  " + summary.submissions());
        line(text, "Got worse    " + summary.gotWorse());
        line(text, "Got better   " + summary.gotBetter());
        line(text, "Refused      " + summary.refused());
        line(text, "");
        line(text, "Outcomes");
        summary.outcomes().stream()
                .filter(o -> o.submissions() > 0)
                .forEach(o -> line(
                        text,
                        String.format(
                                Locale.ROOT,
                                "  %-15s -> %-15s %8d  %s",
                                o.before().word(),
                                o.after().word(),
                                o.submissions(),
                                o.transition().word())));
        SubmissionComparison.Counts findings = summary.findings();
        line(text, "");
        line(text, "Findings");
        line(
                text,
                String.format(
                        Locale.ROOT,
                        "  worse %d, new %d, changed %d, better %d, gone %d, unchanged %d",
                        findings.worse(),
                        findings.added(),
                        findings.changed(),
                        findings.better(),
                        findings.gone(),
                        findings.unchanged()));
        causes(text, summary);
        line(text, "");
        line(text, summary.notice());
        return text.toString();
    }

    private static void causes(StringBuilder text, ComparisonSummary summary) {
        if (summary.causes().isEmpty()) {
            return;
        }
        line(text, "");
        line(text, "  findings     worse    better  because of");
        summary.causes().stream()
                .limit(MOST_CAUSES)
                .forEach(c -> line(
                        text,
                        String.format(
                                Locale.ROOT,
                                "  %8d  %8d  %8d  %s",
                                c.findings(),
                                c.worse(),
                                c.better(),
                                c.provision().orElse(c.kind().word())
                                        + c.effect().map(e -> ", " + e.word()).orElse(""))));
        int more = summary.causes().size() - MOST_CAUSES;
        if (more > 0) {
            line(text, "  and " + more + " more");
        }
    }

    private static void line(StringBuilder text, String line) {
        text.append(PlainText.of(line)).append('\n');
    }
}
