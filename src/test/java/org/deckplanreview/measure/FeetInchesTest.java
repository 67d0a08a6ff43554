package org.deckplanreview.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The form of dimensions on drawings in feet and inches is common practice; the cases are written by hand. */
class FeetInchesTest {

    private static final Pattern WRITTEN =
            Pattern.compile("(-?)(?:(\\d+)'-(?=\\d+(?:\"| )))?(?:(\\d+)(?=\"| ))? ?(?:(\\d+)/(2|4|8|16))?\"");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "66.5        | 5'-6 1/2\"",
                "0.75        | 3/4\"",
                "144         | 12'-0\"",
                "7.25        | 7 1/4\"",
                "12.5        | 1'-0 1/2\"",
                "36          | 3'-0\"",
                "11          | 11\"",
                "0.0625      | 1/16\"",
                "5.6875      | 5 11/16\"",
                "9.375       | 9 3/8\"",
                "0           | 0\"",
                "-0.0        | 0\"",
                "0.0000001   | 0\"",
                "-0.0000001  | 0\"",
                "0.01        | 0.01 in",
                "-0.02       | -0.02 in",
                "11.96875    | 1'-0\"",
                "11.96874    | 11 15/16\"",
                "23.99       | 2'-0\"",
                "-66.5       | -5'-6 1/2\"",
                "-0.75       | -3/4\"",
                "-12         | -1'-0\"",
                "43.30708661 | 3'-7 5/16\"",
                "1000000     | 83333'-4\"",
                "1e18        | 83333333333333333'-4\""
            })
    void an_inch_number_is_written_in_feet_inches_and_sixteenths(double inches, String written) {
        assertThat(FeetInches.of(inches)).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "43.30708661 | CEILING | 3'-7 5/16\"",
                "43.30708661 | FLOOR   | 3'-7 1/4\"",
                "3.93700787  | FLOOR   | 3 7/8\"",
                "17.71653543 | CEILING | 1'-5 3/4\"",
                "36          | CEILING | 3'-0\"",
                "36.0000005  | CEILING | 3'-0\"",
                "35.9999995  | FLOOR   | 3'-0\"",
                "36.0000021  | CEILING | 3'-0 1/16\"",
                "0.04        | FLOOR   | 0.04 in"
            })
    void a_limit_is_rounded_to_its_safe_side_unless_it_is_a_whole_sixteenth(
            double inches, RoundingMode rounding, String written) {
        assertThat(FeetInches.of(inches, rounding)).isEqualTo(written);
    }

    @Property
    void what_is_written_reads_back_within_half_a_sixteenth(
            @ForAll @DoubleRange(min = -1_000_000, max = 1_000_000) double inches) {
        assertThat(read(FeetInches.of(inches))).isCloseTo(inches, within(1.0 / 32));
    }

    @Property
    void whole_sixteenths_are_exact(@ForAll int sixteenths) {
        assertThat(read(FeetInches.of(sixteenths / 16.0))).isEqualTo(sixteenths / 16.0);
    }

    private static double read(String text) {
        if (text.endsWith(" in")) {
            return Double.parseDouble(text.replace(" in", ""));
        }
        Matcher m = WRITTEN.matcher(text);
        assertThat(m.matches()).as(text).isTrue();
        double inches = 12 * number(m.group(2)) + number(m.group(3));
        if (m.group(4) != null) {
            inches += number(m.group(4)) / number(m.group(5));
        }
        return m.group(1).isEmpty() ? inches : -inches;
    }

    private static double number(String digits) {
        return digits == null ? 0 : Double.parseDouble(digits);
    }
}
