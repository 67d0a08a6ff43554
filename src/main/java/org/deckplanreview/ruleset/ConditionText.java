package org.deckplanreview.ruleset;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.measure.Phrases;

/** Conditions as people read them. */
final class ConditionText {

    private ConditionText() {}

    /** For example {@code drop is more than 600 mm and occupancy is public}; {@code always} where nothing is asked. */
    static String of(Condition condition) {
        List<Condition> parts = Scope.parts(condition);
        return parts.isEmpty() ? "always" : joined(parts.stream());
    }

    /** For example {@code , where occupancy is public}; empty where nothing is asked. What two ask for stands once. */
    static String where(Condition... conditions) {
        String text = joined(Stream.of(conditions).flatMap(c -> Scope.parts(c).stream()));
        return text.isEmpty() ? "" : ", where " + text;
    }

    private static String joined(Stream<Condition> parts) {
        return parts.map(ConditionText::part).distinct().collect(Collectors.joining(" and "));
    }

    private static String part(Condition part) {
        if (part instanceof Condition.Compare c) {
            return c.quantity() + " is " + c.sense().phrase() + " " + Phrases.of(c.value());
        }
        if (part instanceof Condition.OneOf o) {
            return o.quantity() + " is " + String.join(" or ", o.words());
        }
        Condition.Is is = (Condition.Is) part;
        return is.quantity() + " is " + (is.yes() ? "yes" : "no");
    }
}
