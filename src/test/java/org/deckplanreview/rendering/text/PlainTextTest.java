package org.deckplanreview.rendering.text;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainTextTest {
    /** Control functions as ECMA-48 numbers them, direction controls as Unicode Standard Annex 9 lists them. */
    @ParameterizedTest
    @CsvSource({
        "001B, ESC",
        "0007, BEL",
        "0008, BS",
        "007F, DEL",
        "0085, NEL",
        "009B, CSI",
        "200E, LRM",
        "202E, RLO",
        "2066, LRI",
        "2069, PDI",
        "061C, ALM",
        "200B, zero width space",
        "2028, line separator",
        "2029, paragraph separator",
        "FEFF, byte order mark",
        "D800, a surrogate alone"
    })
    void a_character_without_a_shape_becomes_its_code_point(String codePoint, String name) {
        String text = "a" + (char) Integer.parseInt(codePoint, 16) + "b";

        assertThat(PlainText.of(text)).as(name).isEqualTo("a[U+" + codePoint + "]b");
    }

    @ParameterizedTest
    @CsvSource({"0009", "000A", "000D", "00A0", "3000"})
    void white_space_becomes_a_blank(String codePoint) {
        assertThat(PlainText.of("a" + (char) Integer.parseInt(codePoint, 16) + "b"))
                .isEqualTo("a b");
    }

    @ParameterizedTest
    @CsvSource({"Terrasse am Bächlein", "τ_v,d ≤ f_v,d", "木のデッキ", "𝒜"})
    void letters_of_any_script_stay(String text) {
        assertThat(PlainText.of(text)).isEqualTo(text);
    }

    @Property
    void no_control_character_passes(@ForAll String text) {
        assertThat(PlainText.of(text).codePoints())
                .noneMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT);
    }
}
