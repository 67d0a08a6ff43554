package org.deckplanreview.rendering.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.rendering.drawing.DrawingKind;
import org.deckplanreview.rendering.drawing.Drawings;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.report.Report;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for the PDF of every sample, read back by PDFBox. */
class PdfOfSamplesTest {

    static List<String> samples() {
        return ReviewedDecks.names();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_sample_is_whole_on_paper(String sample) throws IOException {
        DrawnDeck deck = ReviewedDecks.sample(sample);
        Report report = deck.report();
        try (ReadPdf pdf = ReadPdf.of(PdfRendering.render(deck))) {
            PDDocument document = pdf.document();
            int pages = document.getNumberOfPages();
            String text = pdf.unbroken();

            assertThat(text)
                    .contains(ReadPdf.unbroken("Outcome: " + report.outcome().word()))
                    .contains(ReadPdf.unbroken("page " + pages + " of " + pages))
                    .contains(ReadPdf.unbroken(report.digest()));
            report.findings().stream()
                    .filter(f -> f.determination() == Determination.DOES_NOT_COMPLY)
                    .map(f -> ReadPdf.unbroken(f.title() + ": " + f.subject().label()))
                    .forEach(line -> assertThat(text).contains(line));
            assertThat(pages).isGreaterThan(drawings(deck));
            assertThat(pdf.bookmarks()).contains("Outcome and what to do first", "Drawings", "Findings", "Provenance");
            assertThat(pdf.fonts())
                    .isNotEmpty()
                    .allSatisfy(f -> assertThat(f.isEmbedded()).as(f.getName()).isTrue());
            isTaggedAndTitled(document, report);
        }
    }

    private static int drawings(DrawnDeck deck) {
        return List.of(DrawingKind.values()).stream()
                .mapToInt(kind -> Drawings.of(kind, deck).size())
                .sum();
    }

    /** ISO 14289-1, clauses 7.1 and 7.2. */
    private static void isTaggedAndTitled(PDDocument document, Report report) {
        PDDocumentCatalog catalogue = document.getDocumentCatalog();
        assertThat(catalogue.getMarkInfo().isMarked()).isTrue();
        assertThat(catalogue.getStructureTreeRoot().getKids()).isNotEmpty();
        assertThat(catalogue.getLanguage()).isEqualTo("en-GB");
        assertThat(document.getDocumentInformation().getTitle())
                .isEqualTo("Deck plan review " + report.reference() + ": "
                        + report.outcome().word());
    }
}
