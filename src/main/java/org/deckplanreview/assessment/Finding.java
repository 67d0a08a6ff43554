package org.deckplanreview.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Value;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.vocabulary.Sense;

/**
 * One provision on one subject, or on several that are alike and have the same determination.
 *
 * @param subject the worst of them
 * @param also the others, in the layout's order
 * @param allowed one member but for ONE_OF; empty where nothing is compared
 * @param utilisation unrounded; empty for words and flags
 * @param sentence what was found, for people
 * @param needs what would decide an undetermined finding
 * @param rows of tables that a look-up takes, for any of them
 * @param calculated for the subject, where the provision does not reach it and calculations of the same do
 * @param mayCount values of a limit's rows that count or, as far as is known, may count; what is allowed where the rule is
 *     no limit
 */
public record Finding(
        Provision provision,
        Subject subject,
        List<Subject> also,
        Determination determination,
        String quantity,
        Optional<Value> found,
        Optional<Sense> sense,
        List<Value> allowed,
        OptionalDouble utilisation,
        String sentence,
        List<WorkingStep> working,
        List<Need> needs,
        List<String> assumptions,
        List<TakenRow> rows,
        Optional<Calculated> calculated,
        List<Value> mayCount) {}
