package org.deckplanreview.ruleset;

import java.util.Collection;
import org.deckplanreview.submission.NearestName;

/** The names that could stand where an unknown one does, for messages. */
final class KnownNames {

    private static final int LISTED = 12;

    private KnownNames() {}

    /** What to write instead of an unknown name: all that are known while they are few, and the nearest. */
    static String accepted(String unknown, Collection<String> known) {
        if (known.isEmpty()) {
            return "none, because none is declared";
        }
        String names =
                known.size() <= LISTED ? String.join(", ", known) : "one of the " + known.size() + " known names";
        return NearestName.of(unknown, known)
                .map(name -> names + "; the nearest is '" + name + "'")
                .orElse(names);
    }
}
