package org.deckplanreview.comparison;

import java.util.List;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.ruleset.Obligation;

/**
 * How a provision of two editions differs.
 *
 * @param provision its id in both
 * @param title in the second edition, else in the first
 * @param obligation likewise
 * @param changes never empty; of a provision that was added or withdrawn, everything that it states
 */
public record ProvisionDifference(
        String provision, Effect effect, String title, Concern concern, Obligation obligation, List<Change> changes) {
    public ProvisionDifference {
        changes = List.copyOf(changes);
    }
}
