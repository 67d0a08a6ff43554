package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Bending of boards, flat, 6.1.6 (6.11): between joists and over the last one. */
final class BoardBending implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.boardBending",
            En1995.SOURCE,
            "bending stress",
            NEWTON_PER_SQUARE_MILLIMETRE,
            BoardBasis.SUBJECTS,
            MemberBasis.parameters(
                    DesignStrength.PARAMETERS,
                    SizeEffect.PARAMETERS,
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    Loading.PARAMETER,
                    BoardBasis.GROOVE_DEPTH,
                    BoardBasis.SHARE),
            "Largest bending stress of one board as a simple beam between joists, or beyond the last one, against the design"
                    + " bending strength with k_h (3.1) of its thickness: equation (6.11) for one axis.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return BoardBasis.evaluate(subject, parameters, context, BoardBending::worst);
    }

    private static Evaluation worst(BoardBasis basis) {
        List<Place> places = new ArrayList<>();
        for (Combination c : basis.combinations(State.ULTIMATE, Loading.of(basis.parameters()))) {
            DesignStrength fm = basis.designStrength("m", basis.strengthClass().fmk(), c);
            places.add(new Place(basis, c, false, fm));
            places.add(new Place(basis, c, true, fm));
        }
        return Case.worst(places);
    }

    /** Between joists, or on the overhang, under one combination. */
    private record Place(BoardBasis basis, Combination combination, boolean overhang, DesignStrength fm)
            implements Case {
        private double lengthMm() {
            return overhang ? basis.loads().overhangMm() : basis.loads().spanMm();
        }

        private double momentNmm() {
            double q = basis.uniformNPerMm(combination.factors());
            double p = basis.concentratedN(combination.factors());
            double l = lengthMm();
            return overhang ? q * l * l / 2 + p * l : q * l * l / 8 + p * l / 4;
        }

        private String momentExpression() {
            String point = overhang ? " + P_d * l" : " + P_d * l / 4";
            return "q_d * l^2 / " + (overhang ? "2" : "8") + (combination.isConcentrated() ? point : "");
        }

        private double stress() {
            return momentNmm() / basis.section().sectionModulusMm3();
        }

        private double kh() {
            return SizeEffect.of(basis.parameters())
                    .kh(basis.section().depthMm(), basis.strengthClass().rhoK());
        }

        private double strength() {
            return kh() * fm.value();
        }

        @Override
        public double utilisation() {
            return stress() / strength();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(stress(), NEWTON_PER_SQUARE_MILLIMETRE),
                    Sense.AT_MOST,
                    Measure.of(strength(), NEWTON_PER_SQUARE_MILLIMETRE),
                    utilisation(),
                    place() + ", combination " + combination.id() + ", "
                            + fm.modification().duration(),
                    working(),
                    basis.assumptions());
        }

        private String place() {
            return overhang ? "over the last joist" : "between joists";
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            basis.writeLoads(w, combination);
            if (overhang) {
                w.given(
                        "l",
                        lengthMm(),
                        MILLIMETRE,
                        "largest length of board beyond the last joist",
                        "",
                        basis.field().pointer());
            } else {
                basis.writeSpan(w);
            }
            w.step("M_d", momentExpression(), momentNmm(), NEWTON_MILLIMETRE, "");
            w.step("W_y", "b * h^2 / 6", basis.section().sectionModulusMm3(), CUBIC_MILLIMETRE, "");
            w.step("σ_m,d", "M_d / W_y", stress(), NEWTON_PER_SQUARE_MILLIMETRE, "(6.11)");
            fm.writeFactors(w, p, "bending strength of " + basis.strengthClass().name(), basis.strengthClassPointer());
            w.step(
                    "k_h",
                    SizeEffect.of(p)
                            .expression(
                                    basis.section().depthMm(),
                                    basis.strengthClass().rhoK()),
                    kh(),
                    RATIO,
                    "(3.1)");
            w.step(
                    "f_m,d",
                    "k_mod * k_h * k_sys * f_m,k / γ_M",
                    strength(),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "(2.14), 3.2");
            w.step("utilisation", "σ_m,d / f_m,d", utilisation(), RATIO, "(6.11)");
            return w.steps();
        }
    }
}
