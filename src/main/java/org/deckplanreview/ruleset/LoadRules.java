package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.vocabulary.Parameters;

/**
 * The loads that an edition puts on a platform. The first imposed row whose condition holds on the platform counts.
 *
 * @param parameters those of {@link org.deckplanreview.vocabulary.Vocabulary#loadParameters()}
 */
public record LoadRules(List<ImposedRow> imposed, Parameters parameters) {
    public LoadRules {
        imposed = List.copyOf(imposed);
    }

    /**
     * @param concentrated an alternative to the uniform load; empty where the edition knows none
     * @param category of EN 1991-1-1, for example {@code A}; empty where the edition's standards know no such categories
     */
    public record ImposedRow(
            Condition when,
            Measure uniform,
            Optional<Measure> concentrated,
            Optional<String> category,
            Citation citation,
            String reason) {}
}
