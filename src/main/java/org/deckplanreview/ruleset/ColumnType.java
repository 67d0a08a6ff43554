package org.deckplanreview.ruleset;

import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.vocabulary.ValueType;

/**
 * How a column's cells are written and what they hold.
 *
 * @param text as the standard's file writes it: word, flag, a unit's symbol, or {@link #FEET_INCHES}
 * @param unit of numbers
 */
record ColumnType(String text, ValueType type, Optional<MeasureUnit> unit) {

    /** Numbers in inches that are written as feet and inches, for example {@code 9-11}. */
    static final String FEET_INCHES = "ft-in";

    boolean isFeetInches() {
        return text.equals(FEET_INCHES);
    }

    LookUpTable.Column column() {
        return new LookUpTable.Column(type, unit);
    }
}
