package org.deckplanreview.method.en1995;

import java.util.Arrays;
import java.util.List;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Which of the two alternative imposed loads a check is made for. */
enum Loading {
    UNIFORM("uniform"),
    CONCENTRATED("concentrated"),
    EITHER("either");

    static final ParameterDescription PARAMETER = ParameterDescription.word(
            "loading",
            "uniform: combinations without the concentrated load; concentrated: those with it; either: all of them");

    private final String word;

    Loading(String word) {
        this.word = word;
    }

    /** As tables of loading name it. */
    String word() {
        return word;
    }

    static Loading of(Parameters parameters) {
        String word = parameters.word(PARAMETER.name());
        return Arrays.stream(values())
                .filter(l -> l.word.equals(word))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("loading is uniform, concentrated or either, not '" + word + "'"));
    }

    /** The combinations of this loading. */
    List<Combination> filter(List<Combination> combinations) {
        return combinations.stream()
                .filter(c -> this == EITHER || c.isConcentrated() == (this == CONCENTRATED))
                .toList();
    }
}
