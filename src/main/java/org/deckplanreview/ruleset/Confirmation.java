package org.deckplanreview.ruleset;

import java.util.stream.Stream;
import org.deckplanreview.kernel.Worded;

/** How a value was confirmed. */
public enum Confirmation implements Worded {
    PAGE("page"),
    SECONDARY_PAGE("secondary page"),
    /** Practice of the site or the office: no publication can confirm it. */
    PRACTICE("practice"),
    COMPUTED("computed"),
    MEMORY("memory");

    private final String word;

    Confirmation(String word) {
        this.word = word;
    }

    /** @throws IllegalArgumentException if there is no such word */
    public static Confirmation of(String word) {
        return Stream.of(values())
                .filter(c -> c.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Nothing is confirmed by '" + word + "'"));
    }

    @Override
    public String word() {
        return word;
    }
}
