package org.deckplanreview.rendering.drawing;

/** Sheets of ISO 5457, lying, with a border of 20 mm for filing and of 10 mm elsewhere. */
enum SheetFormat {
    A4(297, 210, 74),
    A3(420, 297, 92);

    private static final double FILING = 20;
    private static final double BORDER = 10;

    /** Height of the title block. */
    static final double TITLE = 24;

    private final double widthMm;
    private final double heightMm;
    private final double columnMm;

    SheetFormat(double widthMm, double heightMm, double columnMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.columnMm = columnMm;
    }

    double widthMm() {
        return widthMm;
    }

    double heightMm() {
        return heightMm;
    }

    Box frame() {
        return Box.upright(FILING, BORDER, widthMm - FILING - BORDER, heightMm - 2 * BORDER);
    }

    /** Where the drawing stands. */
    Box area() {
        Box f = frame();
        return Box.upright(f.left(), f.top(), 2 * f.halfLength() - columnMm, 2 * f.halfHeight() - TITLE);
    }

    /** Where the drawing stands on a sheet without a column of text. */
    Box wideArea() {
        Box f = frame();
        return Box.upright(f.left(), f.top(), 2 * f.halfLength(), 2 * f.halfHeight() - TITLE);
    }

    /** Where the keys stand. */
    Box column() {
        Box f = frame();
        return Box.upright(f.right() - columnMm, f.top(), columnMm, 2 * f.halfHeight() - TITLE);
    }

    Box titleBlock() {
        Box f = frame();
        return Box.upright(f.left(), f.bottom() - TITLE, 2 * f.halfLength(), TITLE);
    }
}
