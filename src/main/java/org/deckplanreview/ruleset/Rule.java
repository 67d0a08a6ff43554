package org.deckplanreview.ruleset;

import java.util.List;
import org.deckplanreview.measure.Value;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** What a provision asks for. */
public sealed interface Rule {

    /**
     * A quantity against a value. The first row whose condition holds counts; where none does, the edition gives no value.
     *
     * @param sense AT_LEAST and AT_MOST also for words of a quantity whose words have an order; EQUAL for flags and words;
     *     ONE_OF for words
     */
    record Limit(String quantity, Sense sense, List<Row> rows) implements Rule {
        public Limit {
            rows = List.copyOf(rows);
        }
    }

    /** One row of a limit; values has one member but for ONE_OF. */
    record Row(Condition when, List<Value> values) {
        public Row {
            values = List.copyOf(values);
        }
    }

    /** A method with its parameters. */
    record Calculation(String method, Parameters parameters) implements Rule {}
}
