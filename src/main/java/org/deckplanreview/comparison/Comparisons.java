package org.deckplanreview.comparison;

import java.util.List;
import org.deckplanreview.review.Editions;
import org.deckplanreview.review.Reviewer;
import org.deckplanreview.ruleset.Amending;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.EditionHeading;
import org.deckplanreview.submission.NearestName;
import org.deckplanreview.vocabulary.Vocabulary;

/** Compares editions with each other, and submissions under two of them. */
public final class Comparisons {
    static final String NOTICE =
            "A comparison of pre-checks of designs on paper. It grants no approval. Local codes, the authority that applies"
                    + " them and a licensed engineer prevail over it.";

    private final Reviewer reviewer;
    private final Editions editions;
    private final EditionComparer comparer;

    /** @param editions that can be named */
    public Comparisons(Reviewer reviewer, Editions editions, Vocabulary vocabulary) {
        this.reviewer = reviewer;
        this.editions = editions;
        this.comparer = new EditionComparer(vocabulary);
    }

    public EditionDifferences differences(Edition from, Edition to) {
        return comparer.compare(from, to);
    }

    public SubmissionComparer between(Edition from, Edition to) {
        return new SubmissionComparer(reviewer, from, to, differences(from, to));
    }

    /** The edition of that name. */
    public EditionLookup edition(String region, String name) {
        List<EditionHeading> headings = editions.headings();
        List<String> names = headings.stream()
                .filter(heading -> heading.region().equals(region))
                .map(EditionHeading::name)
                .toList();
        if (names.isEmpty()) {
            List<String> regions =
                    headings.stream().map(EditionHeading::region).distinct().toList();
            return new EditionLookup.Unknown(
                    "There is no ruleset for the region '" + region + "'." + meant(region, regions),
                    "one of " + String.join(", ", regions));
        }
        return editions.edition(region, name, List.of())
                .<EditionLookup>map(found -> new EditionLookup.Found(((Amending.Amended) found).edition()))
                .orElseGet(() -> new EditionLookup.Unknown(
                        "The region '" + region + "' has no edition '" + name + "'." + meant(name, names),
                        "one of " + String.join(", ", names)));
    }

    /** Every edition as requests and commands name it, for example {@code uk-england/2024}. */
    public List<String> names() {
        return editions.headings().stream()
                .map(heading -> heading.region() + "/" + heading.name())
                .toList();
    }

    private static String meant(String asked, List<String> known) {
        return NearestName.of(asked, known).map(n -> " Is '" + n + "' meant?").orElse("");
    }
}
