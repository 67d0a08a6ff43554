package org.deckplanreview.report;

import java.util.List;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.submission.SubjectKind;

/**
 * The part of the submission that a finding speaks of.
 *
 * @param also others that are alike and no worse
 */
public record ReportedSubject(SubjectKind kind, String label, Pointer pointer, List<Also> also) {
    public ReportedSubject {
        also = List.copyOf(also);
    }

    /** Another subject that the finding speaks for. */
    public record Also(String label, Pointer pointer) {
        private static Also of(Subject subject) {
            return new Also(subject.label(), subject.pointer());
        }
    }

    static ReportedSubject of(Finding finding) {
        Subject subject = finding.subject();
        return new ReportedSubject(
                subject.kind(),
                subject.label(),
                subject.pointer(),
                finding.also().stream().map(Also::of).toList());
    }
}
