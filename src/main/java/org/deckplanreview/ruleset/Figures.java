package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Value;
import org.deckplanreview.ruleset.ResolvedParameters.Parameter;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Stricter;
import org.deckplanreview.vocabulary.Vocabulary;

/**
 * The figures that texts of an edition's provisions can show by name: {@code limit}, what the provision allows; a parameter
 * of its method; a quantity that its condition compares with one number; the id of another provision with a limit.
 */
public final class Figures {

    public static final String LIMIT = "limit";

    /** What a text says in place of a limit that only a table or a calculation tells, where they do not. */
    public static final String UNTOLD = "the allowed value";

    private final Map<String, Provision> provisions = new LinkedHashMap<>();
    private final Vocabulary vocabulary;

    public Figures(List<Provision> provisions, Vocabulary vocabulary) {
        provisions.forEach(provision -> this.provisions.put(provision.id(), provision));
        this.vocabulary = vocabulary;
    }

    /** Empty if a text of the provision can show no figure of this name. */
    public Optional<Figure> find(Provision provision, String name) {
        return Optional.ofNullable(own(provision).get(name))
                .or(() -> Optional.ofNullable(provisions.get(name)).flatMap(Figures::limit));
    }

    /** The figures of the provision itself, by name. */
    Map<String, Figure> own(Provision provision) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        if (provision.rule() instanceof Rule.Calculation calculation) {
            parameters(calculation, figures);
        }
        bounds(provision.when()).forEach(figures::put);
        figures.put(LIMIT, limit(provision).orElseGet(() -> new Figure(Sense.EQUAL, List.of())));
        return figures;
    }

    /** A text as the edition has it, with figures as its files write them. */
    public String written(Provision provision, String text) {
        return Wording.of(text)
                .filled(place -> find(provision, place.name())
                        .filter(figure -> !figure.values().isEmpty())
                        .map(figure -> ShownFigure.written(figure, place.isRatio()))
                        .orElse(UNTOLD));
    }

    private static Optional<Figure> limit(Provision provision) {
        return provision.rule() instanceof Rule.Limit limit
                ? Optional.of(new Figure(
                        limit.sense(),
                        limit.rows().stream()
                                .flatMap(row -> row.values().stream())
                                .distinct()
                                .toList()))
                : Optional.empty();
    }

    private void parameters(Rule.Calculation calculation, Map<String, Figure> figures) {
        Map<String, Parameter> given = ((ResolvedParameters) calculation.parameters()).all();
        vocabulary.method(calculation.method()).map(MethodDescription::parameters).stream()
                .flatMap(List::stream)
                .forEach(described -> {
                    if (given.get(described.name()) instanceof Parameter.Single single
                            && !(single.value() instanceof Flag)) {
                        figures.put(described.name(), new Figure(sense(described), List.of(single.value())));
                    }
                });
    }

    private static Sense sense(ParameterDescription described) {
        return described.stricter() == Stricter.HIGHER
                ? Sense.AT_LEAST
                : described.stricter() == Stricter.LOWER ? Sense.AT_MOST : Sense.EQUAL;
    }

    /** Quantities that are compared with one number. Whoever keeps to a text about one leaves the condition. */
    private static Map<String, Figure> bounds(Condition condition) {
        Map<String, List<Condition.Compare>> compared = new LinkedHashMap<>();
        comparisons(condition)
                .forEach(c -> compared.computeIfAbsent(c.quantity(), q -> new ArrayList<>())
                        .add(c));
        Map<String, Figure> bounds = new LinkedHashMap<>();
        compared.forEach((quantity, all) -> {
            if (all.size() == 1) {
                List<Value> value = List.of(all.get(0).value());
                bounds.put(quantity, new Figure(opposite(all.get(0).sense()), value));
            }
        });
        return bounds;
    }

    private static Stream<Condition.Compare> comparisons(Condition condition) {
        if (condition instanceof Condition.All all) {
            return all.conditions().stream().flatMap(Figures::comparisons);
        }
        return condition instanceof Condition.Compare compare ? Stream.of(compare) : Stream.empty();
    }

    private static Sense opposite(Sense sense) {
        return switch (sense) {
            case AT_LEAST -> Sense.UNDER;
            case OVER -> Sense.AT_MOST;
            case AT_MOST -> Sense.OVER;
            case UNDER -> Sense.AT_LEAST;
            case EQUAL, ONE_OF -> sense;
        };
    }
}
