package org.deckplanreview.rendering.html;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A table of the page, whose rows each begin with what they are about.
 *
 * @param headings of all columns
 */
public record PageTable(String caption, List<String> headings, List<Row> rows) {

    /** @param head what the row is about */
    public record Row(String head, List<Cell> cells) {}

    /** @param heading that of its column, for screens too narrow for columns */
    public record Cell(String heading, String text) {}

    static <T> PageTable of(String caption, List<String> headings, List<T> rows, Function<T, List<String>> cells) {
        return new PageTable(
                caption,
                headings,
                rows.stream().map(r -> row(headings, cells.apply(r))).toList());
    }

    private static Row row(List<String> headings, List<String> texts) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 1; i < texts.size(); i++) {
            cells.add(new Cell(headings.get(i), texts.get(i)));
        }
        return new Row(texts.get(0), List.copyOf(cells));
    }
}
