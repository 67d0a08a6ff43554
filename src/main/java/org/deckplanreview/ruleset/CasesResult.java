package org.deckplanreview.ruleset;

import java.util.List;

/** What reading the cases comes to: all of them, or every fault in their files. */
public sealed interface CasesResult {

    record Read(List<CaseFile> files) implements CasesResult {
        public Read {
            files = List.copyOf(files);
        }
    }

    /** Faults of all files, by file and line; never empty. */
    record Faulty(List<RulesetFault> faults) implements CasesResult {
        public Faulty {
            faults = faults.stream().sorted().distinct().toList();
        }
    }
}
