package org.deckplanreview.ruleset;

import java.time.LocalDate;

/**
 * Where a provision or value stands.
 *
 * @param clause in the source's own numbering; empty for common practice
 * @param on the day it was confirmed
 */
public record Citation(Source source, String clause, Confirmation confirmedBy, LocalDate on) {}
