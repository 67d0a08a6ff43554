package org.deckplanreview.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownComparisonTest {

    /** Limits in whole inches, and of 100 mm = 3.937… in, 450 mm = 17.716… in and 1100 mm = 43.307… in. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "36 in       | AT_LEAST | 36 in   | 3'-0\"        | 3'-0\"",
                "35.5 in     | AT_LEAST | 36 in   | 2'-11 1/2\"   | 3'-0\"",
                "35.99 in    | AT_LEAST | 36 in   | 35.99 in      | 36 in",
                "35.9999 in  | AT_LEAST | 36 in   | 35.9999 in    | 36 in",
                "35.9999999 in | AT_LEAST | 36 in | 35.9999999 in | 36 in",
                "36.01 in    | AT_MOST  | 36 in   | 36.01 in      | 36 in",
                "36.0625 in  | AT_MOST  | 36 in   | 3'-0 1/16\"   | 3'-0\"",
                "914.4 mm    | AT_MOST  | 36 in   | 3'-0\"        | 3'-0\"",
                "1100 mm     | AT_LEAST | 1100 mm | 3'-7 5/16\"   | 3'-7 5/16\"",
                "43.3125 in  | AT_LEAST | 1100 mm | 3'-7 5/16\"   | 3'-7 5/16\"",
                "43.3 in     | AT_LEAST | 1100 mm | 43.3 in       | 43.3071 in",
                "43.25 in    | AT_LEAST | 1100 mm | 3'-7 1/4\"    | 3'-7 5/16\"",
                "100 mm      | AT_MOST  | 100 mm  | 3.93701 in    | 3.93701 in",
                "3.9375 in   | AT_MOST  | 100 mm  | 3 15/16\"     | 3 7/8\"",
                "450 mm      | AT_LEAST | 450 mm  | 17.7165 in    | 17.7165 in",
                "17.6875 in  | AT_LEAST | 450 mm  | 1'-5 11/16\"  | 1'-5 3/4\"",
                "36.01 in    | OVER     | 36 in   | 36.01 in      | 36 in",
                "36 in       | OVER     | 36 in   | 3'-0\"        | 3'-0\"",
                "36 in       | UNDER    | 36 in   | 3'-0\"        | 3'-0\"",
                "1.5 kN/m2   | AT_LEAST | 40 psf  | 31.3282 psf   | 40 psf",
                "39.9999999 psf | AT_LEAST | 40 psf | 39.9999999 psf | 40 psf"
            })
    void in_inches_what_is_shown_compares_as_what_was_found(
            String found, Sense sense, String allowed, String shownFound, String shownAllowed) {
        ShownComparison shown = shown(found, sense, allowed, UnitSystem.INCH_POUND);

        assertThat(shown.found()).isEqualTo(shownFound);
        assertThat(shown.allowed()).isEqualTo(shownAllowed);
    }

    @ParameterizedTest
    @CsvSource({
        "914.4 mm, AT_LEAST, 36 in, 914.4 mm, 914.4 mm",
        "914.3999 mm, AT_LEAST, 36 in, 914.3999 mm, 914.4 mm",
        "1100 mm, AT_LEAST, 1100 mm, 1100 mm, 1100 mm",
        "1099.9999 mm, AT_LEAST, 1100 mm, 1099.9999 mm, 1100 mm",
        "40 psf, AT_MOST, 2 kN/m2, 1.91521 kN/m², 2 kN/m²"
    })
    void in_metric_units_likewise(String found, Sense sense, String allowed, String shownFound, String shownAllowed) {
        ShownComparison shown = shown(found, sense, allowed, UnitSystem.METRIC);

        assertThat(shown.found()).isEqualTo(shownFound);
        assertThat(shown.allowed()).isEqualTo(shownAllowed);
    }

    private static ShownComparison shown(String found, Sense sense, String allowed, UnitSystem system) {
        Measure f = Measure.parse(found);
        Measure a = Measure.parse(allowed);
        Determination determination =
                sense.holds(f.in(a.unit()), a.value()) ? Determination.COMPLIES : Determination.DOES_NOT_COMPLY;
        return ShownComparison.of(f, sense, List.of(a), determination, system);
    }
}
