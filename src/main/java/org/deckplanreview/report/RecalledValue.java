package org.deckplanreview.report;

import java.util.List;

/**
 * Something that was recalled from memory, to be checked in its document before anyone relies on it.
 *
 * @param value the title of a provision, what a parameter means, or which row of a table
 * @param source document and place; who set it where a nation or office did
 * @param provisions ids of those that rest on it; empty where all calculations or the site schedule do
 */
public record RecalledValue(String value, String source, List<String> provisions) {
    public RecalledValue {
        provisions = List.copyOf(provisions);
    }
}
