package org.deckplanreview.comparison;

import java.util.List;
import java.util.Optional;

/**
 * What changed from one edition to another.
 *
 * @param provisions those that differ, by concern and id
 * @param loads what bears on every calculation
 * @param schedule values of site practice, which decide nothing
 * @param texts titles, cautions, referrals and notes, which decide nothing
 */
public record EditionDifferences(
        ComparedEdition from,
        ComparedEdition to,
        Counts counts,
        List<ProvisionDifference> provisions,
        List<Change> loads,
        List<Change> schedule,
        List<Change> texts) {
    public EditionDifferences {
        provisions = List.copyOf(provisions);
        loads = List.copyOf(loads);
        schedule = List.copyOf(schedule);
        texts = List.copyOf(texts);
    }

    /** Provisions by what their difference comes to. */
    public record Counts(
            int added, int withdrawn, int tightened, int relaxed, int changed, int rewordedOnly, int unchanged) {}

    /** The provision of that id, if it differs. */
    Optional<ProvisionDifference> of(String provision) {
        return provisions.stream().filter(p -> p.provision().equals(provision)).findFirst();
    }
}
