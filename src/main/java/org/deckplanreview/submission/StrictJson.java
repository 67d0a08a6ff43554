package org.deckplanreview.submission;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.JsonParserDelegate;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Parses JSON (RFC 8259) without any leniency: UTF-8 only and without byte order mark, no comments, no duplicate
 * members, no text after the document, no unpaired surrogates. Size, depth and the length and exponent of numbers are
 * bounded before any number is computed.
 */
final class StrictJson {

    static final int MOST_BYTES = 2 * 1024 * 1024;
    static final int MOST_DEPTH = 64;
    static final int MOST_DIGITS = 32;
    static final int MOST_EXPONENT = 20;
    static final int MOST_CHARACTERS = 10_000;
    static final int MOST_NAME_CHARACTERS = 256;

    private static final char BYTE_ORDER_MARK = '\ufeff';
    private static final Pattern EXPONENT = Pattern.compile("[eE][+-]?0*([0-9]+)$");
    /** What the parser's messages say of its own switches, and of character codes. */
    private static final Pattern PARSER_INTERNALS = Pattern.compile(" ?\\(start marker at [^)]*\\)+|, from `[^`]*`"
            + "|: enable `[^`]*` to allow|: maybe a \\(non-standard\\) comment\\?.*| \\(code \\d+[^)]*\\)|, code \\d+");

    private static final ObjectMapper TREES = new ObjectMapper(new JsonFactoryBuilder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MOST_DEPTH)
                    .maxNumberLength(MOST_DIGITS)
                    .maxStringLength(MOST_CHARACTERS)
                    .maxNameLength(MOST_NAME_CHARACTERS)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .build());

    private StrictJson() {}

    /** What parsing gives. */
    sealed interface Parsed {
        record Tree(JsonNode root) implements Parsed {}

        record Refused(ReadResult.NotJson reason) implements Parsed {}
    }

    static Parsed parse(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return refused("The document has " + bytes.length + " bytes; at most " + MOST_BYTES + " are read", 1, 1);
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return notUtf8(bytes);
        }
        if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
            return refused("The document begins with a byte order mark; leave it out", 1, 1);
        }
        return parse(text);
    }

    private static Parsed parse(String text) {
        try (JsonParser parser = new StrictParser(TREES.createParser(text))) {
            try {
                if (parser.nextToken() == null) {
                    return refused("The document is empty", 1, 1);
                }
                JsonNode root = TREES.readTree(parser);
                if (parser.nextToken() != null) {
                    return refused("More text follows the end of the document", parser.currentTokenLocation());
                }
                return new Parsed.Tree(root);
            } catch (JsonProcessingException e) {
                JsonLocation at = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
                String message =
                        PARSER_INTERNALS.matcher(e.getOriginalMessage()).replaceAll("");
                return refused(Found.printable(message), at);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory cannot fail to be read", e);
        }
    }

    /** Decodes what comes before the first broken byte, to tell its place. */
    private static Parsed notUtf8(byte[] bytes) {
        CharBuffer before = CharBuffer.allocate(bytes.length);
        StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), before, true);
        String text = before.flip().toString();
        int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
        return refused("The document is not UTF-8", line, text.length() - text.lastIndexOf('\n'));
    }

    private static Parsed refused(String detail, JsonLocation at) {
        return refused(detail, at.getLineNr(), at.getColumnNr());
    }

    private static Parsed refused(String detail, int line, int column) {
        return new Parsed.Refused(new ReadResult.NotJson(detail, Math.max(line, 1), Math.max(column, 1)));
    }

    /** Looks at the text of names, strings and numbers before anything is made of them. */
    private static final class StrictParser extends JsonParserDelegate {

        StrictParser(JsonParser parser) {
            super(parser);
        }

        @Override
        public JsonToken nextToken() throws IOException {
            JsonToken token = super.nextToken();
            if (token == JsonToken.FIELD_NAME || token == JsonToken.VALUE_STRING) {
                refuseUnpairedSurrogates(getText());
            } else if (token == JsonToken.VALUE_NUMBER_FLOAT) {
                refuseLargeExponent(getText());
            }
            return token;
        }

        private void refuseUnpairedSurrogates(String text) throws JsonParseException {
            for (int i = 0; i < text.length(); i++) {
                char c = text.charAt(i);
                if (Character.isHighSurrogate(c)
                        && i + 1 < text.length()
                        && Character.isLowSurrogate(text.charAt(i + 1))) {
                    i++;
                } else if (Character.isSurrogate(c)) {
                    throw new JsonParseException(this, "A text has half of a surrogate pair", currentTokenLocation());
                }
            }
        }

        private void refuseLargeExponent(String number) throws JsonParseException {
            Matcher m = EXPONENT.matcher(number);
            if (m.find() && (m.group(1).length() > 2 || Integer.parseInt(m.group(1)) > MOST_EXPONENT)) {
                throw new JsonParseException(
                        this,
                        "The number " + number + " has an exponent beyond -" + MOST_EXPONENT + " to " + MOST_EXPONENT,
                        currentTokenLocation());
            }
        }
    }
}
