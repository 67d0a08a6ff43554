package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Optional;

/**
 * Local or office changes that are laid over an edition of the same region.
 *
 * @param path relative to the rulesets' root
 * @param amends names of the editions that it may be laid over
 * @param adopts the one of them that it makes binding, for editions that bind only as adopted
 * @param digest of its file's content, whatever its layout
 */
public record Amendment(
        String path,
        String region,
        String name,
        String title,
        List<String> amends,
        Optional<String> adopts,
        String digest) {
    public Amendment {
        amends = List.copyOf(amends);
    }

    /** Of a sound file. */
    static Amendment of(Entry root) {
        return new Amendment(
                root.file().path(),
                root.member("region").text(),
                root.member("amendment").text(),
                root.member("title").text(),
                root.member("amends").texts(),
                root.optional("adopts").map(Entry::text),
                CanonicalEdition.digestOf(root.node()));
    }

    /** As laid over an edition, with what it changed there. */
    public record Applied(Amendment amendment, List<Value> values) {
        public Applied {
            values = List.copyOf(values);
        }
    }

    /**
     * One value that it changed.
     *
     * @param provision id of the provision whose value it is; empty for loads, values of standards and values of the site
     */
    public record Value(Optional<String> provision, ChangedValue change) {}
}
