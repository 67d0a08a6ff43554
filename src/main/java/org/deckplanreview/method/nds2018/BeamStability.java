package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.Span;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.nds2018.AdjustedValue.Factor;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/** Beam stability factor C_L of one span in sagging or hogging, 3.3.3 and 4.4.1. */
record BeamStability(MemberBasis basis, int spanIndex, boolean sagging) {
    private static final double ROUNDING_IN = 1e-6;
    private static final ParameterDescription RESTRAINT = ParameterDescription.word(
                    "sideRestraint",
                    "what holds the upper edge sideways: boards (all along), joists (where they bear) or none; the lower edge is"
                            + " never taken as held")
            .rising("boards", "joists", "none");
    private static final ParameterDescription STABLE_RATIO = ParameterDescription.number(
            "stableDepthOverBreadth", RATIO, "largest nominal depth over breadth for which holding the ends is enough");
    private static final ParameterDescription EFFECTIVE_LENGTHS = ParameterDescription.table(
            "bendingEffectiveLengths",
            "effective length of a cantilever, simple span or other span under uniform load: a multiple of a short"
                    + " unsupported length; or a multiple of a longer one and some depths, and at least another multiple",
            wordColumn("support"),
            numberColumn("shortUnder", RATIO),
            numberColumn("short", RATIO),
            numberColumn("long", RATIO),
            numberColumn("depths", RATIO),
            numberColumn("longAtLeast", RATIO));
    private static final ParameterDescription EULER =
            ParameterDescription.number("bendingEulerFactor", RATIO, "factor of F_bE");
    private static final ParameterDescription DIVISOR =
            ParameterDescription.number("bendingStabilityFactor", RATIO, "divisor in C_L");
    private static final ParameterDescription SHARE =
            ParameterDescription.number("bendingStabilityShare", RATIO, "divisor of the last term in C_L");
    private static final ParameterDescription LARGEST_SLENDERNESS =
            ParameterDescription.number("bendingLargestSlenderness", RATIO, "largest slenderness ratio R_B");

    static final List<ParameterDescription> PARAMETERS =
            List.of(RESTRAINT, STABLE_RATIO, EFFECTIVE_LENGTHS, EULER, DIVISOR, SHARE, LARGEST_SLENDERNESS);

    /** C_L from the ratio of F_bE to F_b*, (3.3-6). */
    static double factor(double ratio, double divisor, double share) {
        double half = (1 + ratio) / divisor;
        return half - Math.sqrt(half * half - ratio / share);
    }

    /** R_B, (3.3-5). */
    static double slenderness(double effectiveLengthIn, Section section) {
        return Math.sqrt(effectiveLengthIn * section.depthIn() / (section.breadthIn() * section.breadthIn()));
    }

    private Parameters parameters() {
        return basis.parameters();
    }

    private double number(ParameterDescription parameter) {
        return parameters().number(parameter.name(), RATIO);
    }

    private Section section() {
        return basis.section();
    }

    private Span span() {
        return basis.member().spans().get(spanIndex);
    }

    private String restraint() {
        return parameters().word(RESTRAINT.name());
    }

    /** Dressed lumber is less than its nominal size by less than an inch. */
    private static double nominal(double dressedIn) {
        return Math.ceil(dressedIn - ROUNDING_IN);
    }

    private boolean isStocky() {
        double nominalBreadth = basis.member().plies() * nominal(basis.ply().breadthIn());
        return Sense.AT_MOST.holds(nominal(section().depthIn()) / nominalBreadth, number(STABLE_RATIO));
    }

    private boolean isHeldAllAlong() {
        return sagging && restraint().equals("boards");
    }

    /** Whether C_L is 1 without calculation. */
    boolean isHeld() {
        return isStocky() || isHeldAllAlong();
    }

    /** l_u, in. */
    private double unsupportedIn() {
        double mm = sagging && restraint().equals("joists") && basis.member() instanceof BeamLine beam
                ? Math.min(span().lengthMm(), largestGapMm(beam))
                : span().lengthMm();
        return MILLIMETRE.convert(mm, INCH);
    }

    private double largestGapMm(BeamLine beam) {
        double largest = 0;
        double last = span().fromMm();
        for (JoistBearing joist : beam.joists()) {
            if (joist.atMm() > last && joist.atMm() < span().toMm()) {
                largest = Math.max(largest, joist.atMm() - last);
                last = joist.atMm();
            }
        }
        return Math.max(largest, span().toMm() - last);
    }

    private Table.Row lengths() {
        String support = span().isCantilever() ? "cantilever" : sagging ? "simple" : "other";
        return parameters()
                .table(EFFECTIVE_LENGTHS.name())
                .find("support", support)
                .orElseThrow(() -> new IllegalArgumentException(
                        parameters().source(EFFECTIVE_LENGTHS.name()) + " has no row for " + support));
    }

    private boolean isShort() {
        return Sense.UNDER.holds(
                unsupportedIn() / section().depthIn(), lengths().number("shortUnder", RATIO));
    }

    /** l_e, in, Table 3.3.3. */
    private double effectiveIn() {
        Table.Row row = lengths();
        double lu = unsupportedIn();
        return isShort()
                ? row.number("short", RATIO) * lu
                : Math.max(
                        row.number("long", RATIO) * lu
                                + row.number("depths", RATIO) * section().depthIn(),
                        row.number("longAtLeast", RATIO) * lu);
    }

    private double slenderness() {
        return slenderness(effectiveIn(), section());
    }

    /** Whether R_B is within 3.3.3.7. */
    boolean isAllowed() {
        return isHeld() || Sense.AT_MOST.holds(slenderness(), number(LARGEST_SLENDERNESS));
    }

    private AdjustedValue stability() {
        return basis.adjustments().of(Property.STABILITY);
    }

    /** F_bE, psi, 3.3.3.8. */
    private double critical() {
        return number(EULER) * stability().psi() / (slenderness() * slenderness());
    }

    /**
     * C_L.
     *
     * @param starred F_b with all factors but C_fu and C_L
     */
    Factor factor(AdjustedValue starred) {
        return new Factor("C_L", value(starred), meaning(), "");
    }

    private double value(AdjustedValue starred) {
        return isHeld() ? 1 : factor(critical() / starred.psi(), number(DIVISOR), number(SHARE));
    }

    private String meaning() {
        return isStocky()
                ? "beam stability factor, nominal depth at most " + Numbers.plain(number(STABLE_RATIO))
                        + " times the breadth and ends held (4.4.1.2)"
                : "beam stability factor, compression edge held all along (3.3.3.3)";
    }

    /** Shows C_L; F_b, its factors, b and d stand in the working already. */
    void write(Sheet w, AdjustedValue starred) {
        if (isHeld()) {
            w.given("C_L", 1, RATIO, meaning(), isStocky() ? "4.4.1.2" : "3.3.3.3");
            return;
        }
        starred.writeProduct(w, "F_b,star");
        w.given(
                "l_u",
                unsupportedIn(),
                INCH,
                "unsupported length of the compression edge in "
                        + basis.member().spanName(spanIndex),
                "3.3.3.4",
                basis.member().pointer());
        w.step("l_e", lengthExpression(), effectiveIn(), INCH, "Table 3.3.3");
        w.step("R_B", "sqrt(l_e * d / b^2)", slenderness(), RATIO, "(3.3-5)");
        stability().write(w, basis.grading());
        w.step(
                "F_bE",
                Numbers.plain(number(EULER)) + " * E_min' / R_B^2",
                critical(),
                POUND_FORCE_PER_SQUARE_INCH,
                "3.3.3.8");
        w.step("α", "F_bE / F_b,star", critical() / starred.psi(), RATIO, "3.3.3.8");
        String half = "(1 + α) / " + Numbers.plain(number(DIVISOR));
        w.step(
                "C_L",
                half + " - sqrt((" + half + ")^2 - α / " + Numbers.plain(number(SHARE)) + ")",
                value(starred),
                RATIO,
                "(3.3-6)");
    }

    private String lengthExpression() {
        Table.Row row = lengths();
        if (isShort()) {
            return Numbers.plain(row.number("short", RATIO)) + " * l_u";
        }
        return "max(" + Numbers.plain(row.number("long", RATIO)) + " * l_u + "
                + Numbers.plain(row.number("depths", RATIO)) + " * d, "
                + Numbers.plain(row.number("longAtLeast", RATIO)) + " * l_u)";
    }

    List<String> assumptions() {
        String ends = "Joists and beams are held at their supports against turning over (NDS 3.3.3, 4.4.1.2).";
        return isHeldAllAlong() && !isStocky()
                ? List.of(ends, "Boards fixed to every joist hold the upper edges of joists sideways (NDS 3.3.3.3).")
                : List.of(ends);
    }
}
