package org.deckplanreview.rendering.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;

/** A PDF read back. */
public record ReadPdf(PDDocument document) implements AutoCloseable {

    public static ReadPdf of(byte[] bytes) throws IOException {
        return new ReadPdf(Loader.loadPDF(bytes));
    }

    /** The lines of a page, counted from 1. */
    String page(int number) throws IOException {
        PDFTextStripper stripper = stripper();
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        return stripper.getText(document);
    }

    /** The text of all pages without white space, which lines are broken at. */
    public String unbroken() throws IOException {
        return unbroken(stripper().getText(document));
    }

    private static PDFTextStripper stripper() {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        return stripper;
    }

    public static String unbroken(String text) {
        return text.replaceAll("\\s", "");
    }

    List<String> bookmarks() {
        List<String> titles = new ArrayList<>();
        for (PDOutlineItem item :
                document.getDocumentCatalog().getDocumentOutline().children()) {
            titles.add(item.getTitle());
        }
        return titles;
    }

    List<PDFont> fonts() throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            collect(page.getResources(), fonts);
        }
        return fonts;
    }

    private static void collect(PDResources resources, List<PDFont> fonts) throws IOException {
        for (COSName name : resources.getFontNames()) {
            fonts.add(resources.getFont(name));
        }
        for (COSName name : resources.getXObjectNames()) {
            PDXObject object = resources.getXObject(name);
            if (object instanceof PDFormXObject form && form.getResources() != null) {
                collect(form.getResources(), fonts);
            }
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
