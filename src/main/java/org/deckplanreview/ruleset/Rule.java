package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Measure;
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

    /**
     * A quantity against what a table gives.
     *
     * @param sense AT_LEAST or AT_MOST
     * @param column of the table that holds what is allowed: a number, or that the case is not permitted
     * @param keys one for each other column of the table, in its order
     * @param share what part of the table's number is allowed; empty where all of it is
     */
    record LookUp(
            String quantity,
            Sense sense,
            String column,
            LookUpTable table,
            List<TableKey> keys,
            Optional<Interpolation> interpolation,
            Optional<Measure> share)
            implements Rule {
        public LookUp {
            keys = List.copyOf(keys);
        }
    }

    /**
     * Linear between the two neighbouring rows along one key.
     *
     * @param column of the key
     * @param clause that permits it, in the numbering of the table's source
     * @param roundedTo what the interpolated value is rounded to the nearest multiple of, as the source rounds
     */
    record Interpolation(String column, String clause, Optional<Measure> roundedTo) {}
}
