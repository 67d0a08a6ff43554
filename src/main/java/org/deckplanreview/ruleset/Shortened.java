package org.deckplanreview.ruleset;

/** Text cut to a length that fits a message. */
final class Shortened {

    private static final int LENGTH = 60;

    private Shortened() {}

    static String of(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() <= LENGTH ? line : line.substring(0, LENGTH) + "…";
    }
}
