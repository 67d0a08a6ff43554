package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.submission.NearestName;

/** All editions of all regions, resolved and checked. Immutable. */
public final class Rulesets {

    private final SortedMap<String, List<Edition>> regions = new TreeMap<>();

    Rulesets(Collection<Edition> editions) {
        editions.stream()
                .sorted(Comparator.comparing(Edition::from).thenComparing(Edition::name))
                .forEach(edition -> regions.computeIfAbsent(edition.region(), region -> new ArrayList<>())
                        .add(edition));
    }

    /** Names of the regions, in rising order. */
    public List<String> regions() {
        return List.copyOf(regions.keySet());
    }

    /** Every edition, by region and then by the first day in force. */
    public List<Edition> all() {
        return regions.values().stream().flatMap(List::stream).toList();
    }

    /** Editions of a region by the first day in force; none for an unknown region. */
    public List<Edition> editions(String region) {
        return List.copyOf(regions.getOrDefault(region, List.of()));
    }

    public Optional<Edition> edition(String region, String name) {
        return editions(region).stream().filter(e -> e.name().equals(name)).findFirst();
    }

    /** When each edition of a region is in force: to the day that it says, or to the day before the next one's first. */
    public List<InForce.Period> periods(String region) {
        List<Edition> editions = editions(region);
        List<InForce.Period> periods = new ArrayList<>();
        for (int i = 0; i < editions.size(); i++) {
            Edition edition = editions.get(i);
            Optional<LocalDate> next = i + 1 < editions.size()
                    ? Optional.of(editions.get(i + 1).from().minusDays(1))
                    : Optional.empty();
            periods.add(new InForce.Period(
                    edition.name(), edition.from(), edition.until().or(() -> next)));
        }
        return periods;
    }

    public InForce inForce(String region, LocalDate day) {
        if (!regions.containsKey(region)) {
            return new InForce.UnknownRegion(regions(), NearestName.of(region, regions()));
        }
        List<InForce.Period> periods = periods(region);
        return periods.stream()
                .filter(period -> period.includes(day))
                .findFirst()
                .flatMap(period -> edition(region, period.edition()))
                .<InForce>map(InForce.Found::new)
                .orElseGet(() -> new InForce.NoneThatDay(region, periods));
    }
}
