package org.deckplanreview.ruleset;

import java.util.Map;
import java.util.Optional;
import org.deckplanreview.measure.Value;

/**
 * A row of a table as a file states it.
 *
 * @param confirmedBy how this row was confirmed, where that differs from the table
 * @param entry where it stands
 */
record GridRow(Map<String, Value> cells, Optional<Confirmation> confirmedBy, Entry entry) {

    LookUpTable.Row row() {
        return new LookUpTable.Row(cells, confirmedBy);
    }
}
