package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Vocabulary;

/**
 * How what an edition asks for differs from what another one asks for in its place: by the sense of a limit, not by the
 * sign of the number.
 *
 * @param strictness of all changes together; SAME if what is asked for is the same, whatever the words
 * @param values what differs, in a stable order; empty only if the strictness is SAME
 */
public record LimitChange(Strictness strictness, List<ChangedValue> values) {
    public LimitChange {
        values = List.copyOf(values);
    }

    /** Of a provision: whom it binds, when it applies, and its limit or the values of its method. */
    public static LimitChange between(Provision was, Provision is, Vocabulary vocabulary) {
        return of(new ProvisionChange(was, is, vocabulary).values());
    }

    /** Of the loads that an edition puts on a deck; a higher load is tighter. */
    public static LimitChange between(LoadRules was, LoadRules is, Vocabulary vocabulary) {
        return of(LoadChange.values(was, is, vocabulary));
    }

    /** Of an edition's values of site practice. */
    public static LimitChange between(Parameters was, Parameters is, Vocabulary vocabulary) {
        return of(new ParameterChange(vocabulary.scheduleParameters())
                .values((ResolvedParameters) was, (ResolvedParameters) is));
    }

    /** Of a provision that was not there before. */
    public static LimitChange added(Provision is) {
        return of(List.of(new ChangedValue(
                is.title(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(ProvisionChange.whole(is)),
                Strictness.TIGHTER)));
    }

    /** Of a provision that is not there any more. */
    public static LimitChange withdrawn(Provision was) {
        return of(List.of(new ChangedValue(
                was.title(),
                Optional.empty(),
                Optional.of(ProvisionChange.whole(was)),
                Optional.empty(),
                Strictness.LOOSER)));
    }

    private static LimitChange of(List<ChangedValue> values) {
        return new LimitChange(
                values.stream().map(ChangedValue::strictness).reduce(Strictness.SAME, Strictness::and), values);
    }
}
