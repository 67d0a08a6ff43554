package org.deckplanreview.submission;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;

/**
 * One deck on one site, as submitted. Lists keep the document's order, so that an index is the pointer's index.
 *
 * @param reviewOn the day that picks the edition in force
 */
public record Submission(
        String reference,
        Optional<String> title,
        LengthUnit units,
        LocalDate reviewOn,
        RulesetChoice ruleset,
        Use use,
        Site site,
        List<Timber> timbers,
        List<Platform> platforms,
        Protection protection,
        Optional<SiteMeasurements> siteMeasurements) {
    public Submission {
        timbers = List.copyOf(timbers);
        platforms = List.copyOf(platforms);
    }

    /** The same deck on a site of which something else is known. */
    public Submission with(Site other) {
        return ReadLog.copied(
                this,
                new Submission(
                        reference,
                        title,
                        units,
                        reviewOn,
                        ruleset,
                        use,
                        other,
                        timbers,
                        platforms,
                        protection,
                        siteMeasurements));
    }

    /** The index in {@link #timbers()} of the timber of that id; a submission that was read has it. */
    public int timberIndex(String id) {
        for (int i = 0; i < timbers().size(); i++) {
            if (timbers().get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("No timber " + id);
    }

    public Timber timber(String id) {
        return timbers().get(timberIndex(id));
    }

    public Pointer timberPointer(String id) {
        return Pointer.of("/timbers").child(timberIndex(id));
    }
}
