package org.deckplanreview.rendering.drawing;

import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Line types of ISO 128-2 in the widths of its series; dashes and gaps in multiples of the width, as the standard has them. */
enum Pen {
    /** The sheet's border. */
    FRAME(0.7, Colour.INK),
    /** Visible outlines. */
    WIDE(0.5, Colour.INK),
    /** Visible edges of thin members. */
    NARROW(0.25, Colour.INK),
    /** Oblique strokes that end dimension lines. */
    TERMINATOR(0.35, Colour.INK),
    /** Dimension and extension lines, leaders, hatching. */
    THIN(0.18, Colour.INK),
    /** What lies below. */
    HIDDEN(0.35, Colour.INK, 12, 3),
    /** Centre lines and lines of a section. */
    CENTRE(0.18, Colour.INK, 24, 3, 0.5, 3),
    /** Outlines of things beside the deck's own parts. */
    BESIDE(0.25, Colour.INK, 24, 3, 0.5, 3, 0.5, 3),
    /** Members that do not comply. */
    FAILING(0.7, Colour.FAILING),
    /** Members that do not comply and lie below. */
    FAILING_HIDDEN(0.7, Colour.FAILING, 6, 2),
    /** Hatching of what does not comply. */
    FAILING_HATCH(0.25, Colour.FAILING),
    /** Hatching of what is not as recommended. */
    ADVISED_HATCH(0.18, Colour.QUIET);

    private final double widthMm;
    private final String colour;
    private final String dashes;

    Pen(double widthMm, String colour, double... dashes) {
        this.widthMm = widthMm;
        this.colour = colour;
        this.dashes =
                DoubleStream.of(dashes).mapToObj(d -> Svg.number(d * widthMm)).collect(Collectors.joining(" "));
    }

    double widthMm() {
        return widthMm;
    }

    String colour() {
        return colour;
    }

    /** In mm; blank for a continuous line. */
    String dashes() {
        return dashes;
    }
}
