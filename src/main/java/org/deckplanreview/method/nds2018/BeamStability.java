package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.Span;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Beam stability factor C_L of one span in sagging or hogging, 3.3.3 and 4.4.1. */
final class BeamStability {
    private static final double ROUNDING_IN = 1e-6;
    private static final ParameterDescription RESTRAINT = ParameterDescription.word(
                    "sideRestraint",
                    "what holds the upper edge sideways: boards (all along), joists (where they bear) or none; the lower edge is"
                            + " never taken as held")
            .rising("boards", "joists", "none");
    private static final ParameterDescription STABLE_RATIO = ParameterDescription.number(
            "stableDepthOverBreadth", RATIO, "largest nominal depth over breadth for which holding the ends is enough");
    private static final ParameterDescription LARGEST_SLENDERNESS =
            ParameterDescription.number("bendingLargestSlenderness", RATIO, "largest slenderness ratio R_B");

    static final List<ParameterDescription> PARAMETERS = List.of(RESTRAINT, STABLE_RATIO, LARGEST_SLENDERNESS);

    private static final Formula LENGTH_OF_CANTILEVER =
            Formula.of("l_e = 1.33 * l_u if l_u / d < 7; 0.90 * l_u + 3 * d", INCH, "Table 3.3.3");
    private static final Formula LENGTH_OF_SIMPLE_SPAN =
            Formula.of("l_e = 2.06 * l_u if l_u / d < 7; 1.63 * l_u + 3 * d", INCH, "Table 3.3.3");
    private static final Formula LENGTH_OF_OTHERS =
            Formula.of("l_e = 2.06 * l_u if l_u / d < 7; max(1.63 * l_u + 3 * d, 1.84 * l_u)", INCH, "Table 3.3.3");
    static final Formula SLENDERNESS = Formula.of("R_B = sqrt(l_e * d / b^2)", RATIO, "(3.3-5)");
    private static final Formula CRITICAL =
            Formula.of("F_bE = 1.20 * E_min' / R_B^2", POUND_FORCE_PER_SQUARE_INCH, "3.3.3.8");
    private static final Formula STARRED =
            Formula.of("F_b,star = F_b * C_D * C_M * C_t * C_F * C_i * C_r", POUND_FORCE_PER_SQUARE_INCH, "4.3.1");
    private static final Formula CRITICAL_RATIO = Formula.of("α = F_bE / F_b,star", RATIO, "3.3.3.8");

    /** C_L of alpha. */
    static final Formula FACTOR =
            Formula.of("C_L = (1 + α) / 1.9 - sqrt(((1 + α) / 1.9)^2 - α / 0.95)", RATIO, "(3.3-6)");

    private final MemberBasis basis;
    private final int spanIndex;
    private final boolean sagging;

    /** R_B and F_bE; empty where the compression edge is held. */
    private final Optional<Sheet> critical;

    BeamStability(MemberBasis basis, int spanIndex, boolean sagging) {
        this.basis = basis;
        this.spanIndex = spanIndex;
        this.sagging = sagging;
        critical = isStocky() || isHeldAllAlong() ? Optional.empty() : Optional.of(critical());
    }

    private Parameters parameters() {
        return basis.parameters();
    }

    private double number(ParameterDescription parameter) {
        return parameters().number(parameter.name(), RATIO);
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
        return Sense.AT_MOST.holds(nominal(basis.ply().depthIn()) / nominalBreadth, number(STABLE_RATIO));
    }

    private boolean isHeldAllAlong() {
        return sagging && restraint().equals("boards");
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

    private Formula effectiveLength() {
        if (span().isCantilever()) {
            return LENGTH_OF_CANTILEVER;
        }
        return sagging ? LENGTH_OF_SIMPLE_SPAN : LENGTH_OF_OTHERS;
    }

    private Sheet critical() {
        Sheet slenderness = Sheet.on(basis.section());
        slenderness.given(
                "l_u",
                unsupportedIn(),
                INCH,
                () -> "unsupported length of the compression edge in "
                        + basis.member().spanName(spanIndex),
                "3.3.3.4",
                basis.member().pointer());
        slenderness.calculate(effectiveLength());
        slenderness.calculate(SLENDERNESS);
        Sheet sheet = Sheet.on(slenderness, basis.adjustments().stability());
        sheet.calculate(CRITICAL);
        return sheet;
    }

    /** Whether R_B is within 3.3.3.7. */
    boolean isAllowed() {
        return critical.filter(c -> !Sense.AT_MOST.holds(c.value("R_B"), number(LARGEST_SLENDERNESS)))
                .isEmpty();
    }

    /**
     * Goes on to C_L.
     *
     * @param strength on which F_b and its factors stand
     */
    Sheet factor(Sheet strength) {
        if (critical.isEmpty()) {
            strength.given("C_L", 1, RATIO, this::meaning, isStocky() ? "4.4.1.2" : "3.3.3.3");
            return strength;
        }
        strength.calculate(STARRED);
        Sheet sheet = Sheet.on(strength, critical.get());
        sheet.calculate(CRITICAL_RATIO);
        sheet.calculate(FACTOR);
        return sheet;
    }

    private String meaning() {
        return isStocky()
                ? "beam stability factor, nominal depth at most " + Numbers.plain(number(STABLE_RATIO))
                        + " times the breadth and ends held (4.4.1.2)"
                : "beam stability factor, compression edge held all along (3.3.3.3)";
    }

    List<String> assumptions() {
        String ends = "Joists and beams are held at their supports against turning over (NDS 3.3.3, 4.4.1.2).";
        return isHeldAllAlong() && !isStocky()
                ? List.of(ends, "Boards fixed to every joist hold the upper edges of joists sideways (NDS 3.3.3.3).")
                : List.of(ends);
    }
}
