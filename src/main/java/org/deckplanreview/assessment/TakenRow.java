package org.deckplanreview.assessment;

import org.deckplanreview.ruleset.Confirmation;

/**
 * A row of a table that a look-up took.
 *
 * @param table as the edition calls it, for example {@code irc2018.joistSpans}
 * @param row its keys, for example {@code species southern-pine, size 2x8}
 * @param source where the table stands
 * @param confirmedBy how this row was confirmed
 */
public record TakenRow(String table, String row, String source, Confirmation confirmedBy) {}
