package org.deckplanreview.loadpath;

import org.deckplanreview.layout.Layout;

/** Takes loads down from joist to beam, post and footing. */
final class Takedown {

    private Takedown() {}

    static LoadPath derive(Layout layout, LoadModel model) {
        throw new IllegalStateException("To be written");
    }
}
