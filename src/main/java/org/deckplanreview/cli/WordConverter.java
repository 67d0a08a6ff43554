package org.deckplanreview.cli;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.deckplanreview.kernel.Worded;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the words of an option. */
abstract class WordConverter<T extends Worded> implements ITypeConverter<T> {
    private final List<T> values;

    WordConverter(T[] values) {
        this.values = Arrays.asList(values);
    }

    @Override
    public T convert(String word) {
        return values.stream()
                .filter(w -> w.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("'" + word + "' is none of "
                        + values.stream().map(Worded::word).collect(Collectors.joining(", "))));
    }
}
