package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.Span;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * The length over which the compression edge of a span can buckle sideways, 6.3.3 with Table 6.1. The reduction for loads
 * at the tension edge, which the table's note permits, is not taken.
 *
 * @param held whether the compression edge is held all along, so that nothing can buckle
 * @param lengthMm of the span or between points that hold the edge
 * @param ratio of Table 6.1
 * @param addedDepths depths added where the load stands on the compression edge
 * @param meaning of the length, for people
 */
record EffectiveLength(
        boolean held,
        double lengthMm,
        double ratio,
        double addedDepths,
        String meaning,
        String assumption,
        MemberBasis basis) {

    static final ParameterDescription RATIOS = ParameterDescription.table(
            "effectiveLengths",
            "effective length over span by support (simply-supported, cantilever) and loading (constant-moment, uniform,"
                    + " concentrated), for a load at the centre of gravity",
            wordColumn("support"),
            wordColumn("loading"),
            numberColumn("ratio", RATIO));
    static final ParameterDescription AT_COMPRESSION_EDGE = ParameterDescription.number(
            "effectiveLengthAtCompressionEdge",
            RATIO,
            "depths added to the effective length of a load at the compression edge");
    static final List<ParameterDescription> PARAMETERS = List.of(RATIOS, AT_COMPRESSION_EDGE);

    private static final Formula AT_CENTRE = Formula.of("l_ef = k_l * l", MILLIMETRE, "Table 6.1");
    private static final Formula AT_EDGE = Formula.of("l_ef = k_l * l + k_h,c * h", MILLIMETRE, "Table 6.1");

    private static final String SIMPLY_SUPPORTED = "simply-supported";
    private static final String CONSTANT_MOMENT = "constant-moment";

    static EffectiveLength of(MemberBasis basis, int spanIndex, boolean sagging) {
        return sagging ? ofUpperEdge(basis, spanIndex) : ofLowerEdge(basis, spanIndex);
    }

    private static EffectiveLength ofUpperEdge(MemberBasis basis, int spanIndex) {
        Span span = basis.member().spans().get(spanIndex);
        Parameters p = basis.parameters();
        double added = p.number(AT_COMPRESSION_EDGE.name(), RATIO);
        return switch (SideRestraint.of(p)) {
            case BOARDS ->
                new EffectiveLength(
                        true,
                        0,
                        0,
                        0,
                        "",
                        "Boards fixed to every joist hold its upper edge sideways all along (EN 1995-1-1, 6.3.3(5)).",
                        basis);
            case JOISTS ->
                new EffectiveLength(
                        false,
                        largestGap(basis, span),
                        ratio(p, SIMPLY_SUPPORTED, CONSTANT_MOMENT),
                        added,
                        "largest distance between joists that hold the upper edge",
                        "Joists fixed to a beam hold its upper edge sideways where they bear.",
                        basis);
            case NONE ->
                new EffectiveLength(
                        false,
                        span.lengthMm(),
                        ratio(p, SIMPLY_SUPPORTED, Loading.of(p).word()),
                        added,
                        "span",
                        "Nothing holds the upper edge sideways between supports.",
                        basis);
        };
    }

    /** The moment over a support is taken as acting along the whole span; at a beam's tip there can be a joist. */
    private static EffectiveLength ofLowerEdge(MemberBasis basis, int spanIndex) {
        Span span = basis.member().spans().get(spanIndex);
        Parameters p = basis.parameters();
        double ratio;
        if (!span.isCantilever()) {
            ratio = ratio(p, SIMPLY_SUPPORTED, CONSTANT_MOMENT);
        } else {
            ratio = ratio(
                    p,
                    "cantilever",
                    basis.isBeam() ? Loading.CONCENTRATED.word() : Loading.of(p).word());
        }
        return new EffectiveLength(
                false,
                span.lengthMm(),
                ratio,
                0,
                span.isCantilever() ? "length of the cantilever" : "span",
                "Nothing holds the lower edge sideways between supports.",
                basis);
    }

    private static double ratio(Parameters p, String support, String loading) {
        return p.table(RATIOS.name())
                .find("support", support, "loading", loading)
                .orElseThrow(() -> new IllegalArgumentException("No effective length for " + support + ", " + loading))
                .number("ratio", RATIO);
    }

    private static double largestGap(MemberBasis basis, Span span) {
        List<JoistBearing> joists = basis.member() instanceof BeamLine beam ? beam.joists() : List.of();
        DoubleStream within =
                joists.stream().mapToDouble(JoistBearing::atMm).filter(at -> at > span.fromMm() && at < span.toMm());
        List<Double> points = Stream.of(DoubleStream.of(span.fromMm()), within.sorted(), DoubleStream.of(span.toMm()))
                .flatMap(DoubleStream::boxed)
                .toList();
        double largest = 0;
        for (int i = 1; i < points.size(); i++) {
            largest = Math.max(largest, points.get(i) - points.get(i - 1));
        }
        return largest;
    }

    /** Calculates l_ef; the depth h stands on the sheet. */
    double calculate(Sheet sheet) {
        Parameters p = basis.parameters();
        sheet.given("l", lengthMm, MILLIMETRE, meaning, "", basis.member().pointer());
        sheet.given("k_l", ratio, RATIO, "effective length over length", p.source(RATIOS.name()));
        if (addedDepths == 0) {
            return sheet.calculate(AT_CENTRE);
        }
        p.enter(sheet, "k_h,c", AT_COMPRESSION_EDGE);
        return sheet.calculate(AT_EDGE);
    }
}
