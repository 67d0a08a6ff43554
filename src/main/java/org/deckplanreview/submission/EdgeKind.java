package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** What lies beside an edge. A submission describes the first three; where a stair leaves follows from the stair's line. */
public enum EdgeKind implements Worded {
    OPEN("open"),
    WALL("wall"),
    PLATFORM("platform"),
    STAIR("stair");

    private final String word;

    EdgeKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
