package org.deckplanreview.ruleset;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.submission.Worded;

/** Which row of a table counts, by one of its columns. */
public sealed interface TableKey {

    /** The column of the table. */
    String column();

    /**
     * The row is found with a quantity of the subject.
     *
     * @param least the smallest value that the table covers; empty where it has no such end
     * @param unstated what the source takes where the submission does not state the quantity
     * @param times what the quantity is multiplied with before it enters the table
     */
    record Direct(
            String column,
            String quantity,
            Match match,
            Optional<Measure> least,
            Optional<Measure> unstated,
            Optional<Factor> times)
            implements TableKey {}

    /**
     * A factor from another table.
     *
     * @param column of that table that holds the factor
     * @param key by which its row is found; a number, not multiplied itself
     */
    record Factor(LookUpTable table, String column, Direct key) {}

    /**
     * The row is found with what another table gives in its column of the same name.
     *
     * @param by quantities of the subject by the columns of the other table that they are found in
     */
    record Translated(String column, LookUpTable table, Map<String, String> by) implements TableKey {
        public Translated {
            by = Collections.unmodifiableMap(new LinkedHashMap<>(by));
        }
    }

    /** What counts where no row has the very value. */
    enum Match implements Worded {
        /** Nothing. */
        NONE("none"),
        /** The next larger value of the column. */
        UP("up"),
        /** The next smaller value of the column. */
        DOWN("down");

        private final String word;

        Match(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }
}
