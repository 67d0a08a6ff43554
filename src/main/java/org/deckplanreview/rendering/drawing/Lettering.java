package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.rendering.text.PlainText;

/** Text as drawings write it: harmless, on one line, and no longer than there is room. */
final class Lettering {

    /** Font size, mm, that gives capitals of 2.5 mm (ISO 3098-1). */
    static final double SIZE = 3.5;

    /** Font size, mm, that gives capitals of 3.5 mm. */
    static final double TITLE = 5;

    /** From one line's base to the next, mm. */
    static final double LINE = 5;

    private static final String ELLIPSIS = "…";

    private Lettering() {}

    /** As it is, without what XML cannot hold or what would turn the direction of reading. */
    static String plain(String untrusted) {
        return PlainText.of(untrusted);
    }

    /** Cut with an ellipsis where it is wider than there is room. */
    static String fitted(String text, double roomMm, double size) {
        String whole = plain(text);
        if (TextWidths.mm(whole, size) <= roomMm) {
            return whole;
        }
        int[] points = whole.codePoints().toArray();
        for (int n = points.length - 1; n > 0; n--) {
            String cut = new String(points, 0, n).strip() + ELLIPSIS;
            if (TextWidths.mm(cut, size) <= roomMm) {
                return cut;
            }
        }
        return ELLIPSIS;
    }

    /** Broken between words into lines of a width; a word that is wider is cut. */
    static List<String> wrapped(String text, double roomMm, double size) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : plain(text).strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (TextWidths.mm(longer, size) <= roomMm) {
                line = longer;
            } else {
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = fitted(word, roomMm, size);
            }
        }
        lines.add(line);
        return lines;
    }
}
