package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Reads the part of YAML that rulesets are written in: one document of maps with plain keys, lists and scalars, without
 * directives, tags, anchors or aliases. Only {@code true} and {@code false} are flags and only decimal numbers are
 * numbers, so that words such as {@code no} and {@code on} stay words and a day stays text.
 */
final class YamlReader {

    private static final int DEEPEST = 24;
    private static final Pattern NUMBER = Pattern.compile("-?(?:0|[1-9]\\d{0,14})(?:\\.\\d{1,15})?");

    private final RulesetFile file;
    private final Parser parser;

    private YamlReader(RulesetFile file, String text) {
        this.file = file;
        this.parser = new ParserImpl(new StreamReader(text), new LoaderOptions());
    }

    /** The file's content; empty if it cannot be read, with the faults in the file. */
    static Optional<YamlNode> read(RulesetFile file, byte[] bytes) {
        return file.text(bytes).flatMap(text -> read(file, text));
    }

    private static Optional<YamlNode> read(RulesetFile file, String text) {
        try {
            return Optional.of(new YamlReader(file, text).document());
        } catch (Unreadable e) {
            return Optional.empty();
        } catch (MarkedYAMLException e) {
            int line = e.getProblemMark() == null ? 1 : e.getProblemMark().getLine() + 1;
            file.fault(
                    line, lineOf(text, line), "This is not YAML: " + e.getProblem(), "YAML 1.1, indented with blanks");
            return Optional.empty();
        } catch (YAMLException | IllegalArgumentException e) {
            // The library reports characters that YAML does not allow, and numbers in directives, without a line.
            file.fault(
                    1,
                    "'" + Shortened.of(text) + "'",
                    "This is not YAML: " + Shortened.of(String.valueOf(e.getMessage())),
                    "YAML 1.1 in printable characters");
            return Optional.empty();
        }
    }

    private static String lineOf(String text, int line) {
        return "'" + Shortened.of(text.lines().skip(line - 1L).findFirst().orElse("")) + "'";
    }

    private YamlNode document() {
        parser.getEvent();
        Event start = parser.getEvent();
        if (!(start instanceof DocumentStartEvent document)) {
            throw unreadable(1, "nothing", "The file is empty", "one document");
        }
        boolean tagged = document.getTags() != null && !document.getTags().isEmpty();
        if (document.getVersion() != null || tagged) {
            file.fault(lineOf(start), "a directive", "Directives are not used here", "no line that starts with %");
        }
        Event first = parser.getEvent();
        YamlNode node = node(first, lineOf(first), 1);
        parser.getEvent();
        Event next = parser.getEvent();
        if (next instanceof DocumentStartEvent) {
            file.fault(lineOf(next), "a second document", "A file holds one document", "no line ---");
        }
        if (!file.faultless()) {
            throw new Unreadable();
        }
        return node;
    }

    private YamlNode node(Event event, int line, int depth) {
        if (depth > DEEPEST) {
            throw unreadable(line, "more than " + DEEPEST + " levels", "The file is too deep", "fewer levels");
        }
        if (event instanceof AliasEvent) {
            file.fault(line, "an alias", "Aliases are not used here", "the value itself");
            return new YamlNode.TextNode(line, "");
        }
        if (event instanceof NodeEvent n && n.getAnchor() != null) {
            file.fault(line, "'&" + Shortened.of(n.getAnchor()) + "'", "Anchors are not used here", "the value itself");
        }
        if (event instanceof ScalarEvent s) {
            refuseTag(s.getTag(), line);
            return scalar(s, line);
        }
        refuseTag(((CollectionStartEvent) event).getTag(), line);
        return event instanceof MappingStartEvent ? map(line, depth) : list(line, depth);
    }

    private void refuseTag(String tag, int line) {
        if (tag != null) {
            file.fault(line, "'" + Shortened.of(tag) + "'", "Tags are not used here", "the value itself");
        }
    }

    private YamlNode list(int line, int depth) {
        List<YamlNode> items = new ArrayList<>();
        for (Event e = parser.getEvent(); !e.is(Event.ID.SequenceEnd); e = parser.getEvent()) {
            items.add(node(e, lineOf(e), depth + 1));
        }
        return new YamlNode.ListNode(line, items);
    }

    private YamlNode map(int line, int depth) {
        Map<String, YamlNode> members = new LinkedHashMap<>();
        for (Event e = parser.getEvent(); !e.is(Event.ID.MappingEnd); e = parser.getEvent()) {
            int keyLine = lineOf(e);
            if (!(e instanceof ScalarEvent key)) {
                throw unreadable(keyLine, "a map, list or alias", "A member's name must be a word", "a plain name");
            }
            if (key.getAnchor() != null || key.getTag() != null) {
                file.fault(
                        keyLine,
                        "'" + Shortened.of(key.getValue()) + "'",
                        "Names have no anchors or tags",
                        "a plain name");
            }
            YamlNode value = node(parser.getEvent(), keyLine, depth + 1);
            if (members.putIfAbsent(key.getValue(), value) != null) {
                file.fault(keyLine, "'" + Shortened.of(key.getValue()) + "'", "This member is given twice", "it once");
            }
        }
        return new YamlNode.MapNode(line, members);
    }

    private YamlNode scalar(ScalarEvent event, int line) {
        String text = event.getValue();
        if (!event.isPlain()) {
            return new YamlNode.TextNode(line, text);
        }
        if (text.isEmpty() || text.equals("~") || text.equals("null")) {
            file.fault(line, "nothing", "A value is missing here", "a value, or no such member at all");
        }
        return plain(text, line);
    }

    /** A scalar as it is read where it stands without quotes. */
    static YamlNode plain(String text, int line) {
        if (text.equals("true") || text.equals("false")) {
            return new YamlNode.FlagNode(line, text.equals("true"));
        }
        return NUMBER.matcher(text).matches() ? new YamlNode.NumberNode(line, text) : new YamlNode.TextNode(line, text);
    }

    private static int lineOf(Event event) {
        return event.getStartMark().getLine() + 1;
    }

    private Unreadable unreadable(int line, String found, String detail, String accepted) {
        file.fault(line, found, detail, accepted);
        return new Unreadable();
    }

    /** Ends the reading of a file whose faults are already told. */
    private static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unreadable() {
            super("", null, false, false);
        }
    }
}
