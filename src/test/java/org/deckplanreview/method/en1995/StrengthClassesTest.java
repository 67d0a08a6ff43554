package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;

import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.vocabulary.Table;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A second listing of EN 338:2016, Tables 1 and 3, written out property by property as its tables are printed and not
 * class by class as the ruleset's file is.
 */
class StrengthClassesTest {

    private static final Table CLASSES = StandardParameters.of("en338-2016").table("strengthClasses");

    @ParameterizedTest
    @CsvSource({
        "fmk,     14,   16,   18,   24,   27,   30,   30,   40",
        "ft0k,    7.2,  8.5,  10,   14.5, 16.5, 19,   18,   24",
        "fc0k,    16,   17,   18,   21,   22,   24,   24,   27",
        "fc90k,   2.0,  2.2,  2.2,  2.5,  2.5,  2.7,  5.3,  5.5",
        "fvk,     3.0,  3.2,  3.4,  4.0,  4.0,  4.0,  3.9,  4.2",
        "e0Mean,  7000, 8000, 9000, 11000,11500,12000,11000,13000",
        "e005,    4700, 5400, 6000, 7400, 7700, 8000, 9200, 10900",
        "gMean,   440,  500,  560,  690,  720,  750,  690,  810"
    })
    void strengths_and_stiffness_are_those_of_the_standard(
            String property,
            double c14,
            double c16,
            double c18,
            double c24,
            double c27,
            double c30,
            double d30,
            double d40) {
        assertRow(property, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, c14, c16, c18, c24, c27, c30, d30, d40);
    }

    @ParameterizedTest
    @CsvSource({"rhoK,    290, 310, 320, 350, 360, 380, 530, 550", "rhoMean, 350, 370, 380, 420, 430, 460, 640, 660"})
    void densities_are_those_of_the_standard(
            String property,
            double c14,
            double c16,
            double c18,
            double c24,
            double c27,
            double c30,
            double d30,
            double d40) {
        assertRow(property, MeasureUnit.KILOGRAM_PER_CUBIC_METRE, c14, c16, c18, c24, c27, c30, d30, d40);
    }

    private static void assertRow(String property, MeasureUnit unit, double... values) {
        String[] names = {"C14", "C16", "C18", "C24", "C27", "C30", "D30", "D40"};
        assertThat(CLASSES.rows()).hasSize(names.length);
        for (int i = 0; i < names.length; i++) {
            assertThat(CLASSES.find("class", names[i]).orElseThrow().number(property, unit))
                    .as(names[i])
                    .isEqualTo(values[i]);
        }
    }
}
