/**
 * The geometry that follows from a submission: joist lines cut from the outline, supports and spans, tributary areas,
 * the ground's surface, drops along edges, heights of posts, clearances. May use {@code submission}. Knows nothing of
 * loads, rules or reports.
 */
package org.deckplanreview.layout;
