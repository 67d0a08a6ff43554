package org.deckplanreview.rendering.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;

class TextWidthsTest {

    /** Adobe's published metrics of Helvetica (Core 14 AFM), to which Arial and Liberation Sans are drawn. */
    @Test
    void no_character_of_a_common_font_is_wider_than_reckoned() throws IOException {
        PDType1Font helvetica = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
        for (char c = ' '; c <= '~'; c++) {
            String text = "" + c;
            assertThat(TextWidths.mm(text, 1000)).as(text).isGreaterThan(helvetica.getStringWidth(text) - 1e-6);
        }
    }

    @Test
    void a_text_is_as_wide_as_its_characters_together() {
        assertThat(TextWidths.mm("1950", 3.5)).isCloseTo(4 * 0.636 * 3.5, within(1e-9));
    }

    /** XML 1.0, production 2: what is no character of a document. */
    @Test
    void what_a_document_cannot_hold_is_told_instead() {
        assertThat(Lettering.plain("a\u0000b\uffffc\u202ed")).isEqualTo("a[U+0000]b[U+FFFF]c[U+202E]d");
    }

    @Test
    void what_is_too_long_ends_with_an_ellipsis_and_fits() {
        String shown = Lettering.fitted("W".repeat(80), 30, Lettering.SIZE);
        assertThat(shown).endsWith("…").hasSizeLessThan(20);
        assertThat(TextWidths.mm(shown, Lettering.SIZE)).isLessThanOrEqualTo(30);
        assertThat(Lettering.fitted("P1", 30, Lettering.SIZE)).isEqualTo("P1");
    }
}
