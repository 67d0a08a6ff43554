package org.deckplanreview.measure;

/** A length in mm, whatever unit the document was written in. */
public record Length(double mm) {
    public static Length ofMm(double mm) {
        return new Length(mm);
    }
}
