package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.vocabulary.Parameters;

/**
 * One edition of a region's ruleset, resolved and checked.
 *
 * @param name for example {@code 2024}
 * @param from first day in force
 * @param until last day in force, empty while it is
 * @param bases the files it shares with other editions, in order, each with its digest
 * @param basedOn the standards' files it uses, in order, each with its digest
 * @param sources every source that it cites, in the file's order
 * @param schedule values of site practice, those of {@link
 *     org.deckplanreview.vocabulary.Vocabulary#scheduleParameters()}; without them a report has no site schedule
 * @param cautions that every report under this edition prints
 * @param referrals that every report under this edition prints
 * @param canonical the resolved edition as canonical JSON (RFC 8785), from which the digest is taken
 * @param digest {@code sha256:…} over canonical
 */
public record Edition(
        String region,
        String regionTitle,
        String name,
        String title,
        LocalDate from,
        Optional<LocalDate> until,
        List<Base> bases,
        List<BasedOn> basedOn,
        List<Source> sources,
        LoadRules loads,
        Optional<Parameters> schedule,
        List<Provision> provisions,
        List<String> cautions,
        List<String> referrals,
        List<String> notes,
        String canonical,
        String digest) {
    public Edition {
        bases = List.copyOf(bases);
        basedOn = List.copyOf(basedOn);
        sources = List.copyOf(sources);
        provisions = List.copyOf(provisions);
        cautions = List.copyOf(cautions);
        referrals = List.copyOf(referrals);
        notes = List.copyOf(notes);
    }

    /** A file that several editions build on. {@code path} is relative to the rulesets' root. */
    public record Base(String path, String title, String digest) {}

    /** A standard's file that the edition uses. */
    public record BasedOn(String name, Source source, String digest) {}
}
