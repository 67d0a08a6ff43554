package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.vocabulary.ValueType;

/** Reads the columns and rows of tables; what does not fit is told. */
final class GridReader {

    private static final Pattern FEET_INCHES = Pattern.compile("(\\d{1,3})-(\\d|1[01])");
    private static final int INCHES_IN_A_FOOT = 12;

    private GridReader() {}

    static Map<String, ColumnType> columns(Entry columns) {
        Map<String, ColumnType> types = new LinkedHashMap<>();
        columns.members().forEach((name, type) -> {
            Optional<MeasureUnit> unit = type.text().equals(ColumnType.FEET_INCHES)
                    ? Optional.of(MeasureUnit.INCH)
                    : MeasureUnit.ofSymbol(type.text());
            ValueType valueType =
                    switch (type.text()) {
                        case "word" -> ValueType.WORD;
                        case "flag" -> ValueType.FLAG;
                        default -> ValueType.NUMBER;
                    };
            if (valueType == ValueType.NUMBER && unit.isEmpty()) {
                List<String> known = new ArrayList<>(List.of("word", "flag", ColumnType.FEET_INCHES));
                known.addAll(MeasureUnit.symbols());
                type.unknown(type.text(), "type of column", known);
            }
            if (name.equals(CsvTable.CONFIRMED)) {
                type.fault("A column of this name tells how a row was confirmed", "another name");
            }
            types.put(name, new ColumnType(type.text(), valueType, unit));
        });
        return types;
    }

    /** Rows of a table with these columns. */
    static List<GridRow> rows(Entry rows, Map<String, ColumnType> columns) {
        List<GridRow> read = new ArrayList<>();
        for (Entry row : rows.items()) {
            row(row, row.items(), columns, Optional.empty()).ifPresent(read::add);
        }
        return List.copyOf(read);
    }

    /** One row; empty if it has another number of cells than columns. */
    static Optional<GridRow> row(
            Entry row, List<Entry> cells, Map<String, ColumnType> columns, Optional<Confirmation> confirmedBy) {
        if (cells.size() != columns.size()) {
            row.fault(
                    "The row has " + cells.size() + " cells for " + columns.size() + " columns",
                    "a cell for each of " + String.join(", ", columns.keySet()));
            return Optional.empty();
        }
        Map<String, Value> values = new LinkedHashMap<>();
        int place = 0;
        for (Map.Entry<String, ColumnType> column : columns.entrySet()) {
            Entry cell = cells.get(place++);
            boolean isLast = place == columns.size();
            if (isLast && cell.text().isEmpty()) {
                continue;
            }
            cell(cell, column.getValue(), isLast).ifPresent(value -> values.put(column.getKey(), value));
        }
        return Optional.of(new GridRow(Collections.unmodifiableMap(values), confirmedBy, row));
    }

    private static Optional<? extends Value> cell(Entry cell, ColumnType column, boolean isLast) {
        if (cell.text().isEmpty()) {
            cell.fault("The cell is empty", "a value");
            return Optional.empty();
        }
        if (column.type() == ValueType.FLAG) {
            return TokenReader.flag(cell);
        }
        if (column.type() == ValueType.WORD) {
            return TokenReader.word(cell, List.of());
        }
        if (isLast && cell.text().equals(LookUpTable.NOT_PERMITTED.word())) {
            return Optional.of(LookUpTable.NOT_PERMITTED);
        }
        if (column.isFeetInches()) {
            return feetInches(cell);
        }
        if (!(cell.node() instanceof YamlNode.NumberNode)) {
            cell.fault("This is no number", "a plain number in " + column.text());
            return Optional.empty();
        }
        return column.unit().map(unit -> new Measure(Double.parseDouble(cell.text()), unit));
    }

    private static Optional<Measure> feetInches(Entry cell) {
        Matcher m = FEET_INCHES.matcher(cell.text());
        if (!m.matches()) {
            cell.fault("This is no number of feet and inches", "feet and inches below 12, such as 9-11");
            return Optional.empty();
        }
        int inches = Integer.parseInt(m.group(1)) * INCHES_IN_A_FOOT + Integer.parseInt(m.group(2));
        return Optional.of(Measure.of(inches, MeasureUnit.INCH));
    }
}
