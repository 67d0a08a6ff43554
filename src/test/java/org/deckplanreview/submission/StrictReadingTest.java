package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.deckplanreview.kernel.Pointer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts that RFC 8259 does not allow, or leaves to the reader to bound (its sections 4, 8.1 and 9). */
class StrictReadingTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "deck",
                "{\"reference\": ",
                "{reference: \"a\"}",
                "{'reference': 'a'}",
                "{\"reference\": \"a\",}",
                "// a deck\n{}",
                "/* a deck */ {}",
                "{\"reference\": NaN}",
                "{\"reference\": Infinity}",
                "{\"reference\": -Infinity}",
                "{\"reference\": 010}",
                "{\"reference\": 0x1F}",
                "{\"reference\": .5}",
                "{\"reference\": 5.}",
                "{\"reference\": +5}",
                "{\"reference\": \"a\nb\"}",
                "{\"reference\": \"\\x41\"}"
            })
    void what_is_not_json_is_refused_with_its_place(String text) {
        ReadResult.NotJson refused = refused(text);

        assertThat(refused.detail())
                .isNotBlank()
                .doesNotContain("Jackson", "`", "Source", "com.", "code ", "ALLOW", "marker");
        assertThat(refused.line()).isPositive();
        assertThat(refused.column()).isPositive();
    }

    @Test
    void the_place_is_counted_from_one_in_lines_and_columns() {
        ReadResult.NotJson refused = refused("{\n  \"reference\": nope\n}");

        assertThat(refused.line()).isEqualTo(2);
        assertThat(refused.column()).isBetween(16, 21);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\t "})
    void an_empty_body_is_refused(String text) {
        assertThat(refused(text).detail()).isEqualTo("The document is empty");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{} {}", "{} x", "{}]", "{}//"})
    void text_after_the_document_is_refused(String text) {
        assertThat(refused(text).column()).isGreaterThanOrEqualTo(3);
    }

    @Test
    void a_member_given_twice_is_refused() {
        assertThat(refused("{\"units\": \"mm\", \"units\": \"in\"}").detail()).isEqualTo("Duplicate field 'units'");
    }

    @Test
    void a_message_holds_nothing_that_cannot_be_printed() {
        assertThat(refused("{\"a\\u0007\\u202e\": 1, \"a\\u0007\\u202e\": 2}").detail())
                .isEqualTo("Duplicate field 'a\ufffd\ufffd'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e1000000", "-1e1000000", "1e-1000000", "1E+21", "1e-21", "1e00000000000000000000099"})
    void a_large_exponent_is_refused_before_the_number_is_made(String number) {
        assertThat(refused("{\"use\": [" + number + "]}").detail())
                .isEqualTo("The number " + number + " has an exponent beyond -20 to 20");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e20", "1E-20", "1e+0000000020"})
    void an_exponent_of_twenty_is_still_a_number(String number) {
        assertThat(read("{\"use\": [" + number + "]}")).isInstanceOf(ReadResult.Invalid.class);
    }

    @Test
    void a_number_of_400_digits_is_refused_and_one_of_32_is_not() {
        assertThat(refused("[" + "9".repeat(400) + "]").detail())
                .contains("400")
                .contains("32");
        assertThat(refused("[0." + "9".repeat(400) + "]").detail()).contains("32");
        assertThat(read("[" + "9".repeat(32) + "]")).isInstanceOf(ReadResult.Invalid.class);
    }

    @Test
    void a_depth_of_10000_is_refused_and_one_of_64_is_not() {
        assertThat(refused("[".repeat(10_000)).detail()).contains("depth").contains("64");
        assertThat(refused("{\"a\":".repeat(10_000)).detail()).contains("depth").contains("64");
        assertThat(read("[".repeat(64) + "]".repeat(64))).isInstanceOf(ReadResult.Invalid.class);
    }

    @Test
    void ten_megabytes_are_refused_unread() {
        byte[] blanks = new byte[10 * 1024 * 1024];
        Arrays.fill(blanks, (byte) ' ');

        ReadResult result = new SubmissionReader().read(blanks);

        assertThat(result)
                .isEqualTo(new ReadResult.NotJson("The document has 10485760 bytes; at most 2097152 are read", 1, 1));
    }

    @Test
    void a_text_of_10001_characters_is_refused() {
        assertThat(refused("[\"" + "a".repeat(10_001) + "\"]").detail()).contains("10000");
        assertThat(refused("{\"" + "a".repeat(257) + "\": 1}").detail()).contains("256");
    }

    @Test
    void bytes_that_are_not_utf8_are_refused_at_their_place() {
        byte[] latin = "{\n\"title\": \"Café\"}".getBytes(StandardCharsets.ISO_8859_1);

        assertThat(new SubmissionReader().read(latin))
                .isEqualTo(new ReadResult.NotJson("The document is not UTF-8", 2, 14));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16BE", "UTF-16LE", "UTF-32BE", "UTF-32LE"})
    void other_encodings_of_unicode_are_refused(String encoding) {
        byte[] bytes = "{\"units\": \"mm\"}".getBytes(Charset.forName(encoding));

        assertThat(new SubmissionReader().read(bytes)).isInstanceOf(ReadResult.NotJson.class);
    }

    @Test
    void a_byte_order_mark_is_refused() {
        assertThat(refused("\ufeff{}").detail()).contains("byte order mark");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"title\": \"\\ud800\"}",
                "{\"title\": \"\\udc00\"}",
                "{\"title\": \"\\ud800a\"}",
                "{\"title\": \"\\udc00\\ud800\"}",
                "{\"\\ud83d\": 1}"
            })
    void half_of_a_surrogate_pair_is_refused(String text) {
        assertThat(refused(text).detail()).isEqualTo("A text has half of a surrogate pair");
    }

    @Test
    void a_whole_surrogate_pair_is_a_character() {
        assertThat(SampleDeck.complete().with("/title", "Deck \ud83c\udf33").read())
                .isInstanceOf(ReadResult.Read.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "5", "\"deck\"", "null", "true"})
    void json_that_is_no_object_is_one_fault_of_the_whole_document(String text) {
        assertThat(SampleDeck.faults(read(text))).singleElement().satisfies(fault -> {
            assertThat(fault.pointer()).isEqualTo(Pointer.ROOT);
            assertThat(fault.accepted()).startsWith("an object with reference, units, reviewOn");
        });
    }

    private static ReadResult.NotJson refused(String text) {
        ReadResult result = read(text);
        assertThat(result).isInstanceOf(ReadResult.NotJson.class);
        return (ReadResult.NotJson) result;
    }

    private static ReadResult read(String text) {
        return new SubmissionReader().read(text.getBytes(StandardCharsets.UTF_8));
    }
}
