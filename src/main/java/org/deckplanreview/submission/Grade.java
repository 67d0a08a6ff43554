package org.deckplanreview.submission;

/** Visual grades of structural lumber, strongest first. */
public enum Grade implements Worded {
    SELECT_STRUCTURAL("select-structural"),
    NO_1("no.1"),
    NO_2("no.2"),
    NO_3("no.3");

    private final String word;

    Grade(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
