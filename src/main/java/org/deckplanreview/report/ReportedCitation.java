package org.deckplanreview.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.TakenRow;
import org.deckplanreview.ruleset.Citation;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Source;

/**
 * Where a provision stands.
 *
 * @param clause in the source's own numbering
 * @param reservation what the reader must do before relying on it
 * @param setBy where the values that its calculation uses, or the rows that its look-up takes, come from
 */
public record ReportedCitation(
        CitedSource source,
        Optional<String> clause,
        Confirmed confirmed,
        Optional<String> reservation,
        List<SetBy> setBy) {
    private static final String FROM_MEMORY = "recalled from memory: check against the document before relying on it";

    public ReportedCitation {
        setBy = List.copyOf(setBy);
    }

    /** The document. */
    public record CitedSource(String title, String edition, String publisher) {}

    /**
     * @param by how it was confirmed
     * @param on the day
     */
    public record Confirmed(Confirmation by, LocalDate on) {}

    /**
     * Where one value comes from.
     *
     * @param parameter of a calculation; of a look-up, the table and the row
     * @param confirmed how the row of a look-up was confirmed
     * @param reservation what the reader must do before relying on it
     */
    public record SetBy(
            String parameter, String source, Optional<Confirmation> confirmed, Optional<String> reservation) {
        static SetBy of(String parameter, String source, boolean recalled) {
            return new SetBy(parameter, source, Optional.empty(), ReportedCitation.reservation(recalled));
        }

        static SetBy of(TakenRow row) {
            return new SetBy(
                    row.table() + ", " + row.row(),
                    row.source(),
                    Optional.of(row.confirmedBy()),
                    ReportedCitation.reservation(row.confirmedBy() == Confirmation.MEMORY));
        }
    }

    static Optional<String> reservation(boolean recalled) {
        return recalled ? Optional.of(FROM_MEMORY) : Optional.empty();
    }

    static ReportedCitation of(Citation citation, List<SetBy> setBy) {
        Source source = citation.source();
        return new ReportedCitation(
                new CitedSource(source.title(), source.edition(), source.publisher()),
                Optional.of(citation.clause()).filter(c -> !c.isBlank()),
                new Confirmed(citation.confirmedBy(), citation.on()),
                reservation(citation.confirmedBy() == Confirmation.MEMORY),
                setBy);
    }
}
