package org.deckplanreview.method.en1995;

/** Deflection on loading, or after creep, 2.2.3. */
enum DeflectionState {
    INSTANTANEOUS,
    FINAL
}
