package org.deckplanreview.submission;

/** A pad that carries the post on top, or concrete in which the post is embedded. */
public enum FootingKind implements Worded {
    PAD("pad"),
    EMBEDDED_POST("embedded-post");

    private final String word;

    FootingKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
