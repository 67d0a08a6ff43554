package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.Notches;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/**
 * Bending of joists and beams about the strong axis, 6.1.6 (6.11), with lateral buckling, 6.3.3 (6.33). A notched member
 * bends at its supports on the section that the notch leaves.
 */
final class MemberBending implements Method {
    private static final ParameterDescription TENSION_SLOPE = ParameterDescription.number(
            "notchTensionSlope",
            RATIO,
            "slope from which on a notch may lie on the tension side of a member in bending, run over depth");

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
                    SideRestraint.PARAMETER,
                    TENSION_SLOPE),
            "Largest bending stress over all combinations, spans, sagging and hogging, against the design bending strength"
                    + " with k_h (3.1), k_sys (6.6) and k_crit (6.34): equations (6.11) for one axis and (6.33). Beside notched"
                    + " supports the section that is left counts.");

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
                places.add(new Place(
                        basis,
                        combination,
                        i,
                        true,
                        span.sagging().value(),
                        Optional.empty(),
                        "sagging in " + basis.spanName(i)));
                places.add(new Place(
                        basis,
                        combination,
                        i,
                        false,
                        span.hogging().value(),
                        basis.member().endNotch(),
                        "hogging in " + basis.spanName(i)));
            }
            places.addAll(besideNotches(basis, combination, effects));
        }
        return basis.member()
                .endNotch()
                .filter(n -> Notches.tensionAtTop(basis.member(), n))
                .filter(n -> n.slope() < basis.parameters().number(TENSION_SLOPE.name(), RATIO))
                .<Evaluation>map(n -> new Evaluation.OutOfScope(
                        "A notch in the upper edge lies where the member bends over a support and the upper edge is in tension",
                        basis.parameters().source(TENSION_SLOPE.name())))
                .orElseGet(() -> Case.worst(places));
    }

    /** At the inner corners of notches: the moment there is at most the shear force at the support times the distance. */
    private static List<Place> besideNotches(MemberBasis basis, Combination combination, Effects effects) {
        List<Place> places = new ArrayList<>();
        basis.member().endNotch().ifPresent(notch -> {
            for (int i = 0; i < effects.supports().size(); i++) {
                for (int span : Notches.spansBeside(basis.member(), i)) {
                    places.add(new Place(
                            basis,
                            combination,
                            span,
                            true,
                            effects.supports().get(i).shear().value()
                                    * notch.supportDistance().mm(),
                            Optional.of(notch),
                            "at the notch at " + basis.supportName(i)));
                }
            }
        });
        return places;
    }

    /** One span under one combination, sagging or hogging; with the notch where the member has one there. */
    private static final class Place implements Case {
        private final MemberBasis basis;
        private final Combination combination;
        private final double momentNmm;
        private final Optional<EndNotch> notch;
        private final String moment;
        private final DesignStrength fm;
        private final double kh;
        private final EffectiveLength length;
        private final CriticalStress critical;

        Place(
                MemberBasis basis,
                Combination combination,
                int span,
                boolean sagging,
                double momentNmm,
                Optional<EndNotch> notch,
                String moment) {
            this.basis = basis;
            this.combination = combination;
            this.momentNmm = momentNmm;
            this.notch = notch;
            this.moment = moment;
            StrengthClass c = basis.strengthClass();
            fm = basis.designStrength("m", c.fmk(), combination);
            kh = SizeEffect.of(basis.parameters()).kh(basis.ply().depthMm(), c.rhoK());
            length = EffectiveLength.of(basis, span, sagging);
            critical = new CriticalStress(basis, length);
        }

        /** sigma_m,d of (6.11). */
        private double stress() {
            return momentNmm / section().sectionModulusMm3();
        }

        private Section section() {
            return new Section(
                    basis.section().breadthMm(),
                    basis.section().depthMm() - notch.map(n -> n.depth().mm()).orElse(0.0));
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
                    moment + ", combination " + combination.id() + ", "
                            + fm.modification().duration(),
                    working(),
                    basis.assumptions(List.of(
                            "Supports hold members against twisting (EN 1995-1-1, 6.3.3).", length.assumption())));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given(
                    "M_d",
                    momentNmm,
                    NEWTON_MILLIMETRE,
                    "design moment, " + moment + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            notch.ifPresent(n -> writeNotch(w, n));
            w.step(
                    "W_y",
                    notch.isPresent() ? "b * h_ef^2 / 6" : "b * h^2 / 6",
                    section().sectionModulusMm3(),
                    CUBIC_MILLIMETRE,
                    "");
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

        private void writeNotch(Sheet w, EndNotch n) {
            Pointer depth = basis.member().pointer().child("endNotch").child("depth");
            w.given("d_n", n.depth().mm(), MILLIMETRE, "depth of the notch", "", depth);
            w.step("h_ef", "h - d_n", section().depthMm(), MILLIMETRE, "6.5.2");
        }
    }
}
