package org.deckplanreview.rendering.drawing;

/**
 * A scale of reduction.
 *
 * @param divisor 50 for 1:50
 */
record Scale(double divisor, String text) {

    double onSheet(double mm) {
        return mm / divisor;
    }
}
