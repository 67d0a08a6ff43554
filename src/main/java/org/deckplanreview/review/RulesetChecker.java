package org.deckplanreview.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Checks rulesets and runs the cases beside them. */
public interface RulesetChecker {

    /**
     * What is checked. Rulesets are always read in full.
     *
     * @param directory of rulesets; the built-in ones, with those that the service is configured to add, if empty
     * @param added a directory whose rulesets join these
     * @param only the file, region or provision whose cases alone are run; all cases if empty
     */
    record Asked(Optional<Path> directory, Optional<Path> added, Optional<String> only) {}

    /**
     * What came of it.
     *
     * @param faults one a line for people, in a stable order; none if all is valid
     * @param editions that were read without a fault
     * @param cases that were run; a case that is run under several editions counts once
     */
    record Checked(List<String> faults, int editions, int cases) {
        public Checked {
            faults = List.copyOf(faults);
        }
    }

    /** Told of every case that was run. */
    interface Progress {
        void ran(int cases, int ofAll);
    }

    Checked check(Asked asked, Progress progress);
}
