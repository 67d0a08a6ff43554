package org.deckplanreview.report;

import com.fasterxml.jackson.annotation.JsonValue;
import java.math.BigDecimal;

/** A value as the report shows it. */
public sealed interface ShownValue {
    /** For people, without its unit. */
    String text();

    /** A number, rounded. */
    record Number(@JsonValue BigDecimal number) implements ShownValue {
        @Override
        public String text() {
            return number.toPlainString();
        }
    }

    /** A word of a closed list. */
    record Word(@JsonValue String word) implements ShownValue {
        @Override
        public String text() {
            return word;
        }
    }

    /** Yes or no. */
    record Flag(@JsonValue boolean yes) implements ShownValue {
        @Override
        public String text() {
            return yes ? "yes" : "no";
        }
    }
}
