package org.deckplanreview.rendering.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.assertj.core.data.Offset;
import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.report.Report;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** PDFBox, which did not lay it out, reads it back. */
class PdfRenderingTest {
    private static final float LETTER_WIDTH_PT = 8.5f * 72;
    private static final float LETTER_HEIGHT_PT = 11 * 72;

    private static DrawnDeck deck;
    private static byte[] bytes;
    private static ReadPdf read;
    private static PDDocument pdf;

    @BeforeAll
    static void render() throws IOException {
        deck = ReviewedDecks.sample("many-faults");
        bytes = PdfRendering.render(deck);
        read = ReadPdf.of(bytes);
        pdf = read.document();
    }

    @AfterAll
    static void close() throws IOException {
        read.close();
    }

    @Test
    void the_first_page_tells_the_outcome_and_what_to_put_right() throws IOException {
        Report report = deck.report();

        assertThat(read.page(1))
                .contains("Deck plan review: " + report.reference())
                .contains("Outcome: " + report.outcome().word())
                .contains(report.findings().get(0).title());
    }

    @Test
    void every_page_has_its_number_of_all_with_reference_and_digest() throws IOException {
        String digest = deck.report().digest().substring(0, "sha256:".length() + 12);

        assertThat(pdf.getNumberOfPages()).isGreaterThanOrEqualTo(2);
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            assertThat(read.page(page))
                    .contains(deck.report().reference() + " · report " + digest + " · page " + page + " of "
                            + pdf.getNumberOfPages());
        }
    }

    @Test
    void bookmarks_name_the_parts() {
        assertThat(read.bookmarks())
                .containsExactly(
                        "Outcome and what to do first",
                        "Cautions and referrals",
                        "Drawings",
                        "Findings",
                        "Site schedule",
                        "Assumptions",
                        "Provenance");
    }

    @Test
    void a_bookmark_leads_to_the_page_of_its_heading() throws IOException {
        for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
            int page = pdf.getPages().indexOf(item.findDestinationPage(pdf)) + 1;

            assertThat(read.page(page)).as("page %d", page).contains(item.getTitle());
        }
    }

    @Test
    void every_font_is_embedded() throws IOException {
        assertThat(read.fonts())
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.isEmbedded()).as(f.getName()).isTrue());
    }

    /** What PDF/UA-1 (ISO 14289-1, clauses 7.1 and 7.2) asks of the catalogue: marked, a title, a language. */
    @Test
    void it_is_tagged_and_says_what_it_is() {
        assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        assertThat(pdf.getDocumentCatalog().getStructureTreeRoot().getKids()).isNotEmpty();
        assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
        assertThat(pdf.getDocumentInformation().getTitle())
                .isEqualTo("Deck plan review " + deck.report().reference() + ": does not comply");
        assertThat(pdf.getDocumentInformation().getAuthor()).isEqualTo("Deck Plan Review");
    }

    @Test
    void it_is_dated_on_the_day_of_the_review() {
        assertThat(pdf.getDocumentInformation().getCreationDate().toInstant())
                .isEqualTo(deck.report().reviewOn() + "T00:00:00Z");
        assertThat(pdf.getDocumentInformation().getModificationDate().toInstant())
                .isEqualTo(deck.report().reviewOn() + "T00:00:00Z");
    }

    @Test
    void the_same_deck_gives_the_same_bytes_again_and_in_another_place() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));

            assertThat(PdfRendering.render(deck)).isEqualTo(bytes);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void it_is_on_A4_where_the_submission_is_in_mm() {
        assertThat(pdf.getPage(0).getMediaBox().getWidth()).isCloseTo(PDRectangle.A4.getWidth(), within());
        assertThat(pdf.getPage(0).getMediaBox().getHeight()).isCloseTo(PDRectangle.A4.getHeight(), within());
    }

    /** 8.5 by 11 in (ANSI/ASME Y14.1, size A). */
    @Test
    void it_is_on_Letter_where_the_submission_is_in_inches() throws IOException {
        byte[] inches = PdfRendering.render(ReviewedDecks.sample("first-sketch", s -> s.put("units", "in")));
        try (PDDocument letter = Loader.loadPDF(inches)) {
            assertThat(letter.getPage(0).getMediaBox().getWidth()).isCloseTo(LETTER_WIDTH_PT, within());
            assertThat(letter.getPage(0).getMediaBox().getHeight()).isCloseTo(LETTER_HEIGHT_PT, within());
        }
    }

    private static Offset<Float> within() {
        return Offset.offset(0.5f);
    }
}
