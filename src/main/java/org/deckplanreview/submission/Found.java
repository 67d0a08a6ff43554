package org.deckplanreview.submission;

import com.fasterxml.jackson.databind.JsonNode;

/** How faults speak of what they found. */
final class Found {

    private static final int LONGEST_EXCERPT = 60;

    private Found() {}

    /** A value in words, cut short where it is long. */
    static String value(JsonNode value) {
        return switch (value.getNodeType()) {
            case STRING -> "the text " + quoted(value.textValue());
            case NUMBER ->
                "the number " + value.decimalValue().stripTrailingZeros().toPlainString();
            case ARRAY -> "a list of " + value.size();
            case OBJECT -> "an object";
            default -> value.asText();
        };
    }

    /** A text in quotation marks, cut short where it is long, with nothing in it that cannot be printed. */
    static String quoted(String text) {
        StringBuilder shown = new StringBuilder("'");
        text.codePoints()
                .limit(LONGEST_EXCERPT)
                .map(c -> isPrintable(c) ? c : '\ufffd')
                .forEach(shown::appendCodePoint);
        if (text.codePointCount(0, text.length()) > LONGEST_EXCERPT) {
            shown.append('\u2026');
        }
        return shown.append('\'').toString();
    }

    private static boolean isPrintable(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
