package org.deckplanreview.ruleset;

import java.util.List;

/** The cases of one file, in its order. {@code path} is relative to the rulesets' root. */
public record CaseFile(String path, Edition edition, List<RulesetCase> cases) {
    public CaseFile {
        cases = List.copyOf(cases);
    }
}
