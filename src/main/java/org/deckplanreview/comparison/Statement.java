package org.deckplanreview.comparison;

import java.util.Optional;
import org.deckplanreview.ruleset.ChangedValue;
import org.deckplanreview.ruleset.Citation;
import org.deckplanreview.ruleset.Confirmation;

/**
 * What an edition states, for people.
 *
 * @param citation where it stands; empty for the edition's own words
 */
public record Statement(String text, Optional<Cited> citation) {

    /**
     * Where something stands.
     *
     * @param text document and clause
     * @param confirmed how it was confirmed; what was recalled from memory must be checked against the document
     */
    public record Cited(String text, Confirmation confirmed) {
        private static Cited of(Citation citation) {
            return new Cited(citation.text(), citation.confirmedBy());
        }
    }

    static Statement of(ChangedValue.Side side) {
        return new Statement(side.text(), Optional.of(Cited.of(side.citation())));
    }

    static Statement cited(Citation citation) {
        return new Statement(citation.text(), Optional.of(Cited.of(citation)));
    }

    static Statement ownWords(String text) {
        return new Statement(text, Optional.empty());
    }
}
