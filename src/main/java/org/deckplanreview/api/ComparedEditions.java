package org.deckplanreview.api;

import java.util.Optional;
import java.util.function.BiFunction;
import org.deckplanreview.comparison.Comparisons;
import org.deckplanreview.comparison.EditionLookup;
import org.deckplanreview.ruleset.Edition;

/** The two editions that a request names, or the problem why it names none. */
sealed interface ComparedEditions {

    record Both(Edition from, Edition to) implements ComparedEditions {}

    record None(Problem problem) implements ComparedEditions {}

    /** Of the region, both named without it. */
    static ComparedEditions inRegion(
            Comparisons comparisons, String region, Optional<String> from, Optional<String> to) {
        return of(comparisons, from, to, (parameter, name) -> found(comparisons.edition(region, name)));
    }

    /**
     * @param region of editions that are named without one
     * @param from an edition, or region and edition with a slash between
     * @param to likewise
     */
    static ComparedEditions ofAny(
            Comparisons comparisons, Optional<String> region, Optional<String> from, Optional<String> to) {
        return of(comparisons, from, to, (parameter, name) -> {
            String[] parts = name.split("/", 2);
            if (parts.length == 2) {
                return found(comparisons.edition(parts[0], parts[1]));
            }
            return region.map(r -> found(comparisons.edition(r, name)))
                    .orElseGet(() -> One.refused(
                            ProblemType.BAD_REQUEST,
                            "The query parameter '" + parameter + "' names the edition '" + name
                                    + "' without its region.",
                            oneOf(comparisons)));
        });
    }

    /** Either an edition or a problem. */
    record One(Optional<Edition> edition, Optional<Problem> problem) {
        private static One refused(ProblemType type, String detail, String accepted) {
            return new One(Optional.empty(), Optional.of(Problem.of(type, detail + " Accepted: " + accepted + ".")));
        }
    }

    private static ComparedEditions of(
            Comparisons comparisons,
            Optional<String> from,
            Optional<String> to,
            BiFunction<String, String, One> named) {
        One first = one(comparisons, "from", from, named);
        One second = one(comparisons, "to", to, named);
        return first.problem()
                .or(second::problem)
                .<ComparedEditions>map(None::new)
                .orElseGet(() ->
                        new Both(first.edition().orElseThrow(), second.edition().orElseThrow()));
    }

    private static One one(
            Comparisons comparisons, String parameter, Optional<String> name, BiFunction<String, String, One> named) {
        return name.map(n -> named.apply(parameter, n))
                .orElseGet(() -> One.refused(
                        ProblemType.BAD_REQUEST,
                        "The query parameter '" + parameter + "' is missing.",
                        oneOf(comparisons)));
    }

    private static One found(EditionLookup lookup) {
        if (lookup instanceof EditionLookup.Unknown unknown) {
            return One.refused(ProblemType.UNKNOWN_RULESET, unknown.detail(), unknown.accepted());
        }
        return new One(Optional.of(((EditionLookup.Found) lookup).edition()), Optional.empty());
    }

    private static String oneOf(Comparisons comparisons) {
        return "one of " + String.join(", ", comparisons.names());
    }
}
