package org.deckplanreview.rendering.pdf;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.rendering.html.Form;
import org.deckplanreview.rendering.html.HtmlRendering;
import org.deckplanreview.report.Report;

/**
 * A report as tagged PDF with bookmarks and its font embedded. It is dated on the day of the review, at midnight in UTC, so
 * that the same deck gives the same bytes.
 */
public final class PdfRendering {
    private static final String PRODUCER = "Deck Plan Review";

    static {
        // It would tell the console of every style that it skips; what stops it is thrown.
        XRLog.setLoggingEnabled(false);
    }

    private PdfRendering() {}

    public static byte[] render(DrawnDeck deck) {
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .withHtmlContent(HtmlRendering.render(deck, Form.PAPER), null)
                .useSVGDrawer(new BatikSVGDrawer())
                .usePdfUaAccessibility(true)
                .withProducer(PRODUCER);
        EmbeddedFont.register(builder);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                PDDocument document = renderer.createPDFKeepOpen()) {
            return bytes(document, deck.report());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(PDDocument document, Report report) throws IOException {
        PDDocumentInformation about = document.getDocumentInformation();
        about.setCreationDate(midnight(report.reviewOn()));
        about.setModificationDate(midnight(report.reviewOn()));
        document.setDocumentId(report.reviewOn().toEpochDay());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    private static Calendar midnight(LocalDate day) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        calendar.setTimeInMillis(day.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        return calendar;
    }
}
