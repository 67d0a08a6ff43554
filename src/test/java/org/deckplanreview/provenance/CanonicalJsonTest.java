package org.deckplanreview.provenance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Examples of RFC 8785 (JSON Canonicalization Scheme, June 2020). */
class CanonicalJsonTest {

    /** RFC 8785, section 3.2.2 with the result of 3.2.3. */
    @Test
    void the_example_of_the_standard_comes_out_as_printed_there() {
        String example = """
                {
                  "numbers": [333333333.33333329, 1E30, 4.50,
                              2e-3, 0.000000000000000000000000001],
                  "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
                  "literals": [null, true, false]
                }
                """;
        assertThat(CanonicalJson.of(example))
                .isEqualTo("{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,"
                        + "1e+30,4.5,0.002,1e-27],\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
    }

    /** RFC 8785, section 3.2.4: the bytes of the same example. */
    @Test
    void its_bytes_begin_as_printed_there() {
        String canonical = CanonicalJson.of("{\"numbers\":[1E30],\"literals\":[null,true,false]}");
        assertThat(HexFormat.ofDelimiter(" ").formatHex(canonical.getBytes(StandardCharsets.UTF_8)))
                .startsWith(
                        "7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72 75 65 2c 66 61 6c 73 65 5d 2c");
    }

    /** RFC 8785, section 3.2.3: members are sorted by their UTF-16 code units. */
    @Test
    void members_are_sorted_by_code_units() {
        String example = "{\"\\u20ac\":\"Euro Sign\",\"\\r\":\"Carriage Return\","
                + "\"\\ufb33\":\"Hebrew Letter Dalet With Dagesh\",\"1\":\"One\","
                + "\"\\ud83d\\ude00\":\"Emoji: Grinning Face\",\"\\u0080\":\"Control\","
                + "\"\\u00f6\":\"Latin Small Letter O With Diaeresis\"}";
        assertThat(CanonicalJson.of(example))
                .containsSubsequence(
                        "Carriage Return",
                        "One",
                        "Control",
                        "Latin Small",
                        "Euro Sign",
                        "Grinning Face",
                        "Hebrew Letter");
    }

    /** RFC 8785, appendix B: numbers by their IEEE 754 bits. */
    @ParameterizedTest
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "0000000000000001, 5e-324",
        "8000000000000001, -5e-324",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "ffefffffffffffff, -1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "c340000000000000, -9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "44b52d02c7e14af7, 1.0000000000000001e+23",
        "444b1ae4d6e2ef4e, 999999999999999700000",
        "444b1ae4d6e2ef4f, 999999999999999900000",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555553, 333333333.3333332",
        "41b3de4355555554, 333333333.33333325",
        "41b3de4355555555, 333333333.3333333",
        "41b3de4355555556, 333333333.3333334",
        "41b3de4355555557, 333333333.33333343",
        "becbf647612f3696, -0.0000033333333333333333",
        "43143ff3c1cb0959, 1424953923781206.2"
    })
    void numbers_are_written_as_the_appendix_lists_them(String bits, String written) {
        double number = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertThat(CanonicalJson.of("[" + new BigDecimal(number) + "]")).isEqualTo("[" + written + "]");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"{\"a\":1,\"a\":2}", "[NaN]", "[1e400]", "{", "text", "''"})
    void what_has_no_canonical_form_is_refused(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.of(text));
    }
}
