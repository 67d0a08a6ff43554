package org.deckplanreview.ruleset;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.vocabulary.ValueType;

/**
 * A table as it holds in an edition.
 *
 * @param standard the edition's short name of the standard that has it
 * @param name as the standard's file calls it
 * @param columns by name, in order
 * @param rows in order
 * @param citation who states what holds
 * @param replaced the table that the standard itself states, where the edition sets it otherwise
 */
public record LookUpTable(
        String standard,
        String name,
        Map<String, Column> columns,
        List<Row> rows,
        TableLabels labels,
        Citation citation,
        Optional<LookUpTable> replaced) {

    /** What stands in a cell where the source does not permit the case. */
    public static final Word NOT_PERMITTED = new Word("NP");

    public LookUpTable {
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
        rows = List.copyOf(rows);
    }

    /** What a column holds; numbers have a unit. */
    public record Column(ValueType type, Optional<MeasureUnit> unit) {

        /** As a standard's file writes it, for example {@code word} or {@code in}. */
        String word() {
            return switch (type) {
                case NUMBER -> unit.orElseThrow().symbol();
                case WORD -> "word";
                case FLAG -> "flag";
                case TABLE -> throw new IllegalStateException("A column holds no tables");
            };
        }
    }

    /**
     * One row.
     *
     * @param cells by column; a number in the column's unit, or {@link #NOT_PERMITTED} in its place; without the last
     *     column where the file does not hold what the source has there
     * @param confirmedBy how this row was confirmed, where that differs from the table
     */
    public record Row(Map<String, Value> cells, Optional<Confirmation> confirmedBy) {
        public Row {
            cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
        }
    }

    /** For example {@code irc2018.joistSpans}. */
    public String reference() {
        return standard + "." + name;
    }

    /** For people: where it stands, who set it and what it replaced. */
    public String source() {
        return replaced.map(old -> old.citation().text() + "; set by " + citation.text())
                .orElseGet(citation::text);
    }

    /** How a row was confirmed: as it says itself, otherwise as the table was. */
    public Confirmation confirmedBy(Row row) {
        return row.confirmedBy().orElse(citation.confirmedBy());
    }
}
