package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.Working;
import org.deckplanreview.method.WorkingStep;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Bending of joists and beams about the strong axis, 6.1.6 (6.11), with lateral buckling, 6.3.3 (6.33). */
final class MemberBending implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.bending",
            En1995.SOURCE,
            "bending stress",
            NEWTON_PER_SQUARE_MILLIMETRE,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(
                    MemberBasis.parameters(DesignStrength.PARAMETERS, SizeEffect.PARAMETERS),
                    MemberBasis.parameters(LateralBuckling.PARAMETERS, SystemStrength.PARAMETERS),
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    Loading.PARAMETER,
                    SideRestraint.PARAMETER),
            "Largest bending stress over all combinations, spans, sagging and hogging, against the design bending strength"
                    + " with k_h (3.1), k_sys (6.6) and k_crit (6.34): equations (6.11) for one axis and (6.33).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return MemberBasis.evaluate(subject, parameters, context, MemberBending::worst);
    }

    private static Evaluation worst(MemberBasis basis) {
        List<Place> places = new ArrayList<>();
        Loading loading = Loading.of(basis.parameters());
        for (Combination combination : loading.filter(basis.combinations(State.ULTIMATE))) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < effects.spans().size(); i++) {
                Effects.SpanEffects span = effects.spans().get(i);
                places.add(new Place(basis, combination, i, true, span.sagging().value()));
                places.add(
                        new Place(basis, combination, i, false, span.hogging().value()));
            }
        }
        return Case.worst(places);
    }

    /** One span under one combination, sagging or hogging. */
    private static final class Place implements Case {
        private final MemberBasis basis;
        private final Combination combination;
        private final int span;
        private final boolean sagging;
        private final double momentNmm;
        private final DesignStrength fm;
        private final double kh;
        private final EffectiveLength length;
        private final CriticalStress critical;

        Place(MemberBasis basis, Combination combination, int span, boolean sagging, double momentNmm) {
            this.basis = basis;
            this.combination = combination;
            this.span = span;
            this.sagging = sagging;
            this.momentNmm = momentNmm;
            StrengthClass c = basis.strengthClass();
            fm = basis.designStrength("m", c.fmk(), combination);
            kh = SizeEffect.of(basis.parameters()).kh(basis.ply().depthMm(), c.rhoK());
            length = EffectiveLength.of(basis, span, sagging);
            critical = new CriticalStress(basis, length);
        }

        /** sigma_m,d of (6.11). */
        private double stress() {
            return momentNmm / basis.section().sectionModulusMm3();
        }

        private double strength() {
            return fm.value() * kh;
        }

        private double allowed() {
            return critical.kcrit() * strength();
        }

        @Override
        public double utilisation() {
            return stress() / allowed();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(stress(), NEWTON_PER_SQUARE_MILLIMETRE),
                    Sense.AT_MOST,
                    Measure.of(allowed(), NEWTON_PER_SQUARE_MILLIMETRE),
                    utilisation(),
                    moment() + ", combination " + combination.id() + ", "
                            + fm.modification().duration(),
                    working(),
                    basis.assumptions(List.of(
                            "Supports hold members against twisting (EN 1995-1-1, 6.3.3).", length.assumption())));
        }

        private String moment() {
            return (sagging ? "sagging" : "hogging") + " in " + basis.spanName(span);
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Working w = new Working();
            basis.writeSection(w);
            w.given(
                    "M_d",
                    momentNmm,
                    NEWTON_MILLIMETRE,
                    "design moment, " + moment() + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            w.step("W_y", "b * h^2 / 6", basis.section().sectionModulusMm3(), CUBIC_MILLIMETRE, "");
            w.step("σ_m,d", "M_d / W_y", stress(), NEWTON_PER_SQUARE_MILLIMETRE, "(6.11)");
            fm.writeFactors(w, p, "bending strength of " + basis.strengthClass().name(), basis.strengthClassPointer());
            SizeEffect size = SizeEffect.of(p);
            w.step(
                    "k_h",
                    size.expression(basis.ply().depthMm(), basis.strengthClass().rhoK()),
                    kh,
                    RATIO,
                    "(3.1)");
            w.step(
                    "f_m,d",
                    "k_mod * k_h * k_sys * f_m,k / γ_M",
                    strength(),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "(2.14), 3.2, 6.6");
            critical.write(w);
            w.step("utilisation", "σ_m,d / (k_crit * f_m,d)", utilisation(), RATIO, "(6.33)");
            return w.steps();
        }
    }
}
