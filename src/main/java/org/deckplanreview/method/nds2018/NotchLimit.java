package org.deckplanreview.method.nds2018;

import java.util.Optional;
import org.deckplanreview.layout.Member;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Notches;

/** Where sawn lumber in bending may be notched, 4.4.3: at its ends, and in the outer thirds of a single span. */
final class NotchLimit {

    private NotchLimit() {}

    static Optional<Evaluation> exceeded(Member member) {
        return member.endNotch().isPresent() && Notches.goesOnOverASupport(member)
                ? Optional.of(new Evaluation.OutOfScope(
                        "It is notched over a support beyond which it goes on; notches are permitted at ends and in single"
                                + " spans alone",
                        "4.4.3"))
                : Optional.empty();
    }
}
