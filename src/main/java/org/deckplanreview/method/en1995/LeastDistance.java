package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/**
 * Least spacing, end or edge distance of bolts, 8.5.1.1(3), Table 8.4, for a force along or across the grain.
 *
 * @param name a1, a2, a3t, a3c, a4t or a4c
 * @param across whether the force acts across the grain, α = 90°, as against along it
 */
record LeastDistance(String name, boolean across, double diameters, double leastMm) {
    static final ParameterDescription TABLE = ParameterDescription.table(
            "boltDistances",
            "least distances of bolts: the largest of (constant + cosine |cos α| + sine |sin α|) d, leastDiameters d and"
                    + " least",
            wordColumn("distance"),
            numberColumn("constant", RATIO),
            numberColumn("cosine", RATIO),
            numberColumn("sine", RATIO),
            numberColumn("leastDiameters", RATIO),
            numberColumn("least", MILLIMETRE));

    static LeastDistance of(Parameters p, String name, boolean across) {
        Table.Row row = p.table(TABLE.name())
                .find("distance", name)
                .orElseThrow(() -> new IllegalArgumentException("No distance " + name));
        double atAngle = row.number("constant", RATIO) + row.number(across ? "sine" : "cosine", RATIO);
        return new LeastDistance(
                name, across, Math.max(atAngle, row.number("leastDiameters", RATIO)), row.number("least", MILLIMETRE));
    }

    double allowedMm(double diameterMm) {
        return Math.max(diameters * diameterMm, leastMm);
    }

    /**
     * The distance beside what is allowed.
     *
     * @param w shows how the distance follows, under the symbol a
     * @param remark where it is
     */
    Evaluation.Measured compare(
            Sheet w,
            Parameters p,
            double foundMm,
            double diameterMm,
            Pointer diameter,
            String remark,
            List<String> assumptions) {
        String symbol = "a_min";
        w.given("d", diameterMm, MILLIMETRE, "diameter of the fasteners", "", diameter);
        w.step(
                symbol,
                "max(" + Numbers.plain(diameters) + " * d, " + Numbers.plain(leastMm) + ")",
                allowedMm(diameterMm),
                MILLIMETRE,
                p.source(TABLE.name()) + ", " + name.substring(0, 2)
                        + (name.length() > 2 ? "," + name.substring(2) : "")
                        + (across ? ", α = 90°" : ", α = 0°"));
        double utilisation = foundMm > 0
                ? w.step("utilisation", symbol + " / a", allowedMm(diameterMm) / foundMm, RATIO, "")
                : w.step(
                        "utilisation", "1 + (" + symbol + " - a) / " + symbol, lacking(foundMm, diameterMm), RATIO, "");
        return new Evaluation.Measured(
                Measure.of(foundMm, MILLIMETRE),
                Sense.AT_LEAST,
                Measure.of(allowedMm(diameterMm), MILLIMETRE),
                utilisation,
                remark,
                w.steps(),
                assumptions);
    }

    /** Where a fastener would lie on or beyond the edge, what is lacking over what is needed, beyond 1. */
    private double lacking(double foundMm, double diameterMm) {
        return 1 + (allowedMm(diameterMm) - foundMm) / allowedMm(diameterMm);
    }
}
