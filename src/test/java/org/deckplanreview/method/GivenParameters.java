package org.deckplanreview.method;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/** Parameters written down in a test. */
public final class GivenParameters implements Parameters {

    private final Map<String, Value> values = new LinkedHashMap<>();
    private final Map<String, Table> tables = new LinkedHashMap<>();

    public GivenParameters with(String name, String token) {
        values.put(name, Character.isDigit(token.charAt(0)) ? Measure.parse(token) : new Word(token));
        return this;
    }

    public GivenParameters table(String name, List<Table.Row> rows) {
        tables.put(name, new Table(name, "the test's " + name, rows));
        return this;
    }

    /** A table of two columns: words, and what they lead to. */
    public GivenParameters table(String name, String wordColumn, String valueColumn, Map<String, Value> rows) {
        List<Table.Row> all = new ArrayList<>();
        rows.forEach((word, value) -> all.add(new Table.Row(Map.of(wordColumn, new Word(word), valueColumn, value))));
        tables.put(name, new Table(name, "the test's " + name, all));
        return this;
    }

    /** A word that may start with a digit. */
    public GivenParameters word(String name, String word) {
        values.put(name, new Word(word));
        return this;
    }

    public GivenParameters rows(String name, Table.Row... rows) {
        tables.put(name, new Table(name, "the test's " + name, List.of(rows)));
        return this;
    }

    @Override
    public boolean has(String name) {
        return values.containsKey(name) || tables.containsKey(name);
    }

    @Override
    public double number(String name, MeasureUnit unit) {
        return ((Measure) value(name)).in(unit);
    }

    @Override
    public String word(String name) {
        return ((Word) value(name)).word();
    }

    @Override
    public boolean flag(String name) {
        return ((Flag) value(name)).yes();
    }

    @Override
    public Table table(String name) {
        return Optional.ofNullable(tables.get(name)).orElseThrow(() -> new AssertionError("No table " + name));
    }

    @Override
    public String source(String name) {
        return "the test's " + name;
    }

    @Override
    public String confirmedBy(String name) {
        return "page";
    }

    @Override
    public List<String> recalled() {
        return List.of();
    }

    private Value value(String name) {
        return Optional.ofNullable(values.get(name)).orElseThrow(() -> new AssertionError("No parameter " + name));
    }
}
