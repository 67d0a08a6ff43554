package org.deckplanreview.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.ruleset.RulesetFault;

/** Rulesets that cannot be trusted. The message names every fault, one a line. */
public final class FaultyRulesets extends IllegalStateException {
    FaultyRulesets(Optional<Path> directory, List<RulesetFault> faults) {
        super(faults.stream()
                .map(RulesetFault::message)
                .collect(Collectors.joining(
                        "\n",
                        "The rulesets"
                                + directory
                                        .map(d -> ", with those in " + d + ",")
                                        .orElse("") + " have faults:\n",
                        "")));
    }

    /** The one among a failure and its causes. */
    public static Optional<FaultyRulesets> among(Throwable failure) {
        return Stream.iterate(failure, Objects::nonNull, Throwable::getCause)
                .filter(FaultyRulesets.class::isInstance)
                .map(FaultyRulesets.class::cast)
                .findFirst();
    }
}
