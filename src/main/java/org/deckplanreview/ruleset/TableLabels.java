package org.deckplanreview.ruleset;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;

/**
 * What people read in place of the names that a table gives its columns and of the words in its cells.
 *
 * @param texts by column or word; a column without one is read as its name, {@code joistSpan} as joist span
 */
public record TableLabels(Map<String, String> texts) {
    static final TableLabels NONE = new TableLabels(Map.of());

    public TableLabels {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }

    /** Reads those of a table; a label of something that the table does not have is told. */
    static TableLabels of(Entry table, Map<String, ColumnType> columns, List<GridRow> rows) {
        Map<String, String> texts = new LinkedHashMap<>();
        table.membersOf("labels").forEach((name, text) -> {
            boolean isWord = rows.stream().anyMatch(row -> row.row().cells().containsValue(new Word(name)));
            if (!isWord && !columns.containsKey(name)) {
                text.unknown(name, "column of the table, nor word in it", columns.keySet());
            }
            texts.put(name, text.text());
        });
        return new TableLabels(texts);
    }

    public String column(String name) {
        return Optional.ofNullable(texts.get(name))
                .orElseGet(() -> name.replaceAll("(?=\\p{Lu})", " ").toLowerCase(Locale.ROOT));
    }

    public String cell(Value value) {
        if (value.equals(LookUpTable.NOT_PERMITTED)) {
            return "not permitted";
        }
        return value instanceof Word w && texts.containsKey(w.word()) ? texts.get(w.word()) : Phrases.of(value);
    }
}
