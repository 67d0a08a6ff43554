package org.deckplanreview.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.TakenRow;
import org.deckplanreview.ruleset.Citation;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Source;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Where a provision stands.
 *
 * @param clause in the source's own numbering
 * @param setBy where the values that its calculation uses, or the rows that its look-up takes, come from
 */
public record ReportedCitation(CitedSource source, Optional<String> clause, Confirmed confirmed, List<SetBy> setBy) {
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
     * @param confirmed how it was confirmed; by memory if any part of it was
     */
    public record SetBy(String parameter, String source, Confirmation confirmed) {
        static SetBy of(String parameter, Parameters parameters) {
            return new SetBy(
                    parameter, parameters.source(parameter), Confirmation.of(parameters.confirmedBy(parameter)));
        }

        static SetBy of(TakenRow row) {
            return new SetBy(row.table() + ", " + row.row(), row.source(), row.confirmedBy());
        }
    }

    static ReportedCitation of(Citation citation, List<SetBy> setBy) {
        Source source = citation.source();
        return new ReportedCitation(
                new CitedSource(source.title(), source.edition(), source.publisher()),
                Optional.of(citation.clause()).filter(c -> !c.isBlank()),
                new Confirmed(citation.confirmedBy(), citation.on()),
                setBy);
    }
}
