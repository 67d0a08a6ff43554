package org.deckplanreview.ruleset;

import java.util.Optional;
import org.deckplanreview.submission.SubjectKind;

/**
 * One requirement, recommendation or permission.
 *
 * @param order its place in the edition, from 0
 * @param advice what would put it right
 * @param caution a hazard to tell the reader of when it does not comply
 * @param referral who must look at it when it does not comply or is beyond the rules' scope, and with what
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
        Rule rule,
        String advice,
        Optional<String> caution,
        Optional<String> referral) {}
