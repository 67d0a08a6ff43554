package org.deckplanreview.report;

import java.util.List;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.submission.SubjectKind;

/**
 * The part of the submission that a finding speaks of.
 *
 * @param number among the report's subjects
 * @param also others that are alike and no worse
 * @param alsoNumbers the numbers of those others
 */
public record ReportedSubject(
        int number, SubjectKind kind, String label, Pointer pointer, List<Also> also, List<Range> alsoNumbers) {
    public ReportedSubject {
        also = List.copyOf(also);
        alsoNumbers = List.copyOf(alsoNumbers);
    }

    /** Another subject that the finding speaks for. */
    public record Also(String label, Pointer pointer) {
        static Also of(Subject subject) {
            return new Also(subject.label(), subject.pointer());
        }
    }
}
