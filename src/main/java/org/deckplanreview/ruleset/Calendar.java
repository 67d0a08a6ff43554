package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Holds the editions of each region against the calendar: never two on one day. An edition without a last day ends
 * when the next begins, so a gap is only where a last day declares it.
 */
final class Calendar {

    private Calendar() {}

    /** @param editions by path */
    static void check(Map<String, Edition> editions, Function<String, RulesetFile> files) {
        Map<String, List<Map.Entry<String, Edition>>> regions = new TreeMap<>();
        editions.entrySet().stream()
                .sorted(Comparator.comparing(
                                (Map.Entry<String, Edition> e) -> e.getValue().from())
                        .thenComparing(Map.Entry::getKey))
                .forEach(e -> regions.merge(e.getValue().region(), List.of(e), Calendar::both));
        regions.values().forEach(ordered -> {
            for (int i = 1; i < ordered.size(); i++) {
                check(
                        ordered.get(i - 1).getValue(),
                        ordered.get(i).getValue(),
                        files.apply(ordered.get(i).getKey()));
            }
        });
    }

    private static <T> List<T> both(List<T> a, List<T> b) {
        return Stream.concat(a.stream(), b.stream()).toList();
    }

    private static void check(Edition before, Edition after, RulesetFile file) {
        Optional<LocalDate> last = before.until();
        boolean overlap = after.from().equals(before.from())
                || last.filter(day -> !day.isBefore(after.from())).isPresent();
        if (overlap) {
            file.fault(
                    1,
                    "in force from " + after.from(),
                    "The edition " + before.name() + " is in force that day as well",
                    "a day after " + last.orElse(before.from()));
        }
        if (!before.regionTitle().equals(after.regionTitle())) {
            file.fault(
                    1,
                    "'" + after.regionTitle() + "'",
                    "The edition " + before.name() + " gives the region another title",
                    "'" + before.regionTitle() + "'");
        }
    }
}
