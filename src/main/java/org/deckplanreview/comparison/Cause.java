package org.deckplanreview.comparison;

import java.util.Optional;
import org.deckplanreview.kernel.Worded;

/**
 * What in the editions makes a finding another one.
 *
 * @param provision whose difference it is; empty where it is no provision's
 * @param effect of the provision's difference; empty across regions, where provisions are not held against each other
 */
public record Cause(Kind kind, Optional<String> provision, Optional<Effect> effect) {

    /** Where the difference lies. */
    public enum Kind implements Worded {
        /** The provision itself asks for something else. */
        PROVISION("provision"),
        /** The provision is the same; the loads, or values of the site, that an edition sets are not. */
        LOADS("loads"),
        /** Another region's ruleset. */
        RULESET("ruleset"),
        /** The editions do not differ in what bears on it. */
        UNTOLD("not told");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    static Cause of(ProvisionDifference difference) {
        return new Cause(Kind.PROVISION, Optional.of(difference.provision()), Optional.of(difference.effect()));
    }

    static Cause ofRuleset(String provision) {
        return new Cause(Kind.RULESET, Optional.of(provision), Optional.empty());
    }

    static Cause withoutProvision(Kind kind) {
        return new Cause(kind, Optional.empty(), Optional.empty());
    }

    /** By which causes are told apart and put in order. */
    String key() {
        return provision.orElse(kind.word());
    }
}
