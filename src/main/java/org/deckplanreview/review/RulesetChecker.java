package org.deckplanreview.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Checks rulesets and runs the cases beside them. */
public interface RulesetChecker {
    /**
     * The faults, one a line for people, in a stable order; none if all is well.
     *
     * @param directory of rulesets; the built-in ones, with those that the service is configured to add, if empty
     * @param added a directory whose rulesets join these
     */
    List<String> check(Optional<Path> directory, Optional<Path> added);
}
