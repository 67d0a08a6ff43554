/**
 * The whole review as one function, from the bytes of a submission to a report or to what is wrong with them. May use
 * everything before it.
 */
package org.deckplanreview.review;
