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

/** All editions of all regions. What is asked for is resolved once. Thread-safe. */
public final class Rulesets {

    private final SortedMap<String, List<EditionHeading>> regions = new TreeMap<>();
    private final Shelf<Edition> editions;
    private final List<Amendment> amendments;
    private final AmendedEditions amended;

    /**
     * @param editions by the path of the heading, none of them empty
     * @param amendments by path
     */
    Rulesets(
            Collection<EditionHeading> headings,
            Shelf<Edition> editions,
            Collection<Amendment> amendments,
            Resolver resolver) {
        this.editions = editions;
        this.amendments = List.copyOf(amendments);
        this.amended = new AmendedEditions(resolver);
        headings.stream()
                .sorted(Comparator.comparing(
                                (EditionHeading heading) -> heading.binding().day())
                        .thenComparing(EditionHeading::name))
                .forEach(heading -> regions.computeIfAbsent(heading.region(), region -> new ArrayList<>())
                        .add(heading));
    }

    /** Names of the regions, in rising order. */
    public List<String> regions() {
        return List.copyOf(regions.keySet());
    }

    /** What every edition says of itself, by region and then by the first day in force. */
    public List<EditionHeading> headings() {
        return regions.values().stream().flatMap(List::stream).toList();
    }

    /** Those of a region; none for an unknown region. */
    public List<EditionHeading> headings(String region) {
        return List.copyOf(regions.getOrDefault(region, List.of()));
    }

    /** Every edition, by region and then by the first day in force. */
    public List<Edition> all() {
        return headings().stream().map(this::resolved).toList();
    }

    /** Editions of a region by the first day in force; none for an unknown region. */
    public List<Edition> editions(String region) {
        return headings(region).stream().map(this::resolved).toList();
    }

    public Optional<Edition> edition(String region, String name) {
        return headings(region).stream()
                .filter(heading -> heading.name().equals(name))
                .findFirst()
                .map(this::resolved);
    }

    private Edition resolved(EditionHeading heading) {
        return editions.get(heading.path()).orElseThrow();
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
        List<EditionHeading> headings = headings(region);
        for (int i = headings.size() - 1; i >= 0; i--) {
            if (headings.get(i).binding() instanceof Binding.ByDate binding) {
                Optional<LocalDate> last = next;
                periods.add(
                        0,
                        new InForce.Period(
                                headings.get(i).name(),
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
                    headings(region).stream().map(EditionHeading::name).toList(),
                    amendments(region).stream()
                            .filter(a -> a.adopts().isPresent())
                            .toList());
        }
        return periods.stream()
                .filter(period -> period.includes(day))
                .findFirst()
                .<InForce>map(period -> new InForce.Found(period.edition()))
                .orElseGet(() -> new InForce.NoneThatDay(region, periods));
    }
}
