package org.deckplanreview.rendering.html;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.rendering.text.ReportWords;
import org.deckplanreview.report.ReportedCitation;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.ruleset.Confirmation;

/**
 * A finding on the page.
 *
 * @param number its place in the report from 1, by which drawings call it
 * @param verdict the determination, and whether it is a recommendation that is not met
 * @param style of the determination
 * @param isOpen whether there is something to do about it
 * @param facts what was found and allowed, and where that stands
 * @param values where those come from that the working uses
 */
public record FindingView(
        int number,
        String verdict,
        String style,
        boolean isOpen,
        String title,
        String subject,
        String sentence,
        Optional<String> advice,
        List<Fact> facts,
        List<StepView> working,
        List<String> values) {

    /** A name and its words. */
    public record Fact(String name, List<String> texts) {}

    static FindingView of(int number, ReportedFinding finding, Form form) {
        return new FindingView(
                number,
                finding.determination().word()
                        + finding.utilisation()
                                .map(BigDecimal::toPlainString)
                                .map(u -> ", " + u)
                                .orElse(""),
                style(finding.determination()),
                finding.determination() == Determination.DOES_NOT_COMPLY
                        || finding.determination() == Determination.UNDETERMINED,
                finding.title(),
                ReportWords.named(finding.subject()),
                finding.sentence(),
                finding.advice(),
                facts(finding),
                finding.working().stream().map(s -> StepView.of(s, form)).toList(),
                finding.citation().setBy().stream().map(FindingView::setBy).toList());
    }

    /** A look-up has values and no steps. */
    public boolean hasWorking() {
        return !working.isEmpty() || !values.isEmpty();
    }

    static String style(Determination determination) {
        return switch (determination) {
            case DOES_NOT_COMPLY -> "fails";
            case UNDETERMINED -> "open";
            case COMPLIES -> "complies";
            case NOT_APPLICABLE -> "none";
        };
    }

    private static List<Fact> facts(ReportedFinding finding) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "Provision",
                List.of(finding.provision() + ", " + finding.obligation().word())));
        facts.add(
                new Fact("Where", List.of(ReportWords.located(finding.subject().pointer()))));
        if (!finding.subject().also().isEmpty()) {
            facts.add(new Fact(
                    "Alike and no worse",
                    List.of(String.join(
                            ", ",
                            finding.subject().also().stream()
                                    .map(a -> a.label())
                                    .toList()))));
        }
        finding.found().flatMap(ReportWords::found).ifPresent(f -> facts.add(new Fact("Found", List.of(f))));
        finding.allowed().ifPresent(a -> facts.add(new Fact("Allowed", List.of(ReportWords.allowed(a)))));
        finding.utilisation()
                .ifPresent(
                        u -> facts.add(new Fact("Utilisation", List.of(u.toPlainString() + " (at most 1 complies)"))));
        finding.calculated().ifPresent(c -> facts.add(new Fact("Calculated", List.of(ReportWords.calculated(c)))));
        if (!finding.needs().isEmpty()) {
            facts.add(new Fact(
                    "To decide it, give",
                    finding.needs().stream()
                            .map(n -> n.what() + ": " + ReportWords.located(n.pointer()))
                            .toList()));
        }
        facts.add(new Fact("Source", List.of(ReportWords.cited(finding))));
        return List.copyOf(facts);
    }

    private static String setBy(ReportedCitation.SetBy value) {
        return value.parameter() + ": " + value.source()
                + (value.confirmed() == Confirmation.MEMORY
                        ? ""
                        : "; confirmed by " + value.confirmed().word());
    }
}
