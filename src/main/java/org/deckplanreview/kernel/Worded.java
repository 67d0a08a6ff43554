package org.deckplanreview.kernel;

/** A closed list whose members are written in submissions and rulesets by one word each. */
public interface Worded {
    /** The word, as submissions and rulesets write it. */
    String word();
}
