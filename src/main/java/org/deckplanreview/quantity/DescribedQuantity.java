package org.deckplanreview.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Worded;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.ValueType;

/** A quantity: its description, and how it is observed on the one Java type that stands for its kinds of subject. */
public record DescribedQuantity<S extends Subject>(
        QuantityDescription description, Class<S> type, BiFunction<S, ReviewContext, Observation> observing)
        implements Quantity {

    /** @throws IllegalArgumentException if the subject is of a kind that has no such quantity */
    @Override
    public Observation observe(Subject subject, ReviewContext context) {
        if (!description.subjects().contains(subject.kind())) {
            throw new IllegalArgumentException(subject.kind().word() + " have no " + description.name() + "; "
                    + description.subjects().stream().map(Worded::word).toList() + " have");
        }
        Observation seen = observing.apply(type.cast(subject), context);
        return seen instanceof Observation.Found found && found.value() instanceof Measure m
                ? new Observation.Found(settled(m), found.remark(), found.working())
                : seen;
    }

    /**
     * To a millionth of a millimetre or degree, and a ratio to a thousand-millionth: what a drawing puts on a limit stays
     * there, however the deck lies in plan and whatever the last bit of a sine is.
     */
    private static Measure settled(Measure m) {
        return switch (m.unit()) {
            case MILLIMETRE, DEGREE -> settled(m, 1e6);
            case RATIO -> settled(m, 1e9);
            default -> m;
        };
    }

    private static Measure settled(Measure m, double steps) {
        return Measure.of(Math.rint(m.value() * steps) / steps, m.unit());
    }

    public static <S extends Subject> Quantity number(
            String name,
            MeasureUnit unit,
            Class<S> type,
            List<SubjectKind> kinds,
            String definition,
            BiFunction<S, ReviewContext, Observation> observing) {
        return new DescribedQuantity<>(
                new QuantityDescription(name, ValueType.NUMBER, Optional.of(unit), List.of(), kinds, definition),
                type,
                observing);
    }

    /** @param words every word it can be, in no order */
    public static <S extends Subject> Quantity word(
            String name,
            Worded[] words,
            Class<S> type,
            List<SubjectKind> kinds,
            String definition,
            BiFunction<S, ReviewContext, Observation> observing) {
        List<String> written = Stream.of(words).map(Worded::word).toList();
        return new DescribedQuantity<>(
                new QuantityDescription(name, ValueType.WORD, Optional.empty(), written, kinds, definition),
                type,
                observing);
    }

    /** @param words every word it can be, in rising order */
    public static <S extends Subject> Quantity risingWord(
            String name,
            Worded[] words,
            Class<S> type,
            List<SubjectKind> kinds,
            String definition,
            BiFunction<S, ReviewContext, Observation> observing) {
        return new DescribedQuantity<>(
                word(name, words, type, kinds, definition, observing)
                        .description()
                        .rising(),
                type,
                observing);
    }

    public static <S extends Subject> Quantity flag(
            String name,
            Class<S> type,
            List<SubjectKind> kinds,
            String definition,
            BiFunction<S, ReviewContext, Observation> observing) {
        return new DescribedQuantity<>(
                new QuantityDescription(name, ValueType.FLAG, Optional.empty(), List.of(), kinds, definition),
                type,
                observing);
    }
}
