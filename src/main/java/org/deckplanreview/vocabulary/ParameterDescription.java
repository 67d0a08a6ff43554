package org.deckplanreview.vocabulary;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;

/**
 * A value that a method takes from the ruleset. Parameters have no defaults.
 *
 * @param unit of a number
 * @param columns of a table, each a number (with unit), word or flag
 * @param stricter which way a number goes for its method to ask for more, all else being equal
 * @param words of a word, from the one for which the method asks least to the one for which it asks most, all else being
 *     equal; empty where they have no such order
 * @param required whether the ruleset must give it; without one that is not, its asker does without
 */
public record ParameterDescription(
        String name,
        ValueType type,
        Optional<MeasureUnit> unit,
        List<Column> columns,
        String meaning,
        Stricter stricter,
        List<String> words,
        boolean required) {
    public ParameterDescription {
        columns = List.copyOf(columns);
        words = List.copyOf(words);
    }

    private ParameterDescription(
            String name, ValueType type, Optional<MeasureUnit> unit, List<Column> columns, String meaning) {
        this(name, type, unit, columns, meaning, Stricter.UNTOLD, List.of(), true);
    }

    /** The same parameter, which a ruleset may leave out. */
    public ParameterDescription orNone() {
        return new ParameterDescription(name, type, unit, columns, meaning, stricter, words, false);
    }

    /** One column of a table parameter. */
    public record Column(String name, ValueType type, Optional<MeasureUnit> unit) {}

    public static ParameterDescription number(String name, MeasureUnit unit, String meaning) {
        return new ParameterDescription(name, ValueType.NUMBER, Optional.of(unit), List.of(), meaning);
    }

    public static ParameterDescription word(String name, String meaning) {
        return new ParameterDescription(name, ValueType.WORD, Optional.empty(), List.of(), meaning);
    }

    public static ParameterDescription flag(String name, String meaning) {
        return new ParameterDescription(name, ValueType.FLAG, Optional.empty(), List.of(), meaning);
    }

    public static ParameterDescription table(String name, String meaning, Column... columns) {
        return new ParameterDescription(name, ValueType.TABLE, Optional.empty(), List.of(columns), meaning);
    }

    /** The same parameter, whose method asks for more the higher it is. */
    public ParameterDescription higherIsStricter() {
        return new ParameterDescription(name, type, unit, columns, meaning, Stricter.HIGHER, words, required);
    }

    /** The same parameter, whose method asks for more the lower it is. */
    public ParameterDescription lowerIsStricter() {
        return new ParameterDescription(name, type, unit, columns, meaning, Stricter.LOWER, words, required);
    }

    /** The same parameter, which can be these words alone: the method asks for more the later in the list it is. */
    public ParameterDescription rising(String... mildestFirst) {
        return new ParameterDescription(name, type, unit, columns, meaning, stricter, List.of(mildestFirst), required);
    }

    public static Column numberColumn(String name, MeasureUnit unit) {
        return new Column(name, ValueType.NUMBER, Optional.of(unit));
    }

    public static Column wordColumn(String name) {
        return new Column(name, ValueType.WORD, Optional.empty());
    }
}
