package org.deckplanreview.rendering.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.report.Allowed;
import org.deckplanreview.report.AmendedValue;
import org.deckplanreview.report.Found;
import org.deckplanreview.report.PickedBy;
import org.deckplanreview.report.RecalledValue;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedAmendment;
import org.deckplanreview.report.ReportedCalculation;
import org.deckplanreview.report.ReportedCitation;
import org.deckplanreview.report.ReportedEdition;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.ReportedStep;
import org.deckplanreview.report.ReportedSubject;
import org.deckplanreview.report.ShownValue;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.submission.NotReviewed;
import org.deckplanreview.vocabulary.Sense;

/** How reports say in words what their records hold, alike in every form for people. Not yet made harmless. */
public final class ReportWords {
    /** Above what the submission gives and nothing read. */
    public static final String NOT_REVIEWED_MEANS =
            "No provision, calculation or schedule entry of this edition looks at these members of the submission. The"
                    + " outcome says nothing about them.";

    /** Above what was recalled from memory. */
    public static final String RECALLED_MEANS =
            "Nobody read these in their documents. Check each there before relying on a provision that is named with it.";

    /** How many provisions are named before others are only counted. */
    private static final int NAMED = 4;

    private ReportWords() {}

    /** When an edition binds. */
    public static String binding(ReportedEdition edition) {
        return edition.inForce()
                .map(period -> "in force from " + period.from()
                        + period.until().map(u -> " until " + u).orElse(""))
                .orElseGet(() -> "published on " + edition.published().orElseThrow() + ", binding only where adopted");
    }

    /** Why the edition is the one. */
    public static String picked(Report report) {
        return switch (report.edition().pickedBy().orElse(PickedBy.DAY)) {
            case DAY -> "picked by the day " + report.reviewOn();
            case SUBMISSION -> "named by the submission";
            case AMENDMENT ->
                "adopted by the amendment "
                        + report.edition().amendments().stream()
                                .filter(ReportedAmendment::adopts)
                                .map(ReportedAmendment::amendment)
                                .collect(Collectors.joining(", "));
            case REQUEST -> "named by the request";
        };
    }

    public static String side(AmendedValue.Side side) {
        return side.value() + "; " + side.source() + " (" + side.standing() + ")";
    }

    public static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    public static String titled(ReportedFinding finding) {
        return finding.title() + " (" + finding.provision() + ", "
                + finding.obligation().word() + ")";
    }

    /** A subject, and how many others are alike. */
    public static String named(ReportedSubject subject) {
        int others = subject.also().size();
        return subject.label()
                + (others == 0 ? "" : " and " + others + (others == 1 ? " other" : " others") + " alike");
    }

    public static String place(ReportedSubject subject) {
        return named(subject) + ", " + located(subject.pointer());
    }

    /** What the submission gives and nothing read, where it stands, and how many others are alike. */
    public static String notReviewed(NotReviewed member) {
        int others = member.also().size();
        return member.meaning().replaceFirst("\\.$", "") + ": "
                + member.pointer().value()
                + (others == 0 ? "" : " and " + others + (others == 1 ? " other" : " others") + " alike");
    }

    /** How many members there are of what was given and not reviewed. */
    public static String countNotReviewed(Report report) {
        int members = report.givenNotReviewed().size();
        return members + (members == 1 ? " member" : " members") + " of the submission";
    }

    public static String located(Pointer pointer) {
        return pointer.equals(Pointer.ROOT) ? "the whole submission" : pointer.value();
    }

    /** The quantity with its value; empty where it could not be found. */
    public static Optional<String> found(Found found) {
        return found.value().map(v -> found.quantity() + " " + found.text().orElseGet(() -> shown(v, found.unit())));
    }

    /** What a calculation comes to where the provision does not reach. */
    public static String calculated(ReportedCalculation calculation) {
        return calculation
                        .utilisation()
                        .map(u -> u.toPlainString() + " (at most 1 carries)")
                        .orElseGet(() -> calculation.determination().word())
                + ", " + calculation.title() + " (" + calculation.provision() + ")";
    }

    public static String allowed(Allowed allowed) {
        String values = allowed.text()
                        .orElseGet(() -> allowed.values().stream()
                                .map(v -> shown(v, allowed.unit()))
                                .collect(Collectors.joining(", ")))
                + allowed.asWritten().map(w -> " (" + w + ")").orElse("");
        return allowed.sense() == Sense.EQUAL ? values : allowed.sense().phrase() + " " + values;
    }

    private static String shown(ShownValue value, Optional<MeasureUnit> unit) {
        return value.text() + unit.map(ReportWords::unit).orElse("");
    }

    private static String unit(MeasureUnit unit) {
        return unit == MeasureUnit.RATIO ? "" : " " + Phrases.unit(unit);
    }

    /** What a step of a calculation comes to. */
    public static String value(ReportedStep step) {
        return step.value()
                        .map(v -> v.toPlainString() + unit(step.unit()))
                        .or(step::word)
                        .orElse("not a finite number")
                + step.text().map(t -> " (" + t + ")").orElse("");
    }

    /** What the symbol of a step stands for, and where its value comes from. */
    public static List<String> remarks(ReportedStep step) {
        Stream<String> from = step.from().isEmpty()
                ? Stream.empty()
                : Stream.of(
                        "from " + step.from().stream().map(ReportWords::located).collect(Collectors.joining(", ")));
        return Stream.of(step.meaning().stream(), step.equation().stream(), from)
                .flatMap(s -> s)
                .toList();
    }

    /** What was recalled from memory, where it stands, and what rests on it. */
    public static String recalled(RecalledValue recalled) {
        List<String> ids = recalled.provisions();
        String named = ids.size() <= NAMED
                ? String.join(", ", ids)
                : String.join(", ", ids.subList(0, NAMED - 1)) + " and " + (ids.size() - NAMED + 1) + " others";
        return recalled.value().replaceFirst("\\.$", "") + (named.isEmpty() ? "" : " (" + named + ")") + ": "
                + recalled.source();
    }

    public static String cited(ReportedFinding finding) {
        ReportedCitation citation = finding.citation();
        String text = source(citation) + " (" + finding.standing().word() + ")";
        return citation.confirmed().by() == Confirmation.MEMORY
                ? text
                : text + "; confirmed by " + citation.confirmed().by().word() + " on "
                        + citation.confirmed().on();
    }

    private static String source(ReportedCitation citation) {
        return citation.source().title() + ", " + citation.source().edition()
                + citation.clause().map(c -> ", " + c).orElse("");
    }
}
