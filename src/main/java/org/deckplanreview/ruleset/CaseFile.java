package org.deckplanreview.ruleset;

import java.util.List;

/**
 * The cases of one file under one edition, in the file's order. The cases beside a base are run under every edition that
 * takes their provisions from it.
 *
 * @param path relative to the rulesets' root
 */
public record CaseFile(String path, Edition edition, List<RulesetCase> cases) {
    public CaseFile {
        cases = List.copyOf(cases);
    }
}
