package org.deckplanreview.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.ruleset.Condition;

/** Conditions in three-valued logic: true, false, or what must be given to know. */
final class Conditions {

    private final Catalogue catalogue;
    private final ReviewContext context;

    Conditions(Catalogue catalogue, ReviewContext context) {
        this.catalogue = catalogue;
        this.context = context;
    }

    /** A quantity that the subject does not have makes its condition false. */
    Derived<Boolean> holds(Condition condition, Subject subject) {
        if (condition instanceof Condition.All all) {
            return all(all.conditions(), subject);
        }
        if (condition instanceof Condition.Compare c) {
            return test(
                    c.quantity(),
                    subject,
                    v -> c.sense()
                            .holds(((Measure) v).in(c.value().unit()), c.value().value()));
        }
        if (condition instanceof Condition.OneOf o) {
            return test(o.quantity(), subject, v -> o.words().contains(((Word) v).word()));
        }
        Condition.Is is = (Condition.Is) condition;
        return test(is.quantity(), subject, v -> ((Flag) v).yes() == is.yes());
    }

    private Derived<Boolean> all(List<Condition> conditions, Subject subject) {
        List<Need> needs = new ArrayList<>();
        for (Condition c : conditions) {
            Derived<Boolean> one = holds(c, subject);
            if (one.isKnown() && !one.get()) {
                return Derived.known(false);
            }
            needs.addAll(one.needs());
        }
        return needs.isEmpty() ? Derived.known(true) : Derived.missing(needs);
    }

    private Derived<Boolean> test(String quantity, Subject subject, Predicate<Value> predicate) {
        Observation seen = catalogue.quantity(quantity).observe(subject, context);
        if (seen instanceof Observation.Found f) {
            return Derived.known(predicate.test(f.value()));
        }
        if (seen instanceof Observation.Missing m) {
            return Derived.missing(m.needs());
        }
        return Derived.known(false);
    }
}
