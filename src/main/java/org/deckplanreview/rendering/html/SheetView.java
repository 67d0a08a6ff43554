package org.deckplanreview.rendering.html;

import io.quarkus.qute.RawString;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.deckplanreview.rendering.drawing.Drawing;

/**
 * A drawing on the page.
 *
 * @param size name of the sheet's size
 * @param svg markup
 */
public record SheetView(String name, String title, String size, RawString svg) {
    private static final Pattern ROOT =
            Pattern.compile("\\A<svg[^>]* width=\"(\\d+)mm\" height=\"(\\d+)mm\" viewBox=\"0 0 \\1 \\2\"");
    private static final Pattern DESCRIPTION = Pattern.compile("<desc[^>]*>([^<]*)</desc>");
    private static final Pattern FONTS = Pattern.compile("font-family=\"[^\"]*\"");

    /** Kept free below the sheet's frame for the footer of the page. */
    private static final int FOOTER_MM = 9;

    static SheetView of(Drawing drawing, Form form) {
        Matcher root = ROOT.matcher(drawing.svg());
        if (!root.find()) {
            throw new IllegalStateException("A sheet states its size in mm: " + drawing.name());
        }
        int height = Integer.parseInt(root.group(2));
        String svg = form == Form.SCREEN ? drawing.svg() : onPaper(drawing, root, height - FOOTER_MM);
        return new SheetView(drawing.name(), drawing.title(), "sheet-" + root.group(1), new RawString(svg));
    }

    /** As the drawing escapes it. */
    private static String described(Drawing drawing) {
        Matcher description = DESCRIPTION.matcher(drawing.svg());
        return HarmlessText.escaped(drawing.title())
                + (description.find() ? ". " + description.group(1).replace("\"", "&quot;") : "");
    }

    /** True to scale, in the font that the document embeds, without the sheet's empty lower margin. */
    private static String onPaper(Drawing drawing, Matcher root, int heightMm) {
        String width = root.group(1);
        String head = "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" alt=\""
                + described(drawing) + "\" width=\"" + width + "mm\" height=\"" + heightMm
                + "mm\" viewBox=\"0 0 " + width + " " + heightMm + "\"";
        return FONTS.matcher(head + drawing.svg().substring(root.end())).replaceAll("font-family=\"DejaVu Sans\"");
    }
}
