package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.QuantityDescription;

/** Reads the tokens that values are written in, as what the vocabulary says they are. */
final class TokenReader {

    private TokenReader() {}

    static Optional<? extends Value> read(Entry token, QuantityDescription quantity) {
        return switch (quantity.type()) {
            case NUMBER -> number(token, quantity.unit().orElse(MeasureUnit.RATIO));
            case FLAG -> flag(token);
            case WORD -> word(token, quantity.words());
            case TABLE -> throw new IllegalStateException("Quantities are no tables");
        };
    }

    /** @param parameter no table */
    static Optional<? extends Value> read(Entry token, ParameterDescription parameter) {
        return switch (parameter.type()) {
            case NUMBER -> number(token, parameter.unit().orElse(MeasureUnit.RATIO));
            case FLAG -> flag(token);
            case WORD -> word(token, parameter.words());
            case TABLE -> throw new IllegalStateException("A token is no table");
        };
    }

    /** A number whose unit measures the same as the one asked for. */
    static Optional<Measure> number(Entry token, MeasureUnit unit) {
        Measure measure;
        try {
            measure = Measure.parse(token.text());
        } catch (IllegalArgumentException e) {
            token.fault("This is no number with a known unit", accepted(unit));
            return Optional.empty();
        }
        if (!measure.unit().sameDimension(unit)) {
            token.fault("The unit measures something else", accepted(unit));
            return Optional.empty();
        }
        return Optional.of(measure);
    }

    private static String accepted(MeasureUnit unit) {
        return "a number in " + String.join(", ", unit.alternatives());
    }

    static Optional<Word> word(Entry token, List<String> words) {
        if (token.node() instanceof YamlNode.FlagNode) {
            token.fault("This is no word", words.isEmpty() ? "a word" : String.join(", ", words));
            return Optional.empty();
        }
        if (!words.isEmpty() && !words.contains(token.text())) {
            token.unknown(token.text(), "word", words);
            return Optional.empty();
        }
        return Optional.of(new Word(token.text()));
    }

    static Optional<Flag> flag(Entry token) {
        if (token.node() instanceof YamlNode.FlagNode f) {
            return Optional.of(new Flag(f.yes()));
        }
        token.fault("This is neither yes nor no", "true or false");
        return Optional.empty();
    }

    /** A token as it stands, where nothing says yet what it is for. */
    static Value unread(Entry token) {
        if (token.node() instanceof YamlNode.FlagNode f) {
            return new Flag(f.yes());
        }
        try {
            if (token.node() instanceof YamlNode.NumberNode || token.text().contains(" ")) {
                return Measure.parse(token.text());
            }
        } catch (IllegalArgumentException e) {
            return new Word(token.text());
        }
        return new Word(token.text());
    }
}
