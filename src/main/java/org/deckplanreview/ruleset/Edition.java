package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.vocabulary.Parameters;

/**
 * One edition of a region's ruleset, resolved and checked.
 *
 * @param name for example {@code 2024}
 * @param binding when or where it is in force
 * @param bases the files it shares with other editions, in order, each with its digest
 * @param basedOn the standards' files it uses, in order, each with its digest
 * @param sources every source that it cites, in the file's order
 * @param site what is said of its sites; nothing but by amendments
 * @param schedule values of site practice, those of {@link
 *     org.deckplanreview.vocabulary.Vocabulary#scheduleParameters()}; without them a report has no site schedule
 * @param cautions that every report under this edition prints
 * @param referrals that every report under this edition prints
 * @param amendments what was laid over it, in order; none for an edition as it stands
 * @param canonical the resolved edition as canonical JSON (RFC 8785), from which the digest is taken
 * @param digest {@code sha256:…} over canonical
 */
public record Edition(
        String region,
        String regionTitle,
        String name,
        String title,
        Binding binding,
        List<Base> bases,
        List<BasedOn> basedOn,
        List<Source> sources,
        SiteValues site,
        LoadRules loads,
        Optional<Parameters> schedule,
        List<Provision> provisions,
        List<String> cautions,
        List<String> referrals,
        List<String> notes,
        List<Amendment.Applied> amendments,
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
        amendments = List.copyOf(amendments);
    }

    public EditionHeading heading() {
        return new EditionHeading(region, regionTitle, name, title, binding);
    }

    Edition with(List<Amendment.Applied> applied) {
        return new Edition(
                region,
                regionTitle,
                name,
                title,
                binding,
                bases,
                basedOn,
                sources,
                site,
                loads,
                schedule,
                provisions,
                cautions,
                referrals,
                notes,
                applied,
                canonical,
                digest);
    }

    /** A file that several editions build on. {@code path} is relative to the rulesets' root. */
    public record Base(String path, String title, String digest) {}

    /** A standard's file that the edition uses. */
    public record BasedOn(String name, Source source, String digest) {}
}
