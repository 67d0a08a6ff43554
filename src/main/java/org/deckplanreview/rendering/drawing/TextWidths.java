package org.deckplanreview.rendering.drawing;

import java.util.List;

/**
 * Widths of text that no font of the stack exceeds: for each character the advance width in the widest of them, in thousandths
 * of the font's size.
 */
final class TextWidths {

    /** The fonts that drawings ask for, the widest last. */
    static final String FONTS = "Arial, Helvetica, 'Liberation Sans', 'DejaVu Sans', sans-serif";

    /** Ascent and descent of the tallest of them. */
    static final double ASCENT = 0.93;

    static final double DESCENT = 0.24;

    private static final double THOUSAND = 1000;
    private static final int FIRST = ' ';
    private static final int WIDEST_LATIN = 1070;
    private static final int LAST_LATIN = 0x17f;
    private static final int ANY_OTHER = 1300;

    /** From blank to tilde. */
    private static final int[] ASCII = {
        318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636, 636,
        636, 636, 636, 636, 337, 337, 838, 838, 838, 556, 1015, 684, 686, 722, 770, 667, 611, 778, 752, 295, 500, 667,
        557, 863, 748, 787, 667, 787, 722, 667, 611, 732, 684, 989, 685, 667, 685, 390, 337, 390, 838, 556, 500, 613,
        635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818,
        592, 592, 525, 636, 337, 636, 838
    };

    /** Signs that drawings write themselves. */
    private static final List<Integer> SIGNS = "×·±−°²³⁴…–".codePoints().boxed().toList();

    private static final int[] SIGN_WIDTHS = {838, 318, 838, 838, 500, 401, 401, 401, 1000, 500};

    private TextWidths() {}

    /** The most that a line of text of that font size is wide, mm. */
    static double mm(String text, double sizeMm) {
        return text.codePoints().mapToLong(TextWidths::width).sum() / THOUSAND * sizeMm;
    }

    /** Whether the widths of all its characters are known, so that none can be wider than {@link #mm} says. */
    static boolean isKnown(String text) {
        return text.codePoints().allMatch(c -> c <= LAST_LATIN || SIGNS.contains(c));
    }

    private static int width(int c) {
        if (c >= FIRST && c < FIRST + ASCII.length) {
            return ASCII[c - FIRST];
        }
        int sign = SIGNS.indexOf(c);
        if (sign >= 0) {
            return SIGN_WIDTHS[sign];
        }
        return c <= LAST_LATIN ? WIDEST_LATIN : ANY_OTHER;
    }
}
