package org.deckplanreview.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.submission.SubjectKind;

/** Numbers the parts of a deck that findings speak of: from 0, by kind and then in the layout's order. */
final class Subjects {
    private final List<NumberedSubject> all = new ArrayList<>();
    private final Map<Subject, Integer> numbers = new IdentityHashMap<>();

    Subjects(Layout layout) {
        Arrays.stream(SubjectKind.values())
                .flatMap(kind -> layout.subjects(kind).stream())
                .forEach(this::number);
    }

    /** In the order of their numbers. */
    List<NumberedSubject> all() {
        return List.copyOf(all);
    }

    ReportedSubject of(Finding finding) {
        Subject subject = finding.subject();
        return new ReportedSubject(
                number(subject),
                subject.kind(),
                subject.label(),
                subject.pointer(),
                finding.also().stream().map(ReportedSubject.Also::of).toList(),
                Range.of(finding.also().stream().map(this::number).toList()));
    }

    private int number(Subject subject) {
        Integer known = numbers.get(subject);
        if (known != null) {
            return known;
        }
        int next = all.size();
        all.add(new NumberedSubject(subject.kind(), subject.label(), subject.pointer()));
        numbers.put(subject, next);
        return next;
    }
}
