package org.deckplanreview.submission;

/** What lies beside an edge. */
public enum EdgeKind implements Worded {
    OPEN("open"),
    WALL("wall"),
    PLATFORM("platform");

    private final String word;

    EdgeKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
