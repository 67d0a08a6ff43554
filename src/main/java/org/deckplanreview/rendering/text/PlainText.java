package org.deckplanreview.rendering.text;

import java.util.Locale;

/**
 * Text that does nothing to a terminal or a log. Submissions choose their labels, so a label could otherwise move the
 * cursor, forge a line or turn the direction of reading.
 */
public final class PlainText {
    private PlainText() {}

    /** White space becomes a blank; other characters without a shape become their code point, {@code [U+202E]}. */
    public static String of(String untrusted) {
        StringBuilder safe = new StringBuilder(untrusted.length());
        untrusted.codePoints().forEach(c -> {
            if (c == '\t' || c == '\n' || c == '\r' || Character.getType(c) == Character.SPACE_SEPARATOR) {
                safe.append(' ');
            } else if (isShapeless(c)) {
                safe.append(shownCodePoint(c));
            } else {
                safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }

    private static boolean isShapeless(int codePoint) {
        return isNoncharacter(codePoint) || isWithoutShape(Character.getType(codePoint));
    }

    /** Code points that are never characters; XML cannot hold some of them. */
    private static boolean isNoncharacter(int codePoint) {
        return (codePoint & 0xFFFE) == 0xFFFE || codePoint >= 0xFDD0 && codePoint <= 0xFDEF;
    }

    private static boolean isWithoutShape(int type) {
        return switch (type) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> false;
        };
    }

    private static String shownCodePoint(int codePoint) {
        String hex = Integer.toHexString(codePoint).toUpperCase(Locale.ROOT);
        return "[U+" + "0".repeat(Math.max(0, 4 - hex.length())) + hex + "]";
    }
}
