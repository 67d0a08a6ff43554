package org.deckplanreview.ruleset;

/** A document that provisions and values come from. {@code key} is how the ruleset's files call it. */
public record Source(String key, String title, String edition, String publisher, Standing standing) {

    /** How a citation calls it: by its edition where that names the document, as a standard's does, otherwise by title too. */
    String designation() {
        boolean named = !edition.isEmpty() && Character.isUpperCase(edition.charAt(0));
        return named ? edition : edition.isEmpty() ? title : title + ", " + edition;
    }
}
