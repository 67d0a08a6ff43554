package org.deckplanreview.report;

import java.util.Arrays;
import java.util.Optional;
import org.deckplanreview.kernel.Worded;

/** How much of a report is written as JSON. */
public enum Detail implements Worded {
    /** All of it. */
    FULL("full"),
    /** The outcome, and of each finding that applies what was found and what is allowed, wanted or advised. */
    SUMMARY("summary");

    private final String word;

    Detail(String word) {
        this.word = word;
    }

    public static Optional<Detail> ofWord(String word) {
        return Arrays.stream(values()).filter(d -> d.word.equals(word)).findFirst();
    }

    @Override
    public String word() {
        return word;
    }

    /** So that the command line's help prints the words as they are. */
    @Override
    public String toString() {
        return word;
    }
}
