package org.deckplanreview.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.ReportedSubject;

/**
 * The findings of two reports of the same submission, paired subject by subject: within a region those of the same
 * provision, across regions the worst one of the same concern. Subjects whose pair is the same are drawn together again.
 */
final class FindingPairs {

    private static final Comparator<Ref> BY_PLACE =
            Comparator.comparing(Ref::pointer).thenComparing(Ref::label);

    private FindingPairs() {}

    /** A subject that a finding speaks of. */
    record Ref(String label, Pointer pointer) {
        private static Ref of(ReportedSubject subject) {
            return new Ref(subject.label(), subject.pointer());
        }
    }

    /**
     * @param before empty if there is none
     * @param after empty if there is none; never both
     * @param subjects in the order of their places, the one first that is the worst of its finding
     */
    record Pair(Optional<ReportedFinding> before, Optional<ReportedFinding> after, List<Ref> subjects) {
        boolean holdsWorstOf(ReportedFinding finding) {
            return subjects.contains(Ref.of(finding.subject()));
        }
    }

    static List<Pair> ofProvisions(List<ReportedFinding> before, List<ReportedFinding> after) {
        return paired(byProvision(before), byProvision(after), before, after);
    }

    static List<Pair> ofConcerns(List<ReportedFinding> before, List<ReportedFinding> after) {
        return paired(byConcern(before), byConcern(after), before, after);
    }

    /** A finding's place among the report's, and the subject. */
    private record Found(int finding, Ref subject) {}

    private static Map<List<Object>, Found> byProvision(List<ReportedFinding> findings) {
        Map<List<Object>, Found> found = new LinkedHashMap<>();
        for (int i = 0; i < findings.size(); i++) {
            for (Ref ref : refs(findings.get(i))) {
                int alike = 0;
                // Subjects of one label at one place are told apart by their order.
                while (found.putIfAbsent(List.of(findings.get(i).provision(), ref, alike), new Found(i, ref)) != null) {
                    alike++;
                }
            }
        }
        return found;
    }

    /** The worst come first in a report, and so stay. */
    private static Map<List<Object>, Found> byConcern(List<ReportedFinding> findings) {
        Map<List<Object>, Found> found = new LinkedHashMap<>();
        for (int i = 0; i < findings.size(); i++) {
            ReportedFinding finding = findings.get(i);
            if (finding.determination() != Determination.NOT_APPLICABLE) {
                for (Ref ref : refs(finding)) {
                    found.putIfAbsent(List.of(finding.concern(), ref.pointer()), new Found(i, ref));
                }
            }
        }
        return found;
    }

    private static List<Ref> refs(ReportedFinding finding) {
        List<Ref> refs = new ArrayList<>();
        refs.add(Ref.of(finding.subject()));
        finding.subject().also().forEach(a -> refs.add(new Ref(a.label(), a.pointer())));
        return refs;
    }

    private static List<Pair> paired(
            Map<List<Object>, Found> before,
            Map<List<Object>, Found> after,
            List<ReportedFinding> findingsBefore,
            List<ReportedFinding> findingsAfter) {
        Set<List<Object>> keys = new LinkedHashSet<>(after.keySet());
        keys.addAll(before.keySet());
        record Findings(Optional<Integer> before, Optional<Integer> after) {}
        Map<Findings, List<Ref>> together = new LinkedHashMap<>();
        for (List<Object> key : keys) {
            Optional<Found> old = Optional.ofNullable(before.get(key));
            Optional<Found> now = Optional.ofNullable(after.get(key));
            together.computeIfAbsent(
                            new Findings(old.map(Found::finding), now.map(Found::finding)), f -> new ArrayList<>())
                    .add(now.or(() -> old).orElseThrow().subject());
        }
        List<Pair> pairs = new ArrayList<>();
        together.forEach((f, refs) -> {
            Optional<ReportedFinding> old = f.before().map(findingsBefore::get);
            Optional<ReportedFinding> now = f.after().map(findingsAfter::get);
            pairs.add(new Pair(old, now, ordered(refs, old, now)));
        });
        return pairs;
    }

    private static List<Ref> ordered(
            List<Ref> refs, Optional<ReportedFinding> before, Optional<ReportedFinding> after) {
        Comparator<Ref> worstFirst = Comparator.comparing(r -> -(isWorst(r, before) + isWorst(r, after)));
        return refs.stream().sorted(worstFirst.thenComparing(BY_PLACE)).toList();
    }

    private static int isWorst(Ref ref, Optional<ReportedFinding> finding) {
        return finding.map(f -> Ref.of(f.subject())).filter(ref::equals).isPresent() ? 1 : 0;
    }
}
