package org.deckplanreview.comparison;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;

/**
 * What a change of edition does to one submission. Texts that come from the submission are untrusted.
 *
 * @param notice what this is and is not
 * @param from region and edition, for example {@code uk-england/2014}
 * @param to likewise
 * @param gotWorse whether there is more to do under the second edition: the outcome is worse, or any finding is
 * @param gotBetter whether there is less to do, and nothing is worse
 * @param findings those that changed
 * @param given what of it only one of the editions reads
 */
public record SubmissionComparison(
        String notice,
        String reference,
        Optional<String> title,
        LocalDate reviewOn,
        String from,
        String to,
        OutcomeChange outcome,
        boolean gotWorse,
        boolean gotBetter,
        Counts counts,
        List<FindingChange> findings,
        ReadChange given,
        Provenance provenance) {
    public SubmissionComparison {
        findings = List.copyOf(findings);
    }

    /** The outcomes under the two editions. */
    public record OutcomeChange(Transition transition, Determination before, Determination after) {
        static OutcomeChange of(Determination before, Determination after) {
            return new OutcomeChange(Transition.of(before, after), before, after);
        }
    }

    /** Findings by transition. Subjects whose findings change alike count as one. */
    public record Counts(
            long worse, @JsonProperty("new") long added, long changed, long better, long gone, long unchanged) {
        static final Counts NONE = new Counts(0, 0, 0, 0, 0, 0);

        Counts plus(Counts o) {
            return new Counts(
                    worse + o.worse,
                    added + o.added,
                    changed + o.changed,
                    better + o.better,
                    gone + o.gone,
                    unchanged + o.unchanged);
        }

        Counts plus(Transition transition) {
            return plus(
                    switch (transition) {
                        case WORSE -> new Counts(1, 0, 0, 0, 0, 0);
                        case NEW -> new Counts(0, 1, 0, 0, 0, 0);
                        case CHANGED -> new Counts(0, 0, 1, 0, 0, 0);
                        case BETTER -> new Counts(0, 0, 0, 1, 0, 0);
                        case GONE -> new Counts(0, 0, 0, 0, 1, 0);
                        case UNCHANGED -> new Counts(0, 0, 0, 0, 0, 1);
                    });
        }
    }

    /**
     * Where it comes from. Digests are written {@code sha256:…}.
     *
     * @param service version of the service
     * @param received digest of the bytes received
     * @param submission digest of the submission's canonical form (RFC 8785)
     * @param from digest of the first edition
     * @param to digest of the second edition
     */
    public record Provenance(String service, String received, String submission, String from, String to) {}
}
