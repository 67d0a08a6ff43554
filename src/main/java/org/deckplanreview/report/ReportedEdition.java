package org.deckplanreview.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Source;
import org.deckplanreview.ruleset.Standing;

/**
 * The edition that was reviewed against.
 *
 * @param edition its name, for example {@code 2024}
 * @param bases the files that it shares with other editions
 * @param basedOn the standards that it takes values from
 */
public record ReportedEdition(
        String region,
        String regionTitle,
        String edition,
        String title,
        InForce inForce,
        List<Base> bases,
        List<BasedOn> basedOn) {
    public ReportedEdition {
        bases = List.copyOf(bases);
        basedOn = List.copyOf(basedOn);
    }

    /**
     * @param from first day
     * @param until last day; empty while it is in force
     */
    public record InForce(LocalDate from, Optional<LocalDate> until) {}

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

    static ReportedEdition of(Edition edition) {
        return new ReportedEdition(
                edition.region(),
                edition.regionTitle(),
                edition.name(),
                edition.title(),
                new InForce(edition.from(), edition.until()),
                edition.bases().stream()
                        .map(b -> new Base(b.title(), b.digest()))
                        .toList(),
                edition.basedOn().stream().map(BasedOn::of).toList());
    }
}
