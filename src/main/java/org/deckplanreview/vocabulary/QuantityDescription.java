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
 * @param words of a word, in rising order where they have one; empty otherwise
 * @param subjects the kinds of subject that have it
 * @param definition in one sentence
 */
public record QuantityDescription(
        String name,
        ValueType type,
        Optional<MeasureUnit> unit,
        List<String> words,
        List<SubjectKind> subjects,
        String definition) {}
