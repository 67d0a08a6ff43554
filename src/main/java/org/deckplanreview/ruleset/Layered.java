package org.deckplanreview.ruleset;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A standard's value or table as it holds in an edition.
 *
 * @param standard the edition's short name of the standard
 * @param citation who states what holds
 * @param replaced what the standard itself states, where the edition sets it otherwise
 */
record Layered(
        String standard, String name, StandardFile.Content content, Citation citation, Optional<Replaced> replaced) {

    record Replaced(StandardFile.Content content, Citation citation) {}

    Layered set(StandardFile.Content other, Citation setBy) {
        return new Layered(standard, name, other, setBy, Optional.of(new Replaced(content, citation)));
    }

    /** The table; empty where it is a single value. */
    Optional<LookUpTable> table() {
        return table(
                content, citation, replaced.flatMap(old -> table(old.content(), old.citation(), Optional.empty())));
    }

    private Optional<LookUpTable> table(
            StandardFile.Content stated, Citation statedBy, Optional<LookUpTable> inPlaceOf) {
        if (!(stated instanceof StandardFile.Content.Grid grid)) {
            return Optional.empty();
        }
        Map<String, LookUpTable.Column> columns = new LinkedHashMap<>();
        grid.columns().forEach((column, type) -> columns.put(column, type.column()));
        return Optional.of(new LookUpTable(
                standard,
                name,
                columns,
                grid.rows().stream().map(GridRow::row).toList(),
                grid.labels(),
                statedBy,
                inPlaceOf));
    }

    /** For people: where it stands, who set it and what it replaced. */
    String source() {
        return replaced.map(old -> old.citation().text() + "; set by " + citation.text() + was(old.content(), content))
                .orElseGet(citation::text);
    }

    /** A nation may set the value that the standard has. */
    private static String was(StandardFile.Content old, StandardFile.Content now) {
        return old instanceof StandardFile.Content.Single before
                        && now instanceof StandardFile.Content.Single after
                        && !before.token().text().equals(after.token().text())
                ? " (was " + before.token().text() + ")"
                : "";
    }
}
