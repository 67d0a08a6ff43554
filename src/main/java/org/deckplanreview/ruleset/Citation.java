package org.deckplanreview.ruleset;

import java.time.LocalDate;

/**
 * Where a provision or value stands.
 *
 * @param clause in the source's own numbering; empty for common practice
 * @param on the day it was confirmed
 */
public record Citation(Source source, String clause, Confirmation confirmedBy, LocalDate on) {

    /** For people, for example {@code EN 1995-1-1:2004+A1:2008+A2:2014, Table 2.3}. */
    public String text() {
        return clause.isEmpty() ? source.designation() : source.designation() + ", " + clause;
    }

    /** Whether it was recalled from memory and must be checked against the document. */
    public boolean recalled() {
        return confirmedBy == Confirmation.MEMORY;
    }
}
