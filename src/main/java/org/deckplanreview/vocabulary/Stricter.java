package org.deckplanreview.vocabulary;

/** Which way a parameter's number goes when a provision asks for more. */
public enum Stricter {
    HIGHER,
    LOWER,
    /** It depends on the case, or nobody has said. */
    UNTOLD
}
