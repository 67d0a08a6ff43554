package org.deckplanreview.rendering.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Lines of at most 80 characters. Everything that is written passes {@link PlainText}. */
final class Page {
    static final int WIDTH = 80;
    /** Blanks, but for the one before a fraction of an inch: 5'-6 and 1/2" stay on one line. */
    private static final Pattern BREAK = Pattern.compile(" +(?!\\d{1,2}/\\d{1,2}\")");

    private final StringBuilder text = new StringBuilder();

    void blank() {
        text.append('\n');
    }

    void heading(String heading) {
        blank();
        line(heading);
        line("-".repeat(heading.length()));
    }

    /** One line as it is, but for blanks at its end. */
    void line(String line) {
        text.append(PlainText.of(line).stripTrailing()).append('\n');
    }

    /** Wraps the words of a paragraph. */
    void paragraph(int indent, String words) {
        hanging(" ".repeat(indent), indent, words);
    }

    /** A name and its words beside it, those of further lines under the first ones. */
    void entry(int indent, int nameWidth, String name, String words) {
        hanging(" ".repeat(indent) + padded(name, nameWidth), indent + nameWidth, words);
    }

    /** Wraps words after what the first line starts with; further lines are indented. */
    void hanging(String start, int indent, String words) {
        List<String> lines = wrapped(PlainText.of(words), WIDTH - Math.max(indent, start.length()));
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? start : " ".repeat(indent)) + lines.get(i));
        }
    }

    String text() {
        return text.toString();
    }

    static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private static List<String> wrapped(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : BREAK.split(words.strip())) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                int cut = Character.isHighSurrogate(rest.charAt(width - 1)) ? width - 1 : width;
                lines.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }
}
