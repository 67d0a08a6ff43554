package org.deckplanreview.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.ruleset.Binding;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Source;
import org.deckplanreview.ruleset.Standing;
import org.deckplanreview.submission.Submission;

/**
 * The edition that was reviewed against.
 *
 * @param edition its name, for example {@code 2024}
 * @param inForce empty for an edition that binds only where it is adopted
 * @param published empty for an edition that is in force by date
 * @param pickedBy empty where the day of the review picked it
 * @param amendments what was laid over it, in order
 * @param amendedValues what these changed
 * @param bases the files that it shares with other editions
 * @param basedOn the standards that it takes values from
 */
public record ReportedEdition(
        String region,
        String regionTitle,
        String edition,
        String title,
        Optional<InForce> inForce,
        Optional<LocalDate> published,
        Optional<PickedBy> pickedBy,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<ReportedAmendment> amendments,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<AmendedValue> amendedValues,
        List<Base> bases,
        List<BasedOn> basedOn) {
    public ReportedEdition {
        amendments = List.copyOf(amendments);
        amendedValues = List.copyOf(amendedValues);
        bases = List.copyOf(bases);
        basedOn = List.copyOf(basedOn);
    }

    /**
     * @param from first day
     * @param until last day; empty while it is in force
     */
    public record InForce(LocalDate from, Optional<LocalDate> until) {
        private static Optional<InForce> of(Binding binding) {
            return binding instanceof Binding.ByDate date
                    ? Optional.of(new InForce(date.from(), date.until()))
                    : Optional.empty();
        }
    }

    /** @param digest of the file */
    public record Base(String title, String digest) {}

    /**
     * @param edition of the document
     * @param digest of the file that holds its values
     */
    public record BasedOn(String title, String edition, String publisher, Standing standing, String digest) {
        private static BasedOn of(Edition.BasedOn basis) {
            Source source = basis.source();
            return new BasedOn(source.title(), source.edition(), source.publisher(), source.standing(), basis.digest());
        }
    }

    static ReportedEdition of(Edition edition, Submission submission) {
        return new ReportedEdition(
                edition.region(),
                edition.regionTitle(),
                edition.name(),
                edition.title(),
                InForce.of(edition.binding()),
                edition.binding() instanceof Binding.AsAdopted adopted
                        ? Optional.of(adopted.published())
                        : Optional.empty(),
                Optional.of(PickedBy.of(submission, edition)).filter(by -> by != PickedBy.DAY),
                edition.amendments().stream()
                        .map(applied -> ReportedAmendment.of(applied.amendment(), edition))
                        .toList(),
                AmendedValue.of(edition),
                edition.bases().stream()
                        .map(b -> new Base(b.title(), b.digest()))
                        .toList(),
                edition.basedOn().stream().map(BasedOn::of).toList());
    }
}
