package org.deckplanreview.rendering.sarif;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Where in its text a JSON document has the value that a JSON Pointer names. */
final class Places {

    /** @param line from 1; column from 1, in UTF-16 code units */
    record Place(int line, int column) {}

    private final SortedMap<String, Place> byPointer;

    private Places(SortedMap<String, Place> byPointer) {
        this.byPointer = byPointer;
    }

    /** Of a document that was read before, in UTF-8. */
    static Places in(byte[] json) {
        SortedMap<String, Place> places = new TreeMap<>();
        // Read as text: only then does Jackson count columns in characters.
        try (JsonParser parser = new JsonFactory().createParser(new String(json, StandardCharsets.UTF_8))) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token.isStructStart() || token.isScalarValue()) {
                    JsonLocation at = parser.currentTokenLocation();
                    places.putIfAbsent(pointer(parser, token), new Place(at.getLineNr(), at.getColumnNr()));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Places(places);
    }

    private static String pointer(JsonParser parser, JsonToken token) {
        return (token.isStructStart() ? parser.getParsingContext().getParent() : parser.getParsingContext())
                .pathAsPointer()
                .toString();
    }

    /** Of the value itself, or of the nearest one around it that is there. */
    Optional<Place> of(String pointer) {
        String at = pointer;
        while (!byPointer.containsKey(at) && !at.isEmpty()) {
            at = at.substring(0, at.lastIndexOf('/'));
        }
        return Optional.ofNullable(byPointer.get(at));
    }
}
