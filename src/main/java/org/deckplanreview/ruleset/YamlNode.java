package org.deckplanreview.ruleset;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A file's content as it stands there; lines count from 1, and a member's line is that of its key. */
sealed interface YamlNode {

    int line();

    /** The same as maps, lists, text, numbers and flags of the Java library. */
    Object plain();

    /** For messages, short. */
    String shown();

    record MapNode(int line, Map<String, YamlNode> members) implements YamlNode {
        public MapNode {
            members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
        }

        @Override
        public Object plain() {
            Map<String, Object> plain = new LinkedHashMap<>();
            members.forEach((name, value) -> plain.put(name, value.plain()));
            return plain;
        }

        @Override
        public String shown() {
            return members.isEmpty() ? "an empty map" : Shortened.of("a map of " + String.join(", ", members.keySet()));
        }
    }

    record ListNode(int line, List<YamlNode> items) implements YamlNode {
        public ListNode {
            items = List.copyOf(items);
        }

        @Override
        public Object plain() {
            List<Object> plain = new ArrayList<>();
            items.forEach(item -> plain.add(item.plain()));
            return plain;
        }

        @Override
        public String shown() {
            return "a list of " + items.size();
        }
    }

    record TextNode(int line, String text) implements YamlNode {
        @Override
        public Object plain() {
            return text;
        }

        @Override
        public String shown() {
            return "'" + Shortened.of(text) + "'";
        }
    }

    record NumberNode(int line, String text) implements YamlNode {
        @Override
        public Object plain() {
            return new BigDecimal(text);
        }

        @Override
        public String shown() {
            return text;
        }
    }

    record FlagNode(int line, boolean yes) implements YamlNode {
        @Override
        public Object plain() {
            return yes;
        }

        @Override
        public String shown() {
            return Boolean.toString(yes);
        }
    }
}
