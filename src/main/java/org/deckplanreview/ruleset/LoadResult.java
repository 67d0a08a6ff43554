package org.deckplanreview.ruleset;

import java.util.List;

/** What loading comes to: all of the rulesets, or every fault in them. */
public sealed interface LoadResult {

    record Loaded(Rulesets rulesets) implements LoadResult {}

    /** Faults of all files, by file and line; never empty. */
    record Faulty(List<RulesetFault> faults) implements LoadResult {
        public Faulty {
            faults = faults.stream().sorted().distinct().toList();
        }
    }
}
