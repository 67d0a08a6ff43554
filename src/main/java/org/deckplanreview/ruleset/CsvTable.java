package org.deckplanreview.ruleset;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Pointer;

/**
 * A table as it stands in a CSV file (RFC 4180) with a header, so that it can be laid beside the printed page.
 *
 * @param header names of columns and, where one column runs across the page, its values
 */
record CsvTable(RulesetFile file, List<Entry> header, List<Entry> rows) {

    /** The column that tells how a row was confirmed; no table has another of this name. */
    static final String CONFIRMED = "confirmed";

    private static final CsvFactory CSV =
            CsvFactory.builder().enable(CsvParser.Feature.SKIP_EMPTY_LINES).build();

    /** What the text holds; empty if it is no table, which is then told. */
    static Optional<CsvTable> read(RulesetFile file, String text) {
        List<Entry> lines;
        try {
            lines = lines(file, text);
        } catch (JsonProcessingException e) {
            file.fault(
                    e.getLocation().getLineNr(),
                    "'" + Shortened.of(text) + "'",
                    "This is not CSV: " + Shortened.of(e.getOriginalMessage()),
                    "cells parted by commas, in double quotes where a comma stands in them");
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException("Text can be read", e);
        }
        if (lines.size() < 2) {
            file.fault(1, lines.isEmpty() ? "nothing" : "a header", "The table has no rows", "a header and rows");
            return Optional.empty();
        }
        return Optional.of(new CsvTable(file, lines.get(0).items(), lines.subList(1, lines.size())));
    }

    private static List<Entry> lines(RulesetFile file, String text) throws IOException {
        List<Entry> lines = new ArrayList<>();
        try (CsvParser parser = CSV.createParser(text)) {
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                int line = parser.currentLocation().getLineNr();
                List<YamlNode> cells = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    cells.add(YamlReader.plain(parser.getText(), line));
                }
                if (!cells.isEmpty()) {
                    lines.add(new Entry(file, Pointer.ROOT, new YamlNode.ListNode(line, cells)));
                }
            }
        }
        return lines;
    }

    /** The cells as text, the header first. */
    List<List<String>> plain() {
        return Stream.concat(Stream.of(header), rows.stream().map(Entry::items))
                .map(cells -> cells.stream().map(Entry::text).toList())
                .toList();
    }

    /**
     * The rows of a table with these columns; cells that do not fit are told. A row whose cell in the last column is empty
     * lacks it.
     *
     * @param across the column whose values stand in the header, each over cells of the last column
     */
    List<GridRow> rows(Map<String, ColumnType> columns, Optional<String> across) {
        List<String> names = new ArrayList<>(columns.keySet());
        String last = names.get(names.size() - 1);
        List<String> named = names.stream()
                .filter(name -> across.isEmpty() || !name.equals(across.get()) && !name.equals(last))
                .toList();
        if (!isSound(named, across)) {
            return List.of();
        }
        List<GridRow> read = new ArrayList<>();
        for (Entry row : rows) {
            if (row.items().size() != header.size()) {
                row.fault(
                        "The row has " + row.items().size() + " cells under a header of " + header.size(),
                        "a cell for each cell of the header");
                continue;
            }
            Map<String, Entry> cells = new LinkedHashMap<>();
            List<Integer> over = new ArrayList<>();
            for (int i = 0; i < header.size(); i++) {
                String name = header.get(i).text();
                if (named.contains(name) || name.equals(CONFIRMED)) {
                    cells.put(name, row.items().get(i));
                } else {
                    over.add(i);
                }
            }
            if (across.isEmpty()) {
                row(row, cells, columns).ifPresent(read::add);
            }
            for (int i : over) {
                cells.put(across.orElseThrow(), header.get(i));
                cells.put(last, row.items().get(i));
                row(row, cells, columns).ifPresent(read::add);
            }
        }
        return read;
    }

    private Optional<GridRow> row(Entry row, Map<String, Entry> cells, Map<String, ColumnType> columns) {
        Optional<Confirmation> confirmedBy = Optional.ofNullable(cells.get(CONFIRMED))
                .filter(cell -> !cell.text().isEmpty())
                .flatMap(CsvTable::confirmation);
        return GridReader.row(row, columns.keySet().stream().map(cells::get).toList(), columns, confirmedBy);
    }

    private static Optional<Confirmation> confirmation(Entry cell) {
        Optional<Confirmation> known = Stream.of(Confirmation.values())
                .filter(c -> c.word().equals(cell.text()))
                .findFirst();
        if (known.isEmpty()) {
            cell.unknown(
                    cell.text(),
                    "way to confirm a row",
                    Stream.of(Confirmation.values()).map(Confirmation::word).toList());
        }
        return known;
    }

    private boolean isSound(List<String> named, Optional<String> across) {
        List<String> seen = new ArrayList<>();
        boolean sound = true;
        for (Entry cell : header) {
            String name = cell.text();
            boolean known = named.contains(name) || name.equals(CONFIRMED);
            if (!known && (across.isEmpty() || name.isEmpty())) {
                cell.unknown(name, "column in this table", named);
                sound = false;
            }
            if (seen.contains(name)) {
                cell.fault("The header has this twice", "it once");
                sound = false;
            }
            seen.add(name);
        }
        for (String name : named) {
            if (!seen.contains(name)) {
                header.get(0).fault("The header lacks the column '" + name + "'", String.join(", ", named));
                sound = false;
            }
        }
        if (across.isPresent() && seen.size() == named.size() + (seen.contains(CONFIRMED) ? 1 : 0)) {
            header.get(0).fault("The header has no values of '" + across.get() + "'", "its values, in rising order");
            sound = false;
        }
        return sound;
    }
}
