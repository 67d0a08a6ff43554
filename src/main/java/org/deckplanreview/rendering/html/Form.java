package org.deckplanreview.rendering.html;

/** What a page is made for. */
public enum Form {
    /** A browser, which scrolls, opens and closes, and may print. */
    SCREEN,
    /** Sheets of paper with a footer, by a renderer that knows CSS 2.1 and no MathML. */
    PAPER
}
