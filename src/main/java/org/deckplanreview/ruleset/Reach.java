package org.deckplanreview.ruleset;

import java.util.List;

/**
 * How far provisions reach. Beyond it they say neither that a design complies nor that it does not.
 *
 * @param name by which provisions name it
 * @param beyond each case that they do not cover
 * @param citation where the document says so
 */
public record Reach(String name, List<Beyond> beyond, Citation citation) {
    public Reach {
        beyond = List.copyOf(beyond);
    }

    /**
     * A case that is not covered.
     *
     * @param reason a clause of a sentence, in lower case and without its full stop
     */
    public record Beyond(Condition when, String reason) {}
}
