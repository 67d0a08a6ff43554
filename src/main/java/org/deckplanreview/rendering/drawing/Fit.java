package org.deckplanreview.rendering.drawing;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/** The smaller sheet at a scale that shows a frame well, else the larger one; always the largest picture that has room. */
record Fit(SheetFormat format, Scale scale) {

    /** On the smaller sheet nothing is drawn smaller than this. */
    private static final double SMALLEST_ON_A4 = 50;

    /**
     * @param good divisor of a scale up to which the larger sheet is taken rather than a smaller picture
     * @param widthMm of what is drawn, in its own size
     * @param aroundWidthMm room beside it on the sheet, for dimensions and labels
     */
    static Fit of(
            List<Scale> scales,
            double good,
            double widthMm,
            double heightMm,
            double aroundWidthMm,
            double aroundHeightMm) {
        BiPredicate<SheetFormat, Scale> fits =
                (f, s) -> s.onSheet(widthMm) + aroundWidthMm <= 2 * f.area().halfLength()
                        && s.onSheet(heightMm) + aroundHeightMm <= 2 * f.area().halfHeight();
        return Stream.of(
                        largest(scales, SheetFormat.A4, good, fits),
                        largest(scales, SheetFormat.A3, good, fits),
                        largest(scales, SheetFormat.A4, SMALLEST_ON_A4, fits),
                        largest(scales, SheetFormat.A3, Double.POSITIVE_INFINITY, fits))
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(new Fit(SheetFormat.A3, scales.get(scales.size() - 1)));
    }

    private static Optional<Fit> largest(
            List<Scale> scales, SheetFormat format, double smallest, BiPredicate<SheetFormat, Scale> fits) {
        return scales.stream()
                .filter(s -> s.divisor() <= smallest && fits.test(format, s))
                .findFirst()
                .map(s -> new Fit(format, s));
    }
}
