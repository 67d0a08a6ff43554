/**
 * What the site takes along: lengths of posts, setting out, levels, a timber list with a cutting plan, concrete, boards,
 * cut ends, and the order of work. May use {@code layout}, and {@code vocabulary} for the values of site practice that
 * rulesets give. Judges nothing.
 */
package org.deckplanreview.schedule;
