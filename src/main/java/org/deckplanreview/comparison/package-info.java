/**
 * What changed from one edition to another, and what that does to submissions. Calls the review as a function from bytes
 * and an edition to a report, and knows nothing of its inside.
 */
package org.deckplanreview.comparison;
