package org.deckplanreview.method.en1995;

import java.util.Arrays;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** What holds the upper edge of a member sideways, 6.3.3(5). */
enum SideRestraint {
    BOARDS("boards"),
    JOISTS("joists"),
    NONE("none");

    static final ParameterDescription PARAMETER = ParameterDescription.word(
                    "sideRestraint",
                    "what holds the upper edge sideways: boards (all along), joists (where they bear) or none; the lower edge is"
                            + " never taken as held")
            .rising("boards", "joists", "none");

    private final String word;

    SideRestraint(String word) {
        this.word = word;
    }

    static SideRestraint of(Parameters parameters) {
        String word = parameters.word(PARAMETER.name());
        return Arrays.stream(values())
                .filter(r -> r.word.equals(word))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("sideRestraint is boards, joists or none, not '" + word + "'"));
    }
}
