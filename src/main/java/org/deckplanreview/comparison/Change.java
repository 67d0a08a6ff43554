package org.deckplanreview.comparison;

import java.util.Optional;
import org.deckplanreview.ruleset.ChangedValue;

/**
 * One thing that two editions state differently.
 *
 * @param what it is, for people, for example {@code guard height, where occupancy is public}
 * @param before empty where the first edition states nothing of the kind
 * @param after empty where the second edition states nothing of the kind
 */
public record Change(String what, Effect effect, Optional<Statement> before, Optional<Statement> after) {

    static Change of(ChangedValue value) {
        return new Change(
                value.what() + value.standard().map(s -> " of " + s).orElse(""),
                Effect.of(value.strictness()),
                value.was().map(Statement::of),
                value.is().map(Statement::of));
    }
}
