package org.deckplanreview.vocabulary;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;

/**
 * A table of a standard, as a ruleset gives it. Rows keep their order.
 *
 * @param source the document and table it comes from, for messages, for example {@code EN 338:2016 Table 1}
 */
public record Table(String name, String source, List<Row> rows) {

    /** One row; asking for a column that it lacks, or in a wrong unit, is a fault of the caller. */
    public record Row(Map<String, Value> cells) {

        public double number(String column, MeasureUnit unit) {
            return ((Measure) cell(column)).in(unit);
        }

        public String word(String column) {
            return ((Word) cell(column)).word();
        }

        public boolean flag(String column) {
            return ((Flag) cell(column)).yes();
        }

        private Value cell(String column) {
            Value v = cells.get(column);
            if (v == null) {
                throw new IllegalArgumentException("No column " + column);
            }
            return v;
        }
    }

    /** The first row whose columns have these words: {@code find("class", "C24")}. */
    public Optional<Row> find(String... columnsAndWords) {
        return rows.stream().filter(r -> matches(r, columnsAndWords)).findFirst();
    }

    private static boolean matches(Row row, String[] columnsAndWords) {
        for (int i = 0; i < columnsAndWords.length; i += 2) {
            if (!row.word(columnsAndWords[i]).equals(columnsAndWords[i + 1])) {
                return false;
            }
        }
        return true;
    }
}
