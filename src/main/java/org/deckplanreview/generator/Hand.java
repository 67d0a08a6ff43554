package org.deckplanreview.generator;

/** Who draws: by which practice, how carefully, and on which sheet. */
record Hand(Practice practice, Care care, Chance chance, Sheet sheet) {

    /** Whether this choice is a bad one. */
    boolean slips() {
        return care.slips(chance);
    }

    /** Whether this member is left out. */
    boolean omits() {
        return care.omits(chance);
    }

    <T> T choice(T sound, T faulty) {
        return slips() ? faulty : sound;
    }

    /** A resistance or load as the practice's makers print it. */
    String printed(String metric, String imperial) {
        return practice.isAmerican() ? imperial : metric;
    }
}
