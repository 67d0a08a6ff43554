package org.deckplanreview.rendering.drawing;

/** How a part is marked by the findings on it. */
enum Mark {
    NONE(""),
    /** It does not follow a recommendation. */
    ADVISED(" not-as-recommended"),
    /** It does not comply with a requirement. */
    FAILING(" does-not-comply");

    private final String cssClass;

    Mark(String cssClass) {
        this.cssClass = cssClass;
    }

    /** A class that tells the kind of part and the mark. */
    String css(String kind) {
        return kind + cssClass;
    }

    Pen pen(Pen usual) {
        if (this != FAILING) {
            return usual;
        }
        return usual == Pen.HIDDEN ? Pen.FAILING_HIDDEN : Pen.FAILING;
    }
}
