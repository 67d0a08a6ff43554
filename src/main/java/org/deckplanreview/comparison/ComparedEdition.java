package org.deckplanreview.comparison;

import org.deckplanreview.ruleset.Edition;

/**
 * One of the two editions.
 *
 * @param edition its name, for example {@code 2024}
 */
public record ComparedEdition(String region, String regionTitle, String edition, String title, String digest) {
    static ComparedEdition of(Edition edition) {
        return new ComparedEdition(
                edition.region(), edition.regionTitle(), edition.name(), edition.title(), edition.digest());
    }

    /** As requests write it, for example {@code uk-england/2024}. */
    public String name() {
        return region + "/" + edition;
    }
}
