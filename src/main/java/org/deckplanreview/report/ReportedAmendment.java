package org.deckplanreview.report;

import org.deckplanreview.ruleset.Amendment;
import org.deckplanreview.ruleset.Edition;

/**
 * An amendment that was laid over the edition.
 *
 * @param amendment its name
 * @param adopts whether it makes the edition binding
 * @param digest of its file
 */
public record ReportedAmendment(String amendment, String title, boolean adopts, String digest) {

    static ReportedAmendment of(Amendment amendment, Edition edition) {
        return new ReportedAmendment(
                amendment.name(),
                amendment.title(),
                amendment.adopts().filter(edition.name()::equals).isPresent(),
                amendment.digest());
    }
}
