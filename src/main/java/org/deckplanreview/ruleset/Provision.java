package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.submission.SubjectKind;

/**
 * One requirement, recommendation or permission.
 *
 * @param order its place in the edition, from 0
 * @param scope beyond any of which it is undetermined
 * @param calculated ids of the provisions that calculate the same, for where it does not reach
 * @param advice what would put it right
 * @param caution a hazard to tell the reader of when it does not comply
 * @param referral who must look at it when it does not comply or is beyond the rules' scope, and with what
 * @param setBy paths of the files that state it, relative to the rulesets' root: the first states it whole, each further
 *     one what differs from those before
 * @param ruledBy the last of these files that states its subjects, its condition or its rule
 */
public record Provision(
        int order,
        String id,
        String title,
        Concern concern,
        Obligation obligation,
        Citation citation,
        SubjectKind subjects,
        Condition when,
        List<Reach> scope,
        Rule rule,
        List<String> calculated,
        String advice,
        Optional<String> caution,
        Optional<String> referral,
        List<String> setBy,
        String ruledBy) {
    public Provision {
        scope = List.copyOf(scope);
        calculated = List.copyOf(calculated);
        setBy = List.copyOf(setBy);
    }
}
