package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** A pad that carries the post on top, concrete in which the post is embedded, or a precast block on which joists lie. */
public enum FootingKind implements Worded {
    PAD("pad"),
    EMBEDDED_POST("embedded-post"),
    BLOCK("block");

    private final String word;

    FootingKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
