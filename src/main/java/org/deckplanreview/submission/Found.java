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
        int length = text.codePointCount(0, text.length());
        return length <= LONGEST_EXCERPT
                ? "'" + printable(text) + "'"
                : "'" + printable(text.substring(0, text.offsetByCodePoints(0, LONGEST_EXCERPT))) + "\u2026'";
    }

    /** A text with a mark in place of each character that cannot be printed. */
    static String printable(String text) {
        return text.codePoints()
                .map(c -> isPrintable(c) ? c : '\ufffd')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
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
