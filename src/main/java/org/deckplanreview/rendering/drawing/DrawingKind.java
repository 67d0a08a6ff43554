package org.deckplanreview.rendering.drawing;

import java.util.Arrays;
import java.util.Optional;
import org.deckplanreview.kernel.Worded;

/** What a drawing shows. */
public enum DrawingKind implements Worded {
    PLAN("plan"),
    SECTION("section"),
    MEMBERS("members");

    private final String word;

    DrawingKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    public static Optional<DrawingKind> ofWord(String word) {
        return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
    }
}
