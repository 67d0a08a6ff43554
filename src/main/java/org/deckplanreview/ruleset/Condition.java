package org.deckplanreview.ruleset;

import java.util.List;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.vocabulary.Sense;

/** A condition on quantities of a subject. */
public sealed interface Condition {

    /** All of them; with none, always true. */
    record All(List<Condition> conditions) implements Condition {
        public All {
            conditions = List.copyOf(conditions);
        }
    }

    /** A number compared with a value. */
    record Compare(String quantity, Sense sense, Measure value) implements Condition {}

    /** A word among several. */
    record OneOf(String quantity, List<String> words) implements Condition {}

    /** A flag. */
    record Is(String quantity, boolean yes) implements Condition {}

    Condition ALWAYS = new All(List.of());
}
