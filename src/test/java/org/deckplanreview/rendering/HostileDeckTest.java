package org.deckplanreview.rendering;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.deckplanreview.rendering.drawing.Drawing;
import org.deckplanreview.rendering.drawing.DrawingKind;
import org.deckplanreview.rendering.drawing.Drawings;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.rendering.html.Form;
import org.deckplanreview.rendering.html.HtmlRendering;
import org.deckplanreview.rendering.pdf.PdfRendering;
import org.deckplanreview.rendering.pdf.ReadPdf;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

/** One deck whose every label comes from an enemy, in every form that people read. */
class HostileDeckTest {
    private static final int LONGEST = 80;

    private static DrawnDeck deck(String label) {
        return ReviewedDecks.sample("many-faults", submission -> {
            submission.put("reference", label).put("title", label);
            relabel(submission, label);
        });
    }

    private static void relabel(JsonNode node, String label) {
        if (node instanceof ObjectNode object && object.has("label")) {
            object.put("label", label);
        }
        node.forEach(child -> relabel(child, label));
    }

    private static Document parsed(String markup) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(markup.getBytes(StandardCharsets.UTF_8)));
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private static void isHarmlessText(String markup, String label) {
        Document document = parsed(markup);
        assertThat(document.getDocumentElement().getTextContent()).contains(label);
        for (String element : new String[] {"script", "img", "b"}) {
            assertThat(document.getElementsByTagNameNS("*", element).getLength())
                    .as(element)
                    .isZero();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script><script>alert(2)</script><script>alert(3)</script>12345",
                "]]></text></svg></style></title>--><img src=x onerror=alert(1)><b>&amp;&#60;&lt;",
                "=1+1+cmd|' /C calc'!A0 \"double\" 'single' `back` ${expression} {template} {#if}"
            })
    void a_label_is_only_text_wherever_it_is_read(String label) throws IOException {
        assertThat(label).hasSizeLessThanOrEqualTo(LONGEST);
        DrawnDeck deck = deck(label);

        assertThat(ReadPdf.unbroken(TextRendering.render(deck.report(), WorkingShown.GOVERNING)))
                .contains(ReadPdf.unbroken(label));
        isHarmlessText(HtmlRendering.render(deck, Form.SCREEN), label);
        for (DrawingKind kind : DrawingKind.values()) {
            for (Drawing drawing : Drawings.of(kind, deck)) {
                isHarmlessText(drawing.svg(), label);
            }
        }
        try (ReadPdf pdf = ReadPdf.of(PdfRendering.render(deck))) {
            assertThat(pdf.unbroken()).contains(ReadPdf.unbroken(label));
            doesNothing(pdf);
        }
    }

    /** Nothing runs, and links lead to places in the document alone. */
    private static void doesNothing(ReadPdf pdf) throws IOException {
        assertThat(pdf.document().getDocumentCatalog().getNames()).isNull();
        assertThat(pdf.document().getDocumentCatalog().getOpenAction()).isNull();
        for (PDPage page : pdf.document().getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                assertThat(annotation).isInstanceOf(PDAnnotationLink.class);
                assertThat(((PDAnnotationLink) annotation).getAction()).isInstanceOf(PDActionGoTo.class);
            }
        }
    }
}
