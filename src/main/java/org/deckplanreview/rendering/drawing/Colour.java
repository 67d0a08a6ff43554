package org.deckplanreview.rendering.drawing;

/** Few colours, dark enough on white that text in them has a contrast of 4.5 or more. */
final class Colour {
    static final String INK = "#1a1a1a";
    static final String QUIET = "#505050";
    static final String FAILING = "#9b1038";
    static final String PAPER = "#ffffff";
    static final String TIMBER = "#efeae0";
    static final String CONCRETE = "#e6e6e6";
    static final String SHADE = "#c9c9c9";
    static final String NONE = "none";

    private Colour() {}
}
