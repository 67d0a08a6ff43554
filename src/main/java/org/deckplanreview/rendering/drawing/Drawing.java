package org.deckplanreview.rendering.drawing;

/**
 * One sheet.
 *
 * @param name distinct among the drawings of a deck, for example {@code section-2}
 * @param title for people
 * @param svg a whole SVG document without XML declaration, which can stand in an HTML page as it is
 */
public record Drawing(String name, String title, String svg) {}
