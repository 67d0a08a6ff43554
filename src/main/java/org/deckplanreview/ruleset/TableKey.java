package org.deckplanreview.ruleset;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.kernel.Worded;
import org.deckplanreview.measure.Measure;

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
     * @param raised how it is raised where the subject carries more than the table assumes
     */
    record Direct(
            String column,
            String quantity,
            Match match,
            Optional<Measure> least,
            Optional<Measure> unstated,
            Optional<Factor> times,
            Optional<Raise> raised)
            implements TableKey {}

    /**
     * A number that stands for what a member carries, such as the span of the joists on a beam, enters the table in
     * proportion to the load: what carries 1.2 times the table's load is found where the number is 1.2 times as large.
     *
     * @param quantity the load, a number
     * @param assumed the table of the loads that are assumed
     * @param column of that table that holds them
     * @param key by which its row is found; a number, neither multiplied nor raised itself
     * @param from the ratio of load to assumed load up to which nothing is raised
     */
    record Raise(String quantity, LookUpTable assumed, String column, Direct key, Measure from) {}

    /**
     * A factor from another table.
     *
     * @param column of that table that holds the factor
     * @param key by which its row is found; a number, not multiplied itself
     * @param interpolation the clause that permits a factor between those of two rows; empty where the key's direction counts
     */
    record Factor(LookUpTable table, String column, Direct key, Optional<String> interpolation) {

        /** The factor as people read it. */
        public String label() {
            return table.labels().column(column);
        }
    }

    /**
     * The row is found with what another table gives in its column of the same name.
     *
     * @param by how the row of the other table is found: its columns one after the other, each among the rows that those
     *     before it leave; none has a least or unstated value or is multiplied, and one may be raised
     * @param largest what the subject's quantities may come to, by these columns, so that a row whose numbers are none of
     *     them larger than the subject's counts on the safe side; empty where only a row so found counts
     */
    record Translated(String column, LookUpTable table, List<Direct> by, Map<String, Measure> largest)
            implements TableKey {
        public Translated {
            by = List.copyOf(by);
            largest = Collections.unmodifiableMap(new LinkedHashMap<>(largest));
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
