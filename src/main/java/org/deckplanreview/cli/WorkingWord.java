package org.deckplanreview.cli;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.deckplanreview.rendering.text.WorkingShown;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the words of {@code --working}. */
class WorkingWord implements ITypeConverter<WorkingShown> {
    @Override
    public WorkingShown convert(String word) {
        return Arrays.stream(WorkingShown.values())
                .filter(w -> w.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("'" + word + "' is none of "
                        + Arrays.stream(WorkingShown.values())
                                .map(WorkingShown::word)
                                .collect(Collectors.joining(", "))));
    }
}
