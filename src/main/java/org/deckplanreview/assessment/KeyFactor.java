package org.deckplanreview.assessment;

import static org.deckplanreview.assessment.TableRows.number;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.Value;
import org.deckplanreview.ruleset.LookUpTable;
import org.deckplanreview.ruleset.TableKey;
import org.deckplanreview.vocabulary.Sense;

/** A key that is a quantity times a factor of another table. */
record KeyFactor(TableKey.Factor factor, Trail trail) {
    private static final Formula BETWEEN = Formula.of("f = f_1 + (f_2 - f_1) * (r - r_1) / (r_2 - r_1)", RATIO, "");
    private static final Formula PRODUCT = Formula.of("l_e = f * l", MeasureUnit.MILLIMETRE, "");

    /**
     * The product; empty where the other table has no factor, which is noted.
     *
     * @param ratio that leads to the factor
     * @param unit of the product
     */
    Optional<Measure> times(Measure found, String quantity, Value ratio, MeasureUnit unit) {
        Sheet sheet = Sheet.blank();
        if (!enter(sheet, (Measure) ratio)) {
            trail.goBeyond("There is no " + factor.label() + " for the "
                    + factor.key().quantity() + " "
                    + Phrases.of(ratio, trail.units()) + " in " + factor.table().source()
                    + ", which the table asks for");
            return Optional.empty();
        }
        sheet.given("l", found.in(unit), unit, quantity, "");
        sheet.calculate(PRODUCT.in(unit));
        trail.add(sheet);
        return Optional.of(sheet.measure("l_e"));
    }

    /** Enters the factor of the row that counts, or the one between two rows where that is permitted. */
    private boolean enter(Sheet sheet, Measure ratio) {
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
            interpolate(sheet, found, lower.get(), upper.get());
            return true;
        }
        Optional<LookUpTable.Row> row = own.or(() -> TableRows.next(by, lower, upper));
        row.ifPresent(taken -> {
            trail.take(TableRows.taken(factor.table(), taken, List.of(by)));
            sheet.given(
                    "f",
                    number(taken, factor.column()),
                    RATIO,
                    factor.label() + ", for " + by.quantity() + " " + Phrases.of(ratio, trail.units()),
                    factor.table().source());
        });
        return row.isPresent();
    }

    private void interpolate(Sheet sheet, double found, LookUpTable.Row lower, LookUpTable.Row upper) {
        TableKey.Direct by = factor.key();
        String source = factor.table().source();
        String column = factor.table().labels().column(by.column());
        List.of(lower, upper).forEach(row -> trail.take(TableRows.taken(factor.table(), row, List.of(by))));
        sheet.given("r", found, RATIO, by.quantity(), "");
        sheet.given("r_1", number(lower, by.column()), RATIO, column + " below", source);
        sheet.given("r_2", number(upper, by.column()), RATIO, column + " above", source);
        sheet.given("f_1", number(lower, factor.column()), RATIO, factor.label() + " below", source);
        sheet.given("f_2", number(upper, factor.column()), RATIO, factor.label() + " above", source);
        sheet.calculate(BETWEEN.by(factor.interpolation().orElseThrow()));
    }
}
