package org.deckplanreview.method.en1995;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/** The values of the standards' files as they stand in {@code rulesets/standards}, with others on top. */
public final class StandardParameters implements Parameters {

    private static final YAMLMapper YAML = new YAMLMapper();
    private static final Map<String, JsonNode> FILES = new TreeMap<>();

    private final Map<String, JsonNode> values = new TreeMap<>();
    private final Map<String, Table> tables = new TreeMap<>();
    private final Map<String, Value> given = new TreeMap<>();

    private StandardParameters() {}

    /** EN 338, EN 1990 and EN 1995-1-1, with system strength for four joists at most 610 mm apart. */
    public static StandardParameters ofEurocodes() {
        return new StandardParameters()
                .read("en338-2016")
                .read("en1990-2002")
                .read("en1995-1-1-2004")
                .read("bs5268-2-2002")
                .read("bs6180-2011")
                .read("en1993-1-8-2005")
                .with("boltStressAreaRatio", 0.7)
                .with("screwRootRatio", 0.6)
                .with("place", "in-row")
                .with("ksysLeastMembers", 4)
                .with("ksysLargestSpacing", 610, MeasureUnit.MILLIMETRE)
                .with("loading", "uniform")
                .with("sideRestraint", "boards")
                .with("grooveDepth", 3, MeasureUnit.MILLIMETRE)
                .with("concentratedShareOnBoard", 1);
    }

    public static StandardParameters of(String... standards) {
        StandardParameters all = new StandardParameters();
        List.of(standards).forEach(all::read);
        return all;
    }

    public StandardParameters with(String name, double number) {
        return with(name, number, MeasureUnit.RATIO);
    }

    public StandardParameters with(String name, double number, MeasureUnit unit) {
        given.put(name, Measure.of(number, unit));
        return this;
    }

    public StandardParameters with(String name, String word) {
        given.put(name, new Word(word));
        return this;
    }

    private StandardParameters read(String standard) {
        JsonNode file = FILES.computeIfAbsent(standard, StandardParameters::file);
        file.path("values")
                .properties()
                .forEach(v -> values.put(v.getKey(), v.getValue().get("value")));
        file.path("tables")
                .properties()
                .forEach(t -> tables.put(t.getKey(), table(t.getKey(), standard, t.getValue())));
        return this;
    }

    private static JsonNode file(String standard) {
        try {
            return YAML.readTree(
                    Path.of("rulesets/standards", standard + ".yaml").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Table table(String name, String standard, JsonNode table) {
        List<Table.Row> rows = new ArrayList<>();
        for (JsonNode row : table.get("rows")) {
            Map<String, Value> cells = new LinkedHashMap<>();
            int i = 0;
            for (Map.Entry<String, JsonNode> column : table.get("columns").properties()) {
                String type = column.getValue().asText();
                JsonNode cell = row.get(i++);
                cells.put(
                        column.getKey(),
                        type.equals("word")
                                ? new Word(cell.asText())
                                : Measure.of(
                                        cell.asDouble(),
                                        MeasureUnit.ofSymbol(type).orElseThrow()));
            }
            rows.add(new Table.Row(cells));
        }
        return new Table(name, standard + ", " + table.get("clause").asText(), rows);
    }

    private Value value(String name) {
        Value value = given.get(name);
        if (value != null) {
            return value;
        }
        JsonNode token = values.get(name);
        if (token == null) {
            throw new IllegalArgumentException("No parameter " + name);
        }
        return token.isBoolean() ? new Flag(token.asBoolean()) : new Word(token.asText());
    }

    @Override
    public boolean has(String name) {
        return given.containsKey(name) || values.containsKey(name) || tables.containsKey(name);
    }

    @Override
    public double number(String name, MeasureUnit unit) {
        Value value = value(name);
        return (value instanceof Word token ? Measure.parse(token.word()) : (Measure) value).in(unit);
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
        Table table = tables.get(name);
        if (table == null) {
            throw new IllegalArgumentException("No table " + name);
        }
        return table;
    }

    @Override
    public String source(String name) {
        return "source of " + name;
    }

    @Override
    public String confirmedBy(String name) {
        return "page";
    }

    @Override
    public List<String> recalled() {
        return List.of();
    }
}
