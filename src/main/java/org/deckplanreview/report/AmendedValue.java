package org.deckplanreview.report;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.ruleset.Amendment;
import org.deckplanreview.ruleset.ChangedValue;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Edition;

/**
 * A value that an amendment changed.
 *
 * @param what it is, in plain words
 * @param provision id of the provision whose value it is; empty for loads, values of standards and values of the site
 * @param was what it replaced; empty where there was nothing
 * @param is what holds; empty where nothing does any more
 * @param strictness its word
 * @param setBy name of the amendment
 */
public record AmendedValue(
        String what,
        Optional<String> provision,
        Optional<Side> was,
        Optional<Side> is,
        String strictness,
        String setBy) {

    /**
     * @param value in the words and units of its document
     * @param source document and clause
     * @param standing its word
     * @param confirmed how it was confirmed
     */
    public record Side(String value, String source, String standing, Confirmation confirmed) {
        private static Side of(ChangedValue.Side side) {
            return new Side(
                    side.text(),
                    side.citation().text(),
                    side.citation().source().standing().word(),
                    side.citation().confirmedBy());
        }
    }

    /** What amendments changed in an edition, in the order in which they were laid over it. */
    public static List<AmendedValue> of(Edition edition) {
        return edition.amendments().stream()
                .flatMap(applied -> applied.values().stream().map(v -> of(v, applied.amendment())))
                .toList();
    }

    private static AmendedValue of(Amendment.Value value, Amendment amendment) {
        ChangedValue change = value.change();
        return new AmendedValue(
                change.what() + change.standard().map(s -> " of " + s).orElse(""),
                value.provision(),
                change.was().map(Side::of),
                change.is().map(Side::of),
                change.strictness().word(),
                amendment.name());
    }
}
