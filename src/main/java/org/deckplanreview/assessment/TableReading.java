package org.deckplanreview.assessment;

import static org.deckplanreview.assessment.TableRows.isSame;
import static org.deckplanreview.assessment.TableRows.number;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.measure.Value;
import org.deckplanreview.method.Observation;
import org.deckplanreview.ruleset.LookUpTable;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.ruleset.TableKey;
import org.deckplanreview.vocabulary.Sense;

/** One reading of a table: its keys one after the other, then the row that they lead to. */
final class TableReading {
    private static final int DIGITS_OF_A_QUOTIENT = 9;
    private static final Formula SHARE = Formula.of("a = p * t", MeasureUnit.MILLIMETRE, "");
    private static final Formula BETWEEN =
            Formula.of("y = y_1 + (y_2 - y_1) * (x - x_1) / (x_2 - x_1)", MeasureUnit.MILLIMETRE, "");

    private final Rule.LookUp rule;
    private final LookUpTable table;
    private final Function<String, Observation> observing;
    private final Optional<SmallerSection> smaller;
    private final boolean raises;
    private final Trail trail;
    private final Raising raising;
    private final Map<String, String> translatedFrom = new LinkedHashMap<>();
    private final Map<String, Value> keys = new LinkedHashMap<>();
    private final Map<String, Measure> entered = new LinkedHashMap<>();
    private Optional<Between> between = Optional.empty();

    /**
     * @param observing finds a quantity of the subject
     * @param smaller taken in place of the subject's own section
     * @param raises whether keys are raised where more is carried than the table assumes
     */
    TableReading(
            Rule.LookUp rule,
            Function<String, Observation> observing,
            UnitSystem units,
            Optional<SmallerSection> smaller,
            boolean raises) {
        this.rule = rule;
        this.table = rule.table();
        this.observing = observing;
        this.smaller = smaller;
        this.raises = raises;
        trail = new Trail(units);
        raising = new Raising(observing, trail);
    }

    /** A value between those of two neighbouring rows. */
    private record Between(TableKey.Direct key, Measure found, Measure lower, Measure upper) {}

    /** What was carried beyond what the table assumes, as far as the reading met it. */
    Optional<Overload> overload() {
        return raising.overload();
    }

    TableEntry read() {
        for (TableKey key : rule.keys()) {
            if (key instanceof TableKey.Direct direct) {
                find(direct);
            } else {
                translate((TableKey.Translated) key);
            }
        }
        if (trail.beyond().isPresent()) {
            return noRow(trail.beyond().get());
        }
        if (!trail.needs().isEmpty()) {
            return new TableEntry.Missing(
                    trail.needs(),
                    "Which row of " + table.source() + " counts cannot be told from the submission.",
                    trail.way());
        }
        TableEntry entry = between.map(this::between).orElseGet(() -> taken(keys));
        return rule.share().map(share -> shared(entry, share)).orElse(entry);
    }

    /** What is allowed where that is only a part of what the table gives. */
    private TableEntry shared(TableEntry entry, Measure share) {
        if (entry instanceof TableEntry.Allowed a) {
            TableEntry.Bound part = shared(new TableEntry.Bound(a.value(), a.reason(), a.way()), share);
            return new TableEntry.Allowed(part.value(), part.reason(), part.way());
        }
        return entry instanceof TableEntry.NotHeld n
                ? new TableEntry.NotHeld(
                        n.safe().map(bound -> shared(bound, share)),
                        n.favourable().map(bound -> shared(bound, share)),
                        n.reason(),
                        n.way())
                : entry;
    }

    private TableEntry.Bound shared(TableEntry.Bound bound, Measure share) {
        Measure whole = bound.value();
        Sheet sheet = Sheet.blank();
        sheet.given("p", share.value(), RATIO, "part of it that is allowed", "");
        sheet.given("t", whole.value(), whole.unit(), asked() + " by the table", table.source());
        sheet.calculate(SHARE.in(whole.unit()));
        return new TableEntry.Bound(
                sheet.measure("a"), bound.reason(), bound.way().then(sheet));
    }

    private TableEntry.NoRow noRow(String reason) {
        return new TableEntry.NoRow(reason + " (" + table.source() + ").", trail.way());
    }

    private void find(TableKey.Direct key) {
        Observation seen = observing.apply(key.quantity());
        if (seen instanceof Observation.Missing && key.unstated().isPresent()) {
            Measure value = key.unstated().get();
            trail.assume("The " + key.quantity() + " is not stated: " + Phrases.of(value) + " is taken to enter "
                    + table.source() + ".");
            enter(key, value);
            return;
        }
        trail.found(seen, key.quantity())
                .flatMap(found -> multiplied(key, found.value()))
                .ifPresent(value -> enter(key, value));
    }

    private Optional<Value> multiplied(TableKey.Direct key, Value found) {
        if (key.times().isEmpty()) {
            return Optional.of(found);
        }
        TableKey.Factor factor = key.times().get();
        String by = factor.key().quantity();
        return trail.found(observing.apply(by), by)
                .flatMap(ratio ->
                        new KeyFactor(factor, trail).times((Measure) found, key.quantity(), ratio.value(), unit(key)));
    }

    private MeasureUnit unit(TableKey key) {
        return table.columns().get(key.column()).unit().orElseThrow();
    }

    /** Takes the value of a column that a found one leads to. */
    private void enter(TableKey.Direct key, Value found) {
        raised(key, found).ifPresent(value -> {
            Optional<Value> taken = value instanceof Measure m ? ofNumber(key, m) : ofWord(key, value);
            taken.ifPresent(cell -> keys.put(key.column(), cell));
            if (taken.isEmpty() && between.filter(b -> b.key() == key).isEmpty()) {
                trail.goBeyond(
                        "The table has no row for the " + key.quantity() + " " + Phrases.of(value, trail.units()));
            }
        });
    }

    private Optional<Value> raised(TableKey.Direct key, Value found) {
        return raises && key.raised().isPresent()
                ? raising.raise(key, key.raised().get(), (Measure) found).map(Value.class::cast)
                : Optional.of(found);
    }

    private Optional<Value> ofWord(TableKey.Direct key, Value found) {
        Optional<Value> same = table.rows().stream()
                .map(row -> row.cells().get(key.column()))
                .filter(found::equals)
                .findFirst();
        same.ifPresent(value ->
                trail.add(WorkingStep.ofWord(label(key), table.labels().cell(value), table.source(), key.quantity())));
        return same;
    }

    private Optional<Value> ofNumber(TableKey.Direct key, Measure measured) {
        MeasureUnit unit = unit(key);
        Measure found = Measure.of(measured.in(unit), unit);
        entered.put(key.column(), found);
        boolean isBelow = key.least()
                .filter(least -> Sense.UNDER.holds(found.value(), least.in(unit)))
                .isPresent();
        if (isBelow) {
            return Optional.empty();
        }
        TreeSet<Double> values = new TreeSet<>();
        table.rows().forEach(row -> values.add(((Measure) row.cells().get(key.column())).value()));
        Optional<Double> own = values.stream()
                .filter(value -> Sense.EQUAL.holds(found.value(), value))
                .findFirst();
        if (own.isPresent()) {
            return Optional.of(taken(key, found, own.get(), "a row's own value"));
        }
        Optional<Double> lower = Optional.ofNullable(values.lower(found.value()));
        Optional<Double> upper = Optional.ofNullable(values.higher(found.value()));
        boolean isInterpolated = rule.interpolation()
                .filter(i -> i.column().equals(key.column()))
                .isPresent();
        if (isInterpolated && lower.isPresent() && upper.isPresent()) {
            between =
                    Optional.of(new Between(key, found, Measure.of(lower.get(), unit), Measure.of(upper.get(), unit)));
            return Optional.empty();
        }
        return TableRows.next(key, lower, upper).map(value -> taken(key, found, value, direction(key.match())));
    }

    private static String direction(TableKey.Match match) {
        return match == TableKey.Match.UP
                ? "the next larger value, on the safe side"
                : "the next smaller value, on the safe side";
    }

    private Value taken(TableKey.Direct key, Measure found, double value, String how) {
        Sheet step = Sheet.blank();
        step.given(
                label(key),
                value,
                found.unit(),
                () -> key.quantity() + " " + Phrases.of(found, trail.units()) + ", row taken: " + how,
                table.source());
        trail.add(step);
        return Measure.of(value, found.unit());
    }

    private void translate(TableKey.Translated key) {
        List<String> known = new ArrayList<>();
        List<LookUpTable.Row> candidates = key.table().rows();
        for (TableKey.Direct by : key.by()) {
            Observation seen = observing.apply(by.quantity());
            Optional<Value> value = trail.found(seen, by.quantity()).flatMap(found -> raised(by, found.value()));
            if (value.isPresent()) {
                known.add(by.quantity() + " " + Phrases.of(value.get(), trail.units()));
                candidates = TableRows.matching(by, value.get(), candidates);
            } else if (!(seen instanceof Observation.Missing)) {
                return;
            }
        }
        if (smaller.filter(section -> section.key() == key).isPresent()) {
            candidates = List.of(smaller.get().row());
        }
        if (candidates.isEmpty()) {
            trail.goBeyond("There is no " + label(key) + " for " + String.join(", ", known) + " in "
                    + key.table().source() + ", which the table asks for");
        } else if (trail.needs().isEmpty()) {
            take(key, candidates.get(0), String.join(", ", known));
        }
    }

    private void take(TableKey.Translated key, LookUpTable.Row row, String from) {
        Value given = row.cells().get(key.column());
        keys.put(key.column(), given);
        boolean isOfWords = row.cells().entrySet().stream()
                .noneMatch(cell ->
                        cell.getValue() instanceof Measure && !cell.getKey().equals(key.column()));
        if (isOfWords) {
            translatedFrom.put(key.column(), from);
        }
        trail.take(TableRows.taken(key.table(), row, key.by()));
        trail.add(WorkingStep.ofWord(
                label(key), key.table().labels().cell(given), key.table().source(), "from " + from));
        boolean hasRow =
                table.rows().stream().anyMatch(one -> isSame(one.cells().get(key.column()), given));
        if (!hasRow) {
            trail.goBeyond("No row is known for " + named(key, given));
        }
    }

    private Optional<LookUpTable.Row> rowOf(Map<String, Value> wanted) {
        return table.rows().stream()
                .filter(row -> row.cells().containsKey(rule.column()))
                .filter(row -> wanted.entrySet().stream()
                        .allMatch(e -> isSame(row.cells().get(e.getKey()), e.getValue())))
                .findFirst();
    }

    private Map<String, Value> keysWith(TableKey.Direct key, Measure value) {
        Map<String, Value> all = new LinkedHashMap<>();
        rule.keys().forEach(k -> all.put(k.column(), k == key ? value : keys.get(k.column())));
        return all;
    }

    private TableEntry taken(Map<String, Value> wanted) {
        Optional<LookUpTable.Row> row = rowOf(wanted);
        if (row.isEmpty()) {
            return notHeld(wanted);
        }
        trail.take(taken(row.get(), wanted));
        if (row.get().cells().get(rule.column()) instanceof Measure allowed) {
            trail.add(given(asked(), allowed, named(wanted)));
            return new TableEntry.Allowed(
                    allowed, "Row taken: " + named(wanted) + " (" + table.source() + ").", trail.way());
        }
        trail.add(WorkingStep.ofWord(
                asked(), table.labels().cell(LookUpTable.NOT_PERMITTED), table.source(), named(wanted)));
        return new TableEntry.NotPermitted(
                "The table does not permit " + named(wanted) + " (" + table.source() + ").", trail.way());
    }

    /** Keys that say which way is the safe one tell on which side of the wanted row the others are. */
    private TableEntry notHeld(Map<String, Value> wanted) {
        String reason = "No row is known for " + named(wanted);
        boolean smallerIsSafer = rule.sense() == Sense.AT_MOST;
        Optional<TableEntry.Bound> safe = bound(row -> isBeside(row, wanted, true), !smallerIsSafer)
                .map(row -> bound(row, "Row taken, on the safe side: "));
        Optional<TableEntry.Bound> favourable = bound(row -> isBeside(row, wanted, false), smallerIsSafer)
                .map(row -> bound(row, "Even a more favourable row allows no more: "));
        return safe.isEmpty() && favourable.isEmpty()
                ? noRow(reason)
                : new TableEntry.NotHeld(safe, favourable, reason + " (" + table.source() + ").", trail.way());
    }

    /** Whether a row is the wanted one or lies beside it, on its safe side or on the other; of values between rows, beside them. */
    private boolean isBeside(LookUpTable.Row row, Map<String, Value> wanted, boolean onSafeSide) {
        return rule.keys().stream().allMatch(key -> {
            Value cell = row.cells().get(key.column());
            if (!(key instanceof TableKey.Direct direct) || direct.match() == TableKey.Match.NONE) {
                return isSame(cell, wanted.get(key.column()));
            }
            boolean isUp = (direct.match() == TableKey.Match.UP) == onSafeSide;
            boolean isBetween = rule.interpolation()
                    .filter(i -> i.column().equals(key.column()))
                    .isPresent();
            Measure from = isBetween && !onSafeSide ? entered.get(key.column()) : (Measure) wanted.get(key.column());
            return (isUp ? Sense.AT_LEAST : Sense.AT_MOST).holds(((Measure) cell).value(), from.value());
        });
    }

    /** The row that allows most, or least, of those that pass. */
    private Optional<LookUpTable.Row> bound(Predicate<LookUpTable.Row> passes, boolean least) {
        Comparator<LookUpTable.Row> rising = Comparator.comparingDouble(row -> number(row, rule.column()));
        return table.rows().stream()
                .filter(row -> row.cells().get(rule.column()) instanceof Measure)
                .filter(passes)
                .min(least ? rising : rising.reversed());
    }

    private TableEntry.Bound bound(LookUpTable.Row row, String side) {
        Map<String, Value> cells = new LinkedHashMap<>();
        rule.keys().forEach(key -> cells.put(key.column(), row.cells().get(key.column())));
        Measure value = (Measure) row.cells().get(rule.column());
        return new TableEntry.Bound(
                value,
                side + named(cells) + " (" + table.source() + ").",
                trail.way(taken(row, cells), given(asked(), value, named(cells))));
    }

    private TableEntry between(Between at) {
        Optional<Measure> below = allowed(keysWith(at.key(), at.lower()));
        Optional<Measure> above = allowed(keysWith(at.key(), at.upper()));
        if (below.isPresent() && above.isPresent()) {
            return interpolated(at, below.get(), above.get());
        }
        return TableRows.next(
                        at.key(),
                        Optional.of(at.lower().value()),
                        Optional.of(at.upper().value()))
                .map(value ->
                        taken(at.key(), at.found(), value, direction(at.key().match())))
                .map(value -> taken(keysWith(at.key(), (Measure) value)))
                .orElseGet(() -> noRow("The table has no rows on both sides of the "
                        + at.key().quantity() + " " + Phrases.of(at.found(), trail.units())));
    }

    private Optional<Measure> allowed(Map<String, Value> wanted) {
        return rowOf(wanted)
                .map(row -> row.cells().get(rule.column()))
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast);
    }

    private TableEntry interpolated(Between at, Measure below, Measure above) {
        Rule.Interpolation permitted = rule.interpolation().orElseThrow();
        for (Measure side : List.of(at.lower(), at.upper())) {
            Map<String, Value> wanted = keysWith(at.key(), side);
            trail.take(taken(rowOf(wanted).orElseThrow(), wanted));
        }
        String column = name(at.key());
        Sheet sheet = Sheet.blank();
        enter(sheet, "x", at.found(), at.key().quantity(), "");
        enter(sheet, "x_1", at.lower(), column + " below", table.source());
        enter(sheet, "x_2", at.upper(), column + " above", table.source());
        enter(sheet, "y_1", below, asked() + " below", table.source());
        enter(sheet, "y_2", above, asked() + " above", table.source());
        sheet.calculate(BETWEEN.in(below.unit()).by(permitted.clause()));
        trail.add(sheet);
        Measure value = sheet.measure("y");
        Measure rounded =
                permitted.roundedTo().map(step -> rounded(value, step)).orElse(value);
        permitted
                .roundedTo()
                .ifPresent(step -> trail.add(given(asked(), rounded, "y rounded to the nearest " + Phrases.of(step))));
        String reason = "Interpolated between " + column + " " + Phrases.of(at.lower()) + " and "
                + Phrases.of(at.upper()) + (keys.isEmpty() ? "" : ", " + named(keys)) + " (" + table.source()
                + "; permitted by " + permitted.clause() + ").";
        return new TableEntry.Allowed(rounded, reason, trail.way());
    }

    private static void enter(Sheet sheet, String symbol, Measure value, String meaning, String source) {
        sheet.given(symbol, value.value(), value.unit(), meaning, source);
    }

    /** To the nearest multiple, halves up; a noise beyond the ninth digit of the quotient decides nothing. */
    private static Measure rounded(Measure value, Measure step) {
        double steps = value.value() / step.in(value.unit());
        BigDecimal whole = new BigDecimal(steps)
                .setScale(DIGITS_OF_A_QUOTIENT, RoundingMode.HALF_EVEN)
                .setScale(0, RoundingMode.HALF_UP);
        return Measure.of(whole.doubleValue() * step.in(value.unit()), value.unit());
    }

    private Sheet given(String symbol, Measure value, String meaning) {
        Sheet sheet = Sheet.blank();
        enter(sheet, symbol, value, meaning, table.source());
        return sheet;
    }

    private TakenRow taken(LookUpTable.Row row, Map<String, Value> wanted) {
        return new TakenRow(table.reference(), named(wanted), table.source(), table.confirmedBy(row));
    }

    private String named(Map<String, Value> cells) {
        return rule.keys().stream()
                .filter(key -> cells.containsKey(key.column()))
                .map(key -> named(key, cells.get(key.column())))
                .collect(Collectors.joining(", "));
    }

    /** A key in the words of the quantity that is looked up; what words translate to is a sign of the table's own. */
    private String named(TableKey key, Value value) {
        return Optional.ofNullable(translatedFrom.get(key.column()))
                .orElseGet(() -> name(key) + " " + Phrases.of(value));
    }

    /** The column that allows, as people read it. */
    private String asked() {
        return table.labels().column(rule.column());
    }

    private String label(TableKey key) {
        LookUpTable known = key instanceof TableKey.Translated translated ? translated.table() : table;
        return known.labels().column(key.column());
    }

    private String name(TableKey key) {
        if (key instanceof TableKey.Direct direct) {
            return direct.quantity()
                    + direct.times().map(f -> " times " + f.label()).orElse("");
        }
        return label(key);
    }
}
