package org.deckplanreview.rendering.drawing;

import java.util.List;
import java.util.function.Predicate;

/** The smaller sheet at a scale that shows a frame well, else the larger one; always the largest picture that has room. */
record Fit(SheetFormat format, Scale scale) {

    /** On the smaller sheet nothing is drawn smaller than this. */
    private static final double SMALLEST_ON_A4 = 50;

    /**
     * @param widthMm of what is drawn, in its own size
     * @param aroundWidthMm room beside it on the sheet, for dimensions and labels
     */
    static Fit of(List<Scale> scales, double widthMm, double heightMm, double aroundWidthMm, double aroundHeightMm) {
        for (SheetFormat format : SheetFormat.values()) {
            Box area = format.area();
            Predicate<Scale> fits = s -> s.onSheet(widthMm) + aroundWidthMm <= 2 * area.halfLength()
                    && s.onSheet(heightMm) + aroundHeightMm <= 2 * area.halfHeight();
            for (Scale scale : scales) {
                if (fits.test(scale) && (format != SheetFormat.A4 || scale.divisor() <= SMALLEST_ON_A4)) {
                    return new Fit(format, scale);
                }
            }
        }
        return new Fit(SheetFormat.A3, scales.get(scales.size() - 1));
    }
}
