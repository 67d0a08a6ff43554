package org.deckplanreview.schedule;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.ValueType;

/**
 * Values of site practice, as a ruleset gives them.
 *
 * @param stockLengths that timber is sold in
 * @param sawKerfMm what a cut takes away
 * @param triangleStepMm the unit of the 3-4-5 triangle: its legs are 3 and 4 times a whole multiple of it
 * @param rectangleToleranceMm by how much sides and diagonals of what is drawn as a rectangle may differ
 * @param fixingsPerCrossing fixings of a board where it crosses a joist
 * @param sources where each value comes from
 */
public record SitePractice(
        List<StockLength> stockLengths,
        double sawKerfMm,
        double triangleStepMm,
        double rectangleToleranceMm,
        int fixingsPerCrossing,
        List<WorkStep> orderOfWork,
        List<PracticeValue> sources) {
    public SitePractice {
        stockLengths = List.copyOf(stockLengths);
        orderOfWork = List.copyOf(orderOfWork);
        sources = List.copyOf(sources);
    }

    private static final String STOCK_LENGTHS = "stockLengths";
    private static final String SAW_KERF = "sawKerf";
    private static final String TRIANGLE_STEP = "triangleStep";
    private static final String RECTANGLE_TOLERANCE = "rectangleTolerance";
    private static final String FIXINGS_PER_CROSSING = "fixingsPerCrossing";
    private static final String ORDER_OF_WORK = "orderOfWork";

    /** What an edition's {@code schedule} must give. */
    public static final List<ParameterDescription> PARAMETERS = List.of(
            ParameterDescription.table(
                    STOCK_LENGTHS,
                    "lengths that timber is sold in, by what it is used for: frame, posts or boards",
                    ParameterDescription.wordColumn("use"),
                    ParameterDescription.numberColumn("length", MeasureUnit.MILLIMETRE)),
            ParameterDescription.number(SAW_KERF, MeasureUnit.MILLIMETRE, "what a cut of the saw takes away"),
            ParameterDescription.number(
                    TRIANGLE_STEP,
                    MeasureUnit.MILLIMETRE,
                    "unit of the triangle for setting out a right angle: its sides are 3, 4 and 5 times a whole multiple"
                            + " of it"),
            ParameterDescription.number(
                    RECTANGLE_TOLERANCE,
                    MeasureUnit.MILLIMETRE,
                    "by how much sides and diagonals of what is drawn as a rectangle may differ"),
            ParameterDescription.number(
                    FIXINGS_PER_CROSSING, MeasureUnit.RATIO, "fixings of a board where it crosses a joist"),
            ParameterDescription.table(
                    ORDER_OF_WORK,
                    "steps of the work in order, and whether each is a point at which work stops until it is checked",
                    ParameterDescription.wordColumn("step"),
                    new ParameterDescription.Column("hold", ValueType.FLAG, Optional.empty())));

    static SitePractice of(Parameters given) {
        return new SitePractice(
                given.table(STOCK_LENGTHS).rows().stream()
                        .map(r -> new StockLength(r.word("use"), r.number("length", MeasureUnit.MILLIMETRE)))
                        .toList(),
                given.number(SAW_KERF, MeasureUnit.MILLIMETRE),
                given.number(TRIANGLE_STEP, MeasureUnit.MILLIMETRE),
                given.number(RECTANGLE_TOLERANCE, MeasureUnit.MILLIMETRE),
                (int) Math.round(given.number(FIXINGS_PER_CROSSING, MeasureUnit.RATIO)),
                given.table(ORDER_OF_WORK).rows().stream()
                        .map(r -> new WorkStep(r.word("step"), r.flag("hold")))
                        .toList(),
                PARAMETERS.stream()
                        .map(ParameterDescription::name)
                        .map(n -> new PracticeValue(
                                n, given.source(n), given.recalled().contains(n)))
                        .toList());
    }

    /** @param use word of a {@link TimberUse} */
    public record StockLength(String use, double lengthMm) {}

    /** Shortest first. */
    List<Double> stockMm(TimberUse use) {
        return stockLengths.stream()
                .filter(s -> s.use().equals(use.word()))
                .map(StockLength::lengthMm)
                .sorted()
                .toList();
    }
}
