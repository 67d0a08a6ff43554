package org.deckplanreview.vocabulary;

/** What a quantity or parameter is. */
public enum ValueType {
    NUMBER,
    WORD,
    FLAG,
    TABLE
}
