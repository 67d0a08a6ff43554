package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;

/**
 * The region whose rules apply, the edition where the designer asks for one by name, and the amendments that hold at the
 * site, in the order in which they are laid over it.
 */
public record RulesetChoice(String region, Optional<String> edition, List<String> amendments) {
    public RulesetChoice {
        amendments = List.copyOf(amendments);
    }

    /** Without amendments. */
    public RulesetChoice(String region, Optional<String> edition) {
        this(region, edition, List.of());
    }
}
