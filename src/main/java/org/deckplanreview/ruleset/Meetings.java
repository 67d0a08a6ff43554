package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.vocabulary.Vocabulary;

/**
 * Which rows of two lists can count for the same subject, where in each list the first row counts whose condition holds.
 * Never leaves out a pair that can; a pair that only several rows together rule out stays in.
 */
final class Meetings {

    private final Vocabulary vocabulary;
    private final Scope within;

    /** @param within what both lists are asked about */
    Meetings(Vocabulary vocabulary, Scope within) {
        this.vocabulary = vocabulary;
        this.within = within;
    }

    /** A row of each list; empty where none of a list's rows counts. */
    record Pair<T>(Optional<T> was, Optional<T> is) {}

    <T> List<Pair<T>> of(List<T> was, List<T> is, Function<T, Condition> when) {
        List<Scope> wasScopes = scopes(was, when);
        List<Scope> isScopes = scopes(is, when);
        List<Pair<T>> pairs = new ArrayList<>();
        for (int i = 0; i <= was.size(); i++) {
            for (int j = 0; j <= is.size(); j++) {
                Scope both = within.and(wasScopes.get(i)).and(isScopes.get(j));
                if (!both.isEmpty()
                        && !isTaken(both, wasScopes.subList(0, i))
                        && !isTaken(both, isScopes.subList(0, j))) {
                    pairs.add(new Pair<>(row(was, i), row(is, j)));
                }
            }
        }
        return pairs;
    }

    /** The rows' scopes, and after them that of the subjects that no row counts for. */
    private <T> List<Scope> scopes(List<T> rows, Function<T, Condition> when) {
        List<Scope> scopes = new ArrayList<>();
        rows.forEach(row -> scopes.add(Scope.of(when.apply(row), vocabulary)));
        scopes.add(Scope.of(Condition.ALWAYS, vocabulary));
        return scopes;
    }

    private static boolean isTaken(Scope scope, List<Scope> above) {
        return above.stream().anyMatch(scope::isWithin);
    }

    private static <T> Optional<T> row(List<T> rows, int index) {
        return index < rows.size() ? Optional.of(rows.get(index)) : Optional.empty();
    }
}
