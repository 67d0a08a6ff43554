package org.deckplanreview.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.ruleset.Citation;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Source;

/**
 * Where a provision stands.
 *
 * @param clause in the source's own numbering
 * @param reservation what the reader must do before relying on it
 * @param setBy where the values that its calculation uses come from
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

    /** Where one value comes from. */
    public record SetBy(String parameter, String source) {}

    static ReportedCitation of(Citation citation, List<SetBy> setBy) {
        Source source = citation.source();
        return new ReportedCitation(
                new CitedSource(source.title(), source.edition(), source.publisher()),
                Optional.of(citation.clause()).filter(c -> !c.isBlank()),
                new Confirmed(citation.confirmedBy(), citation.on()),
                Optional.of(FROM_MEMORY).filter(r -> citation.confirmedBy() == Confirmation.MEMORY),
                setBy);
    }
}
