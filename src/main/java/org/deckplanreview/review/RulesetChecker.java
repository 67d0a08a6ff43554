package org.deckplanreview.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Checks rulesets and runs the cases beside them. */
public interface RulesetChecker {
    /**
     * The faults, one a line for people, in a stable order; none if all is well.
     *
     * @param directory of rulesets; the built-in ones if empty
     */
    List<String> check(Optional<Path> directory);
}
