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
    private final List<Amendment> amendments;
    private final AmendedEditions amended;

    /** @param amendments by path */
    Rulesets(Collection<Edition> editions, Collection<Amendment> amendments, Resolver resolver) {
        this.amendments = List.copyOf(amendments);
        this.amended = new AmendedEditions(resolver);
        editions.stream()
                .sorted(Comparator.comparing(
                                (Edition edition) -> edition.binding().day())
                        .thenComparing(Edition::name))
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

    /** Amendments of a region by name; none for an unknown region. */
    public List<Amendment> amendments(String region) {
        return amendments.stream().filter(a -> a.region().equals(region)).toList();
    }

    /**
     * An edition with amendments laid over it in the order in which they are named. The same names give the same edition.
     *
     * @return empty if there is no such edition
     */
    public Optional<Amending> edition(String region, String name, List<String> amendmentNames) {
        return edition(region, name).map(edition -> amended(edition, amendmentNames));
    }

    private Amending amended(Edition edition, List<String> names) {
        List<Amendment> known = amendments(edition.region());
        List<Amendment> named = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            Optional<Amendment> found =
                    known.stream().filter(a -> a.name().equals(name)).findFirst();
            if (found.isEmpty()) {
                return new Amending.Refused(
                        i,
                        "The region '" + edition.region() + "' has no amendment '" + name + "'.",
                        KnownNames.accepted(
                                name, known.stream().map(Amendment::name).toList()));
            }
            if (!found.get().amends().contains(edition.name())) {
                return new Amending.Refused(
                        i,
                        "The amendment '" + name + "' does not amend the edition " + edition.name() + ".",
                        "an amendment of that edition, or the edition "
                                + String.join(" or ", found.get().amends()));
            }
            if (named.contains(found.get())) {
                return new Amending.Refused(i, "The amendment '" + name + "' is named twice.", "each amendment once");
            }
            named.add(found.get());
        }
        return amended.of(edition, named);
    }

    /** When each edition of a region is in force: to the day that it says, or to the day before the next one's first. */
    public List<InForce.Period> periods(String region) {
        List<InForce.Period> periods = new ArrayList<>();
        Optional<LocalDate> next = Optional.empty();
        List<Edition> editions = editions(region);
        for (int i = editions.size() - 1; i >= 0; i--) {
            if (editions.get(i).binding() instanceof Binding.ByDate binding) {
                Optional<LocalDate> last = next;
                periods.add(
                        0,
                        new InForce.Period(
                                editions.get(i).name(),
                                binding.from(),
                                binding.until().or(() -> last)));
                next = Optional.of(binding.from().minusDays(1));
            }
        }
        return periods;
    }

    public InForce inForce(String region, LocalDate day) {
        if (!regions.containsKey(region)) {
            return new InForce.UnknownRegion(regions(), NearestName.of(region, regions()));
        }
        List<InForce.Period> periods = periods(region);
        if (periods.isEmpty()) {
            return new InForce.OnlyAsAdopted(
                    region,
                    editions(region).stream().map(Edition::name).toList(),
                    amendments(region).stream()
                            .filter(a -> a.adopts().isPresent())
                            .toList());
        }
        return periods.stream()
                .filter(period -> period.includes(day))
                .findFirst()
                .flatMap(period -> edition(region, period.edition()))
                .<InForce>map(InForce.Found::new)
                .orElseGet(() -> new InForce.NoneThatDay(region, periods));
    }
}
