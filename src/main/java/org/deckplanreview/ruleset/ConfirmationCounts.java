package org.deckplanreview.ruleset;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.deckplanreview.ruleset.ResolvedParameters.Origin;
import org.deckplanreview.vocabulary.Parameters;

/**
 * How many values of an edition were confirmed in each way. One value is the citation of a provision, an imposed load, a
 * condition that ends a provision, a parameter with a citation of its own, or a table; what several provisions take from one
 * place of a standard counts once.
 *
 * @param values by the way in which they were confirmed, with zeros
 * @param tableRows rows of the tables likewise; where a table runs over its columns, a row is a cell
 */
public record ConfirmationCounts(Map<Confirmation, Integer> values, Map<Confirmation, Integer> tableRows) {

    private static final int WHOLE_PERCENT = 100;

    public ConfirmationCounts {
        values = Collections.unmodifiableMap(new EnumMap<>(values));
        tableRows = Collections.unmodifiableMap(new EnumMap<>(tableRows));
    }

    public static ConfirmationCounts of(Edition edition) {
        return new Counting().of(edition);
    }

    /** Words in place of ways, for programs. */
    public static Map<String, Integer> byWord(Map<Confirmation, Integer> counts) {
        Map<String, Integer> words = new LinkedHashMap<>();
        counts.forEach((by, count) -> words.put(by.word(), count));
        return words;
    }

    /** The share of values that were recalled from memory, in whole percent, rounded up. */
    public int percentFromMemory() {
        int all = values.values().stream().mapToInt(Integer::intValue).sum();
        return all == 0 ? 0 : -Math.floorDiv(-WHOLE_PERCENT * values.get(Confirmation.MEMORY), all);
    }

    private static final class Counting {
        private final Map<Confirmation, Integer> values = zeros();
        private final Map<Confirmation, Integer> tableRows = zeros();
        private final TreeSet<String> counted = new TreeSet<>();

        private static Map<Confirmation, Integer> zeros() {
            Map<Confirmation, Integer> zeros = new EnumMap<>(Confirmation.class);
            for (Confirmation by : Confirmation.values()) {
                zeros.put(by, 0);
            }
            return zeros;
        }

        private ConfirmationCounts of(Edition edition) {
            edition.loads().imposed().forEach(row -> value(row.citation()));
            parameters(edition.loads().parameters(), Optional.empty());
            edition.schedule().ifPresent(practice -> parameters(practice, Optional.empty()));
            edition.site().values().forEach(value -> value(value.citation()));
            edition.provisions().forEach(this::provision);
            return new ConfirmationCounts(values, tableRows);
        }

        private void provision(Provision provision) {
            value(provision.citation());
            provision.scope().stream()
                    .filter(reach -> counted.add("scope " + reach.name()))
                    .forEach(reach -> value(reach.citation()));
            if (provision.rule() instanceof Rule.Calculation calculation) {
                parameters(calculation.parameters(), Optional.of(provision.citation()));
            } else if (provision.rule() instanceof Rule.LookUp lookUp) {
                table(lookUp.table());
                lookUp.keys().forEach(this::key);
            }
        }

        private void key(TableKey key) {
            if (key instanceof TableKey.Translated translated) {
                table(translated.table());
                translated.by().forEach(this::key);
            } else if (key instanceof TableKey.Direct direct) {
                direct.times().ifPresent(factor -> {
                    table(factor.table());
                    key(factor.key());
                });
            }
        }

        /** @param own citation of the provision, which its parameters share where they have none of their own */
        private void parameters(Parameters parameters, Optional<Citation> own) {
            if (!(parameters instanceof ResolvedParameters resolved)) {
                return;
            }
            resolved.all().values().forEach(parameter -> {
                if (parameter.origin() instanceof Origin.FromStandard standard) {
                    fromStandard(standard.layered());
                } else if (!own.equals(Optional.of(parameter.origin().citation()))) {
                    value(parameter.origin().citation());
                }
            });
        }

        private void fromStandard(Layered layered) {
            Optional<LookUpTable> table = layered.table();
            table.ifPresent(this::table);
            if (table.isEmpty() && counted.add(layered.standard() + "." + layered.name())) {
                value(layered.citation());
            }
        }

        private void table(LookUpTable table) {
            if (counted.add(table.reference())) {
                value(table.citation());
                table.rows().stream()
                        .filter(row -> row.cells().size() == table.columns().size())
                        .forEach(row -> tableRows.merge(table.confirmedBy(row), 1, Integer::sum));
            }
        }

        private void value(Citation citation) {
            values.merge(citation.confirmedBy(), 1, Integer::sum);
        }
    }
}
