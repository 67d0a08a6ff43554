package org.deckplanreview.assessment;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
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

/** What a look-up comes to on one subject. Reasons are sentences. */
sealed interface TableEntry {

    /** The rows that were taken, the working that led to them and what was taken for it that is not stated. */
    Way way();

    String reason();

    record Way(List<WorkingStep> working, List<TakenRow> rows, List<String> assumptions) {
        public Way {
            working = List.copyOf(working);
            rows = List.copyOf(rows);
            assumptions = List.copyOf(assumptions);
        }
    }

    /** @param reason which row it is from, to follow the sentence that tells the value */
    record Allowed(Measure value, String reason, Way way) implements TableEntry {}

    record NotPermitted(String reason, Way way) implements TableEntry {}

    /** The table does not cover the case. */
    record NoRow(String reason, Way way) implements TableEntry {}

    /**
     * The row is in the source's table and is not known here, or what is carried is more than the table assumes. Rows on
     * either side tell what it can be.
     *
     * @param safe what a less favourable row allows: what complies with it complies
     * @param favourable what a more favourable row allows: what does not comply with it does not comply
     */
    record NotHeld(Optional<Bound> safe, Optional<Bound> favourable, String reason, Way way) implements TableEntry {}

    /** @param reason which row it is from, as a sentence */
    record Bound(Measure value, String reason, Way way) {}

    record Missing(List<Need> needs, String reason, Way way) implements TableEntry {}

    /**
     * @param observing finds a quantity of the subject
     * @param units in which what was found is told; rows are told as the table has them
     */
    static TableEntry of(Rule.LookUp rule, Function<String, Observation> observing, UnitSystem units) {
        TableEntry own = raised(rule, observing, units, Optional.empty());
        return own instanceof NoRow || own instanceof NotHeld
                ? SmallerSection.beside(
                        own, rule, observing, smaller -> raised(rule, observing, units, Optional.of(smaller)))
                : own;
    }

    /**
     * What the table gives; where more is carried than it assumes, the better of a row of the same load and a span shortened
     * for the load on the safe side, for what fails there may yet carry it, and what the table gives for its own load on the
     * other.
     */
    private static TableEntry raised(
            Rule.LookUp rule,
            Function<String, Observation> observing,
            UnitSystem units,
            Optional<SmallerSection> smaller) {
        Reading raising = new Reading(rule, observing, units, smaller, true);
        TableEntry raised = raising.read();
        if (raising.overload.isEmpty() || raised instanceof Missing) {
            return raised;
        }
        TableEntry plain = new Reading(rule, observing, units, smaller, false).read();
        if (!(plain instanceof Allowed) && !(plain instanceof NotHeld)) {
            return plain;
        }
        Overload overload = raising.overload.get();
        Optional<Bound> safe = Stream.of(safe(raised), safe(plain).flatMap(bound -> overload.shorten(bound, rule)))
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(bound -> bound.value().value()));
        return new NotHeld(safe, favourable(plain), overload.reason(), raised.way());
    }

    /**
     * What is carried is more than the table assumes.
     *
     * @param ratio of the one to the other, over 1
     */
    record Overload(double ratio, String reason) {

        /**
         * A span shorter by the root of the ratio carries as much: moments grow with its square, deflections with more, and
         * shear forces, which grow with the span alone, do not decide the spans of the tables.
         */
        Optional<Bound> shorten(Bound bound, Rule.LookUp rule) {
            if (rule.sense() != Sense.AT_MOST) {
                return Optional.empty();
            }
            MeasureUnit unit = bound.value().unit();
            Sheet steps = Sheet.blank();
            double r = steps.given("r_q", ratio, MeasureUnit.RATIO, "load over what the table assumes", "");
            double l = steps.given("l_t", bound.value().value(), unit, rule.column() + " by the table", "");
            Measure shorter = Measure.of(
                    steps.step("l_q", "l_t / sqrt(r_q)", l / StrictMath.sqrt(r), unit, "moments grow as q l^2"), unit);
            List<WorkingStep> all = new ArrayList<>(bound.way().working());
            all.addAll(steps.steps());
            return Optional.of(new Bound(
                    shorter,
                    bound.reason() + " Shortened in the root of the ratio of loads.",
                    new Way(all, bound.way().rows(), bound.way().assumptions())));
        }
    }

    private static Optional<Bound> safe(TableEntry entry) {
        return entry instanceof NotHeld n ? n.safe() : bound(entry);
    }

    private static Optional<Bound> favourable(TableEntry entry) {
        return entry instanceof NotHeld n ? n.favourable() : bound(entry);
    }

    private static Optional<Bound> bound(TableEntry entry) {
        return entry instanceof Allowed a ? Optional.of(new Bound(a.value(), a.reason(), a.way())) : Optional.empty();
    }

    /** One reading of a table. */
    final class Reading {

        private static final int DIGITS_OF_A_QUOTIENT = 9;

        private final Rule.LookUp rule;
        private final LookUpTable table;
        private final UnitSystem units;
        private final Function<String, Observation> observing;
        private final Optional<SmallerSection> smaller;
        private final Map<String, String> translatedFrom = new LinkedHashMap<>();
        private final List<WorkingStep> working = new ArrayList<>();
        private final List<TakenRow> rows = new ArrayList<>();
        private final List<String> assumptions = new ArrayList<>();
        private final List<Need> needs = new ArrayList<>();
        private final Map<String, Value> keys = new LinkedHashMap<>();
        private final Map<String, Measure> entered = new LinkedHashMap<>();
        private Optional<Between> between = Optional.empty();

        private final boolean raises;
        private Optional<Overload> overload = Optional.empty();

        /**
         * @param smaller taken in place of the subject's own section
         * @param raises whether keys are raised where more is carried than the table assumes
         */
        private Reading(
                Rule.LookUp rule,
                Function<String, Observation> observing,
                UnitSystem units,
                Optional<SmallerSection> smaller,
                boolean raises) {
            this.raises = raises;
            this.rule = rule;
            this.units = units;
            this.table = rule.table();
            this.observing = observing;
            this.smaller = smaller;
        }

        /** A value between those of two neighbouring rows. */
        private record Between(TableKey.Direct key, Measure found, Measure lower, Measure upper) {}

        private TableEntry read() {
            Optional<String> beyond = Optional.empty();
            for (TableKey key : rule.keys()) {
                Optional<String> reason =
                        key instanceof TableKey.Direct direct ? find(direct) : translate((TableKey.Translated) key);
                beyond = beyond.or(() -> reason);
            }
            if (beyond.isPresent()) {
                return noRow(beyond.get());
            }
            if (!needs.isEmpty()) {
                return new Missing(
                        List.copyOf(needs),
                        "Which row of " + table.source() + " counts cannot be told from the submission.",
                        way());
            }
            TableEntry entry = between.map(this::between).orElseGet(() -> taken(keys));
            return rule.share().map(share -> shared(entry, share)).orElse(entry);
        }

        /** What is allowed where that is only a part of what the table gives. */
        private TableEntry shared(TableEntry entry, Measure share) {
            if (entry instanceof Allowed allowed) {
                return new Allowed(
                        times(allowed.value(), share), allowed.reason(), shared(allowed.way(), allowed.value(), share));
            }
            return entry instanceof NotHeld n
                    ? new NotHeld(
                            n.safe().map(bound -> shared(bound, share)),
                            n.favourable().map(bound -> shared(bound, share)),
                            n.reason(),
                            n.way())
                    : entry;
        }

        private Bound shared(Bound bound, Measure share) {
            return new Bound(times(bound.value(), share), bound.reason(), shared(bound.way(), bound.value(), share));
        }

        private static Measure times(Measure value, Measure share) {
            return Measure.of(value.value() * share.value(), value.unit());
        }

        private Way shared(Way way, Measure value, Measure share) {
            Sheet steps = Sheet.blank();
            double p = steps.given("p", share.value(), MeasureUnit.RATIO, "part of it that is allowed", "");
            double t = steps.given("t", value.value(), value.unit(), rule.column() + " by the table", table.source());
            steps.step("a", "p * t", p * t, value.unit(), "");
            List<WorkingStep> all = new ArrayList<>(way.working());
            all.addAll(steps.steps());
            return new Way(all, way.rows(), way.assumptions());
        }

        private Way way() {
            return new Way(working, rows, assumptions);
        }

        private NoRow noRow(String reason) {
            return new NoRow(reason + " (" + table.source() + ").", way());
        }

        /** Finds the value of a key's column; a reason where the table has none. */
        private Optional<String> find(TableKey.Direct key) {
            Observation seen = observing.apply(key.quantity());
            if (seen instanceof Observation.Missing && key.unstated().isPresent()) {
                return unstated(key, key.unstated().get());
            }
            if (seen instanceof Observation.Missing m) {
                needs.addAll(m.needs());
                return Optional.empty();
            }
            if (seen instanceof Observation.NotApplicable n) {
                return Optional.of("The table asks for the " + key.quantity() + ": " + n.reason());
            }
            Observation.Found found = (Observation.Found) seen;
            working.addAll(found.working());
            return key.times().isPresent()
                    ? multiplied(key, key.times().get(), (Measure) found.value())
                    : enter(key, found.value());
        }

        /** Enters the table with the quantity times a factor; a reason where one of the tables has none. */
        private Optional<String> multiplied(TableKey.Direct key, TableKey.Factor factor, Measure found) {
            TableKey.Direct by = factor.key();
            Observation seen = observing.apply(by.quantity());
            if (seen instanceof Observation.Missing m) {
                needs.addAll(m.needs());
                return Optional.empty();
            }
            if (seen instanceof Observation.NotApplicable n) {
                return Optional.of("The table asks for the " + by.quantity() + ": " + n.reason());
            }
            Observation.Found ratio = (Observation.Found) seen;
            working.addAll(ratio.working());
            Sheet steps = Sheet.blank();
            Optional<Double> f = factor(factor, (Measure) ratio.value(), steps);
            if (f.isEmpty()) {
                return Optional.of("There is no " + factor.column() + " for the " + by.quantity() + " "
                        + Phrases.of(ratio.value(), units) + " in "
                        + factor.table().source() + ", which the table asks for");
            }
            MeasureUnit unit = table.columns().get(key.column()).unit().orElseThrow();
            double l = steps.given("l", found.in(unit), unit, key.quantity(), "");
            Measure product = Measure.of(steps.step("l_e", "f * l", f.get() * l, unit, ""), unit);
            working.addAll(steps.steps());
            return enter(key, product);
        }

        /** The factor of the row that counts, or the one between two rows where that is permitted. */
        private Optional<Double> factor(TableKey.Factor factor, Measure ratio, Sheet steps) {
            TableKey.Direct by = factor.key();
            MeasureUnit unit = factor.table().columns().get(by.column()).unit().orElseThrow();
            double found = ratio.in(unit);
            NavigableMap<Double, LookUpTable.Row> all = new TreeMap<>();
            factor.table().rows().forEach(row -> all.put(number(row, by.column()), row));
            Optional<LookUpTable.Row> own = all.entrySet().stream()
                    .filter(row -> Sense.EQUAL.holds(row.getKey(), found))
                    .map(Map.Entry::getValue)
                    .findFirst();
            Optional<LookUpTable.Row> lower =
                    Optional.ofNullable(all.lowerEntry(found)).map(Map.Entry::getValue);
            Optional<LookUpTable.Row> upper =
                    Optional.ofNullable(all.higherEntry(found)).map(Map.Entry::getValue);
            if (own.isEmpty() && factor.interpolation().isPresent() && lower.isPresent() && upper.isPresent()) {
                return Optional.of(between(factor, found, lower.get(), upper.get(), steps));
            }
            return own.or(() -> next(by, lower, upper)).map(row -> {
                rows.add(taken(factor.table(), row, List.of(by)));
                return steps.given(
                        "f",
                        number(row, factor.column()),
                        MeasureUnit.RATIO,
                        factor.column() + ", for " + by.quantity() + " " + Phrases.of(ratio, units),
                        factor.table().source());
            });
        }

        private double between(
                TableKey.Factor factor, double found, LookUpTable.Row lower, LookUpTable.Row upper, Sheet steps) {
            String column = factor.key().column();
            String source = factor.table().source();
            List.of(lower, upper).forEach(row -> rows.add(taken(factor.table(), row, List.of(factor.key()))));
            double r = steps.given("r", found, MeasureUnit.RATIO, factor.key().quantity(), "");
            double r1 = steps.given("r_1", number(lower, column), MeasureUnit.RATIO, column + " below", source);
            double r2 = steps.given("r_2", number(upper, column), MeasureUnit.RATIO, column + " above", source);
            double f1 = steps.given(
                    "f_1", number(lower, factor.column()), MeasureUnit.RATIO, factor.column() + " below", source);
            double f2 = steps.given(
                    "f_2", number(upper, factor.column()), MeasureUnit.RATIO, factor.column() + " above", source);
            return steps.step(
                    "f",
                    "f_1 + (f_2 - f_1) * (r - r_1) / (r_2 - r_1)",
                    f1 + (f2 - f1) * (r - r1) / (r2 - r1),
                    MeasureUnit.RATIO,
                    factor.interpolation().orElseThrow());
        }

        private static double number(LookUpTable.Row row, String column) {
            return ((Measure) row.cells().get(column)).value();
        }

        private Optional<String> unstated(TableKey.Direct key, Measure value) {
            assumptions.add("The " + key.quantity() + " is not stated: " + Phrases.of(value) + " is taken to enter "
                    + table.source() + ".");
            return enter(key, value);
        }

        /** Takes the value of a column that a found one leads to; a reason where the table has none. */
        private Optional<String> enter(TableKey.Direct key, Value found) {
            if (raises && key.raised().isPresent()) {
                Raised raised = raised(key, key.raised().get(), (Measure) found);
                return raised instanceof Raised.To to
                        ? find(key, to.value())
                        : Optional.of(((Raised.Not) raised).reason());
            }
            return find(key, found);
        }

        private Optional<String> find(TableKey.Direct key, Value found) {
            Optional<Value> taken = found instanceof Measure m ? number(key, m) : same(key, found);
            taken.ifPresent(value -> keys.put(key.column(), value));
            return taken.isPresent() || between.filter(b -> b.key() == key).isPresent()
                    ? Optional.empty()
                    : Optional.of("The table has no row for the " + key.quantity() + " " + Phrases.of(found, units));
        }

        /** A number in proportion to the load, or why there is none; what is missing for it is noted. */
        private sealed interface Raised {
            record To(Measure value) implements Raised {}

            record Not(String reason) implements Raised {}
        }

        private Raised raised(TableKey.Direct key, TableKey.Raise raise, Measure found) {
            Observation load = observing.apply(raise.quantity());
            Observation by = observing.apply(raise.key().quantity());
            for (Observation seen : List.of(load, by)) {
                if (seen instanceof Observation.NotApplicable n) {
                    return new Raised.Not("The table is for a load, which cannot be compared: " + n.reason());
                }
                if (seen instanceof Observation.Missing m) {
                    needs.addAll(m.needs());
                }
            }
            if (!(load instanceof Observation.Found carried) || !(by instanceof Observation.Found column)) {
                return new Raised.To(found);
            }
            Optional<Measure> assumed = matching(
                            raise.key(), column.value(), raise.assumed().rows())
                    .stream()
                    .map(row -> (Measure) row.cells().get(raise.column()))
                    .findFirst();
            if (assumed.isEmpty()) {
                return new Raised.Not(
                        "There is no assumed load for the " + raise.key().quantity() + " "
                                + Phrases.of(column.value(), units) + " in "
                                + raise.assumed().source());
            }
            MeasureUnit unit = assumed.get().unit();
            double ratio = ((Measure) carried.value()).in(unit) / assumed.get().value();
            if (Sense.AT_MOST.holds(ratio, raise.from().value())) {
                return new Raised.To(found);
            }
            working.addAll(carried.working());
            Sheet steps = Sheet.blank();
            double q = steps.given("q", ((Measure) carried.value()).in(unit), unit, raise.quantity(), "");
            double q0 = steps.given(
                    "q_0",
                    assumed.get().value(),
                    unit,
                    "load that the table assumes",
                    raise.assumed().source());
            double x = steps.given("x", found.value(), found.unit(), key.quantity(), "");
            Measure value = Measure.of(steps.step("x_q", "x * q / q_0", x * q / q0, found.unit(), ""), found.unit());
            working.addAll(steps.steps());
            overload = Optional.of(new Overload(
                    ratio,
                    "What is carried comes to " + Phrases.of(Measure.of(q, unit), units) + ", more than the "
                            + Phrases.of(assumed.get()) + " that the table assumes."));
            return new Raised.To(value);
        }

        private Optional<Value> same(TableKey.Direct key, Value found) {
            Optional<Value> same = table.rows().stream()
                    .map(row -> row.cells().get(key.column()))
                    .filter(found::equals)
                    .findFirst();
            same.ifPresent(value ->
                    working.add(WorkingStep.ofWord(key.column(), Phrases.of(value), table.source(), key.quantity())));
            return same;
        }

        private Optional<Value> number(TableKey.Direct key, Measure measured) {
            MeasureUnit unit = table.columns().get(key.column()).unit().orElseThrow();
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
                between = Optional.of(
                        new Between(key, found, Measure.of(lower.get(), unit), Measure.of(upper.get(), unit)));
                return Optional.empty();
            }
            return next(key, lower, upper).map(value -> taken(key, found, value, direction(key.match())));
        }

        private static <T> Optional<T> next(TableKey.Direct key, Optional<T> lower, Optional<T> upper) {
            return switch (key.match()) {
                case NONE -> Optional.empty();
                case UP -> upper;
                case DOWN -> lower;
            };
        }

        private static String direction(TableKey.Match match) {
            return match == TableKey.Match.UP
                    ? "the next larger value, on the safe side"
                    : "the next smaller value, on the safe side";
        }

        private Value taken(TableKey.Direct key, Measure found, double value, String how) {
            Sheet step = Sheet.blank();
            step.given(
                    key.column(),
                    value,
                    found.unit(),
                    key.quantity() + " " + Phrases.of(found, units) + ", row taken: " + how,
                    table.source());
            working.addAll(step.steps());
            return Measure.of(value, found.unit());
        }

        private Optional<String> translate(TableKey.Translated key) {
            List<String> known = new ArrayList<>();
            List<LookUpTable.Row> candidates = key.table().rows();
            boolean isWhole = true;
            for (TableKey.Direct by : key.by()) {
                Observation seen = observing.apply(by.quantity());
                if (seen instanceof Observation.NotApplicable n) {
                    return Optional.of("The table asks for the " + by.quantity() + ": " + n.reason());
                }
                if (seen instanceof Observation.Missing m) {
                    needs.addAll(m.needs());
                    isWhole = false;
                } else if (seen instanceof Observation.Found found) {
                    working.addAll(found.working());
                    Value value = found.value();
                    if (raises && by.raised().isPresent()) {
                        Raised raised = raised(by, by.raised().get(), (Measure) value);
                        if (raised instanceof Raised.Not not) {
                            return Optional.of(not.reason());
                        }
                        value = ((Raised.To) raised).value();
                    }
                    known.add(by.quantity() + " " + Phrases.of(value, units));
                    candidates = matching(by, value, candidates);
                }
            }
            if (smaller.filter(section -> section.key() == key).isPresent()) {
                candidates = List.of(smaller.get().row());
            }
            if (candidates.isEmpty()) {
                return Optional.of("There is no " + key.column() + " for " + String.join(", ", known) + " in "
                        + key.table().source() + ", which the table asks for");
            }
            if (!isWhole || !needs.isEmpty()) {
                return Optional.empty();
            }
            LookUpTable.Row row = candidates.get(0);
            Value given = row.cells().get(key.column());
            keys.put(key.column(), given);
            if (row.cells().entrySet().stream()
                    .noneMatch(cell ->
                            cell.getValue() instanceof Measure && !cell.getKey().equals(key.column()))) {
                translatedFrom.put(key.column(), String.join(", ", known));
            }
            rows.add(taken(key.table(), row, key.by()));
            working.add(WorkingStep.ofWord(
                    key.column(), Phrases.of(given), key.table().source(), "from " + String.join(", ", known)));
            return hasRow(key.column(), given)
                    ? Optional.empty()
                    : Optional.of("No row is known for " + named(key, given));
        }

        /** The rows with the value of a column that a found one leads to. */
        private static List<LookUpTable.Row> matching(TableKey.Direct by, Value found, List<LookUpTable.Row> all) {
            Optional<Value> value = all.stream()
                    .map(row -> row.cells().get(by.column()))
                    .filter(cell -> isSame(cell, found))
                    .findFirst()
                    .or(() -> found instanceof Measure measure ? beside(by, measure, all) : Optional.empty());
            return value.map(taken -> all.stream()
                            .filter(row -> isSame(row.cells().get(by.column()), taken))
                            .toList())
                    .orElse(List.of());
        }

        private static Optional<Value> beside(TableKey.Direct by, Measure found, List<LookUpTable.Row> all) {
            NavigableMap<Double, Value> values = new TreeMap<>();
            all.forEach(row -> values.put(number(row, by.column()), row.cells().get(by.column())));
            if (values.isEmpty()) {
                return Optional.empty();
            }
            double at = found.in(((Measure) values.firstEntry().getValue()).unit());
            return next(
                    by,
                    Optional.ofNullable(values.lowerEntry(at)).map(Map.Entry::getValue),
                    Optional.ofNullable(values.higherEntry(at)).map(Map.Entry::getValue));
        }

        private boolean hasRow(String column, Value value) {
            return table.rows().stream().anyMatch(row -> isSame(row.cells().get(column), value));
        }

        private static boolean isSame(Value cell, Value value) {
            return cell instanceof Measure a && value instanceof Measure b
                    ? Sense.EQUAL.holds(b.in(a.unit()), a.value())
                    : cell.equals(value);
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
            rows.add(taken(row.get(), wanted));
            if (row.get().cells().get(rule.column()) instanceof Measure allowed) {
                working.addAll(given(rule.column(), allowed, named(wanted)));
                return new Allowed(allowed, "Row taken: " + named(wanted) + " (" + table.source() + ").", way());
            }
            working.add(
                    WorkingStep.ofWord(rule.column(), LookUpTable.NOT_PERMITTED.word(), table.source(), named(wanted)));
            return new NotPermitted("The table does not permit " + named(wanted) + " (" + table.source() + ").", way());
        }

        /** Keys that say which way is the safe one tell on which side of the wanted row the others are. */
        private TableEntry notHeld(Map<String, Value> wanted) {
            String reason = "No row is known for " + named(wanted);
            boolean smallerIsSafer = rule.sense() == Sense.AT_MOST;
            Optional<Bound> safe = bound(row -> isBeside(row, wanted, true), !smallerIsSafer)
                    .map(row -> bound(row, "Row taken, on the safe side: "));
            Optional<Bound> favourable = bound(row -> isBeside(row, wanted, false), smallerIsSafer)
                    .map(row -> bound(row, "Even a more favourable row allows no more: "));
            return safe.isEmpty() && favourable.isEmpty()
                    ? noRow(reason)
                    : new NotHeld(safe, favourable, reason + " (" + table.source() + ").", way());
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
                Measure from =
                        isBetween && !onSafeSide ? entered.get(key.column()) : (Measure) wanted.get(key.column());
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

        private Bound bound(LookUpTable.Row row, String side) {
            Map<String, Value> cells = new LinkedHashMap<>();
            rule.keys().forEach(key -> cells.put(key.column(), row.cells().get(key.column())));
            Measure value = (Measure) row.cells().get(rule.column());
            List<TakenRow> taken = new ArrayList<>(rows);
            taken.add(taken(row, cells));
            List<WorkingStep> steps = new ArrayList<>(working);
            steps.addAll(given(rule.column(), value, named(cells)));
            return new Bound(
                    value, side + named(cells) + " (" + table.source() + ").", new Way(steps, taken, assumptions));
        }

        private TableEntry between(Between at) {
            Optional<Measure> below = allowed(keysWith(at.key(), at.lower()));
            Optional<Measure> above = allowed(keysWith(at.key(), at.upper()));
            if (below.isPresent() && above.isPresent()) {
                return interpolated(at, below.get(), above.get());
            }
            return next(
                            at.key(),
                            Optional.of(at.lower().value()),
                            Optional.of(at.upper().value()))
                    .map(value -> taken(
                            at.key(), at.found(), value, direction(at.key().match())))
                    .map(value -> taken(keysWith(at.key(), (Measure) value)))
                    .orElseGet(() -> noRow("The table has no rows on both sides of the "
                            + at.key().quantity() + " " + Phrases.of(at.found(), units)));
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
                rows.add(taken(rowOf(wanted).orElseThrow(), wanted));
            }
            Sheet steps = Sheet.blank();
            String column = name(at.key());
            double x = steps.given(
                    "x", at.found().value(), at.found().unit(), at.key().quantity(), "");
            double x1 = steps.given("x_1", at.lower().value(), at.lower().unit(), column + " below", table.source());
            double x2 = steps.given("x_2", at.upper().value(), at.upper().unit(), column + " above", table.source());
            double y1 = steps.given("y_1", below.value(), below.unit(), rule.column() + " below", table.source());
            double y2 = steps.given("y_2", above.value(), above.unit(), rule.column() + " above", table.source());
            double y = steps.step(
                    "y",
                    "y_1 + (y_2 - y_1) * (x - x_1) / (x_2 - x_1)",
                    y1 + (y2 - y1) * (x - x1) / (x2 - x1),
                    below.unit(),
                    permitted.clause());
            working.addAll(steps.steps());
            Measure value = Measure.of(y, below.unit());
            Measure rounded =
                    permitted.roundedTo().map(step -> rounded(value, step)).orElse(value);
            permitted
                    .roundedTo()
                    .ifPresent(step -> working.addAll(
                            given(rule.column(), rounded, "y rounded to the nearest " + Phrases.of(step))));
            String reason = "Interpolated between " + column + " " + Phrases.of(at.lower()) + " and "
                    + Phrases.of(at.upper()) + (keys.isEmpty() ? "" : ", " + named(keys)) + " (" + table.source()
                    + "; permitted by " + permitted.clause() + ").";
            return new Allowed(rounded, reason, way());
        }

        /** To the nearest multiple, halves up; a noise beyond the ninth digit of the quotient decides nothing. */
        private static Measure rounded(Measure value, Measure step) {
            double steps = value.value() / step.in(value.unit());
            BigDecimal whole = new BigDecimal(steps)
                    .setScale(DIGITS_OF_A_QUOTIENT, RoundingMode.HALF_EVEN)
                    .setScale(0, RoundingMode.HALF_UP);
            return Measure.of(whole.doubleValue() * step.in(value.unit()), value.unit());
        }

        private List<WorkingStep> given(String symbol, Measure value, String meaning) {
            Sheet step = Sheet.blank();
            step.given(symbol, value.value(), value.unit(), meaning, table.source());
            return step.steps();
        }

        private TakenRow taken(LookUpTable.Row row, Map<String, Value> keys) {
            return new TakenRow(table.reference(), named(keys), table.source(), table.confirmedBy(row));
        }

        private static TakenRow taken(LookUpTable other, LookUpTable.Row row, List<TableKey.Direct> by) {
            String keys = by.stream()
                    .map(one -> one.quantity() + " " + Phrases.of(row.cells().get(one.column())))
                    .collect(Collectors.joining(", "));
            return new TakenRow(other.reference(), keys, other.source(), other.confirmedBy(row));
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

        private static String name(TableKey key) {
            if (key instanceof TableKey.Direct direct) {
                return direct.quantity()
                        + direct.times().map(f -> " times " + f.column()).orElse("");
            }
            return key.column();
        }
    }
}
