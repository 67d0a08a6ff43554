package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.ReportedSubject;
import org.deckplanreview.ruleset.Obligation;
import org.deckplanreview.submission.SubjectKind;

/** Which findings do not comply on which parts. A finding's number is its place in the report's list, from 1. */
final class Callouts {

    private static final int MOST_SHOWN = 4;

    private final Map<Integer, ReportedFinding> failing = new LinkedHashMap<>();
    private final Map<Place, SortedSet<Integer>> numbers = new LinkedHashMap<>();
    private final Map<Place, SortedSet<Integer>> worst = new LinkedHashMap<>();
    private final SortedSet<Integer> shown = new TreeSet<>();

    /** Members of a field share a pointer; with the label it is one of them. */
    private record Place(SubjectKind kind, Pointer pointer, String label) {}

    Callouts(Report report) {
        for (int i = 0; i < report.findings().size(); i++) {
            ReportedFinding f = report.findings().get(i);
            if (f.determination() == Determination.DOES_NOT_COMPLY) {
                int number = i + 1;
                ReportedSubject s = f.subject();
                failing.put(number, f);
                Place first = new Place(s.kind(), s.pointer(), s.label());
                add(worst, first, number);
                add(numbers, first, number);
                s.also().forEach(a -> add(numbers, new Place(s.kind(), a.pointer(), a.label()), number));
            }
        }
    }

    private static void add(Map<Place, SortedSet<Integer>> to, Place place, int number) {
        to.computeIfAbsent(place, p -> new TreeSet<>()).add(number);
    }

    /** All that do not comply on a part. */
    SortedSet<Integer> on(Subject subject) {
        return numbers.getOrDefault(place(subject), new TreeSet<>());
    }

    /** Those of which the part is the worst one. */
    SortedSet<Integer> worstOn(Subject subject) {
        return worst.getOrDefault(place(subject), new TreeSet<>());
    }

    Mark mark(Subject subject) {
        return mark(on(subject));
    }

    /** That of the worst of findings. */
    Mark mark(Collection<Integer> some) {
        return some.stream().map(this::mark).max(Comparator.naturalOrder()).orElse(Mark.NONE);
    }

    Mark mark(int number) {
        return failing.get(number).obligation() == Obligation.SHALL ? Mark.FAILING : Mark.ADVISED;
    }

    private static Place place(Subject s) {
        return new Place(s.kind(), s.pointer(), s.label());
    }

    /** What a callout says; blank for none. Remembers that the drawing shows them. */
    String callout(Collection<Integer> some) {
        shown.addAll(some);
        List<Integer> sorted = some.stream().distinct().sorted().toList();
        String first = sorted.stream().limit(MOST_SHOWN).map(n -> "" + n).collect(Collectors.joining(", "));
        return sorted.size() > MOST_SHOWN ? first + " +" + (sorted.size() - MOST_SHOWN) : first;
    }

    /** Numbers that the drawing shows, in order. */
    List<Integer> shown() {
        return List.copyOf(shown);
    }

    /** Numbers that it does not show, in order. */
    List<Integer> notShown() {
        List<Integer> rest = new ArrayList<>(failing.keySet());
        rest.removeAll(shown);
        return rest;
    }

    ReportedFinding finding(int number) {
        return failing.get(number);
    }
}
