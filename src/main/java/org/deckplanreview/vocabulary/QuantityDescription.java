package org.deckplanreview.vocabulary;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.SubjectKind;

/**
 * A named thing that provisions limit or depend on.
 *
 * @param name in plain words, as rulesets write it, for example {@code guard height}
 * @param type number, word or flag
 * @param unit of a number
 * @param words of a word, in rising order where they have one; empty where any word may stand, and for numbers and flags
 * @param ordered whether the words rise, so that one can be at least another
 * @param subjects the kinds of subject that have it
 * @param definition in one sentence
 */
public record QuantityDescription(
        String name,
        ValueType type,
        Optional<MeasureUnit> unit,
        List<String> words,
        boolean ordered,
        List<SubjectKind> subjects,
        String definition) {
    public QuantityDescription {
        words = List.copyOf(words);
        subjects = List.copyOf(subjects);
    }

    /** A quantity whose words, if it has any, have no order. */
    public QuantityDescription(
            String name,
            ValueType type,
            Optional<MeasureUnit> unit,
            List<String> words,
            List<SubjectKind> subjects,
            String definition) {
        this(name, type, unit, words, false, subjects, definition);
    }

    /** The same quantity with its words taken to rise in the order that they are listed in. */
    public QuantityDescription rising() {
        return new QuantityDescription(name, type, unit, words, true, subjects, definition);
    }
}
