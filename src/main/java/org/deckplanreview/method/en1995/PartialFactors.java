package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/** Partial factors of EN 1990, 6.4.3.2 (6.10), where one imposed load leads and no other variable action joins it. */
public record PartialFactors(double permanent, double imposed) {

    /** The parameter that they are read from. */
    public static final ParameterDescription PARAMETER = Combination.COMBINATIONS;

    /** @throws IllegalArgumentException if the table has no ultimate combination that an imposed load leads */
    public static PartialFactors of(Parameters parameters) {
        Table table = parameters.table(PARAMETER.name());
        Table.Row row = table.find("state", "ultimate", "leading", Combination.IMPOSED)
                .orElseThrow(() -> new IllegalArgumentException(
                        table.source() + " has no ultimate combination that an imposed load leads"));
        return new PartialFactors(row.number(Combination.PERMANENT, RATIO), row.number(Combination.IMPOSED, RATIO));
    }
}
