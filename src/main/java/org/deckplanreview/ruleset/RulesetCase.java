package org.deckplanreview.ruleset;

import java.util.Optional;
import org.deckplanreview.kernel.Pointer;

/**
 * A case that proves a provision.
 *
 * @param line where it stands in its file, from 1
 * @param provision its id
 * @param base name of a sample's file
 * @param patch a JSON array of operations of JSON Patch (RFC 6902), empty for the sample as it is
 * @param source of the expectation: document and clause, or how it was worked out
 */
public record RulesetCase(
        String name, int line, String provision, String base, String patch, Expectation expect, String source) {

    /**
     * What the provision must come to.
     *
     * @param subject the part of the patched sample
     * @param determination one of its words
     * @param found token, where the case checks it
     * @param allowed token, likewise
     * @param needs the member that must be asked for, likewise
     */
    public record Expectation(
            Pointer subject,
            String determination,
            Optional<String> found,
            Optional<String> allowed,
            Optional<Pointer> needs) {}
}
