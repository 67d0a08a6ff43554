package org.deckplanreview.ruleset;

/** Reads how a value was confirmed, which must suit its source: practice can be confirmed as practice, a document cannot. */
final class Confirming {

    private Confirming() {}

    /** What a {@code confirmed} entry says; a word that does not suit the source is told. */
    static Confirmation read(Entry confirmed, Source source) {
        Entry by = confirmed.member("by");
        Confirmation confirmation = by.worded(Confirmation.class);
        tellUnsuited(by, confirmation, source);
        return confirmation;
    }

    /** Tells a row of a table that was confirmed in a way that does not suit its source. */
    static void check(GridRow row, Source source) {
        row.confirmedBy().ifPresent(by -> tellUnsuited(row.entry(), by, source));
    }

    private static void tellUnsuited(Entry entry, Confirmation by, Source source) {
        boolean isPractice = source.standing() == Standing.COMMON_PRACTICE;
        if (by == Confirmation.MEMORY && isPractice) {
            entry.fault(
                    "'" + source.key() + "' is common practice, which cannot be recalled from a document",
                    Confirmation.PRACTICE.word() + ", or the document that says so");
        }
        if (by == Confirmation.PRACTICE && !isPractice) {
            entry.fault(
                    "'" + source.key() + "' is no common practice, and only common practice is confirmed by practice",
                    "page, secondary page, computed or memory");
        }
    }
}
