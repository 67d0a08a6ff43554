package org.deckplanreview.rendering.text;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.report.Report;

/**
 * A member of the submission that findings wait for.
 *
 * @param whats what to give there
 * @param provisions ids of those that need it
 */
public record MissingMember(Pointer pointer, List<String> whats, List<String> provisions) {
    public MissingMember {
        whats = List.copyOf(whats);
        provisions = List.copyOf(provisions);
    }

    private record Wanted(Set<String> whats, Set<String> provisions) {
        Wanted() {
            this(new TreeSet<>(), new LinkedHashSet<>());
        }
    }

    /** In the order of pointers. */
    public static List<MissingMember> of(Report report) {
        Map<Pointer, Wanted> wanted = new TreeMap<>();
        report.findings()
                .forEach(f -> f.needs().forEach(n -> {
                    Wanted w = wanted.computeIfAbsent(n.pointer(), k -> new Wanted());
                    w.whats().add(n.what());
                    w.provisions().add(f.provision());
                }));
        return wanted.entrySet().stream()
                .map(e -> new MissingMember(
                        e.getKey(),
                        List.copyOf(e.getValue().whats()),
                        List.copyOf(e.getValue().provisions())))
                .toList();
    }
}
