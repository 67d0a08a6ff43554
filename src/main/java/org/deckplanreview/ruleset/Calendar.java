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
 * when the next begins, so a gap is only where a last day declares it. Editions that bind only as adopted are in force on
 * no day of themselves.
 */
final class Calendar {

    private Calendar() {}

    /** @param editions by path */
    static void check(Map<String, Edition> editions, Function<String, RulesetFile> files) {
        Map<String, List<Map.Entry<String, Edition>>> regions = new TreeMap<>();
        editions.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<String, Edition> e) ->
                                e.getValue().binding().day())
                        .thenComparing(Map.Entry::getKey))
                .forEach(e -> regions.merge(e.getValue().region(), List.of(e), Calendar::both));
        regions.values().forEach(ordered -> {
            for (int i = 1; i < ordered.size(); i++) {
                checkTitle(
                        ordered.get(0).getValue(),
                        ordered.get(i).getValue(),
                        files.apply(ordered.get(i).getKey()));
            }
            List<Map.Entry<String, Edition>> dated = ordered.stream()
                    .filter(e -> e.getValue().binding() instanceof Binding.ByDate)
                    .toList();
            for (int i = 1; i < dated.size(); i++) {
                check(
                        dated.get(i - 1).getValue(),
                        dated.get(i).getValue(),
                        files.apply(dated.get(i).getKey()));
            }
        });
    }

    private static <T> List<T> both(List<T> a, List<T> b) {
        return Stream.concat(a.stream(), b.stream()).toList();
    }

    private static void check(Edition before, Edition after, RulesetFile file) {
        LocalDate first = before.binding().day();
        LocalDate next = after.binding().day();
        Optional<LocalDate> last = ((Binding.ByDate) before.binding()).until();
        boolean overlap =
                next.equals(first) || last.filter(day -> !day.isBefore(next)).isPresent();
        if (overlap) {
            file.fault(
                    1,
                    "in force from " + next,
                    "The edition " + before.name() + " is in force that day as well",
                    "a day after " + last.orElse(first));
        }
    }

    private static void checkTitle(Edition before, Edition after, RulesetFile file) {
        if (!before.regionTitle().equals(after.regionTitle())) {
            file.fault(
                    1,
                    "'" + after.regionTitle() + "'",
                    "The edition " + before.name() + " gives the region another title",
                    "'" + before.regionTitle() + "'");
        }
    }
}
