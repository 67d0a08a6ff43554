/**
 * What the build adds to compiled classes: the accessors of the submission's records tell the review's log which member
 * was read. Runs in the build alone; nothing else uses it.
 */
package org.deckplanreview.weaving;
