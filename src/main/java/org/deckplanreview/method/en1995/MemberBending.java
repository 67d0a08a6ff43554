package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
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

/**
 * Bending of joists and beams about the strong axis, 6.1.6 (6.11), with lateral buckling, 6.3.3 (6.33). A notched member
 * bends at its supports on the section that the notch leaves.
 */
final class MemberBending implements Method {
    private static final ParameterDescription TENSION_SLOPE = ParameterDescription.number(
            "notchTensionSlope",
            RATIO,
            "slope from which on a notch may lie on the tension side of a member in bending, run over depth");

    private static final Utilisation UTILISATION =
            Utilisation.atMost("σ_m,d", "k_crit * f_m,d", NEWTON_PER_SQUARE_MILLIMETRE, "(6.33)");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.bending",
            En1995.SOURCE,
            "bending stress",
            NEWTON_PER_SQUARE_MILLIMETRE,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(
                    Inputs.OF_STRENGTH,
                    MemberBasis.parameters(EffectiveLength.PARAMETERS, SystemStrength.PARAMETERS),
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
        Sheet characteristic = Sheet.on(basis.start());
        basis.material().enterBending(characteristic, basis.ksys(), Material.SIZE_FACTOR);
        Buckling buckling = new Buckling(basis, characteristic);
        List<Case> places = new ArrayList<>();
        for (Combination combination : Loading.of(basis.parameters()).filter(basis.combinations(State.ULTIMATE))) {
            Sheet strength = basis.design(characteristic, Strength.BENDING, combination);
            Effects effects = basis.analysis().effects(combination.factors());
            for (Moment moment : moments(basis, effects)) {
                places.add(place(basis, combination, moment, strength, buckling));
            }
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

    /**
     * A moment that the member takes somewhere.
     *
     * @param notch on the section that it bends
     */
    private record Moment(int span, boolean sagging, double valueNmm, Optional<EndNotch> notch, String place) {}

    private static List<Moment> moments(MemberBasis basis, Effects effects) {
        List<Moment> moments = new ArrayList<>();
        Optional<EndNotch> notch = basis.member().endNotch();
        for (int i = 0; i < effects.spans().size(); i++) {
            Effects.SpanEffects span = effects.spans().get(i);
            String name = basis.spanName(i);
            moments.add(new Moment(i, true, span.sagging().value(), Optional.empty(), "sagging in " + name));
            moments.add(new Moment(i, false, span.hogging().value(), notch, "hogging in " + name));
        }
        notch.ifPresent(n -> moments.addAll(besideNotches(basis, n, effects)));
        return moments;
    }

    /** At the inner corners of notches: the moment there is at most the shear force at the support times the distance. */
    private static List<Moment> besideNotches(MemberBasis basis, EndNotch notch, Effects effects) {
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < effects.supports().size(); i++) {
            double momentNmm = effects.supports().get(i).shear().value()
                    * notch.supportDistance().mm();
            for (int span : Notches.spansBeside(basis.member(), i)) {
                moments.add(new Moment(
                        span, true, momentNmm, Optional.of(notch), "at the notch at " + basis.supportName(i)));
            }
        }
        return moments;
    }

    /** k_crit of each span, sagging and hogging, which is the same under all combinations. */
    private static final class Buckling {
        private final MemberBasis basis;
        private final Sheet characteristic;
        private final Map<Integer, Slender> sagging = new TreeMap<>();
        private final Map<Integer, Slender> hogging = new TreeMap<>();

        private record Slender(EffectiveLength length, Sheet sheet) {}

        Buckling(MemberBasis basis, Sheet characteristic) {
            this.basis = basis;
            this.characteristic = characteristic;
        }

        Slender of(Moment moment) {
            return (moment.sagging() ? sagging : hogging)
                    .computeIfAbsent(moment.span(), span -> of(span, moment.sagging()));
        }

        private Slender of(int span, boolean isSagging) {
            EffectiveLength length = EffectiveLength.of(basis, span, isSagging);
            Sheet sheet = Sheet.on(characteristic);
            LateralBuckling.of(basis.member().plies()).calculate(sheet, length, basis.material());
            return new Slender(length, sheet);
        }
    }

    private static Case place(
            MemberBasis basis, Combination combination, Moment moment, Sheet strength, Buckling buckling) {
        Sheet stress = Sheet.on(basis.start());
        stress.given(
                "M_d",
                moment.valueNmm(),
                NEWTON_MILLIMETRE,
                () -> "design moment, " + moment.place() + ", " + combination.id(),
                basis.combinationSource(),
                basis.member().pointer());
        moment.notch().ifPresent(n -> {
            Pointer depth = basis.member().pointer().child("endNotch").child("depth");
            stress.given("d_n", n.depth().mm(), MILLIMETRE, "depth of the notch", "", depth);
            stress.calculate(Section.LEFT_DEPTH);
        });
        stress.calculate(moment.notch().isPresent() ? Section.LEFT_MODULUS : Section.MODULUS);
        stress.calculate(BendingStress.OF_SECTION);
        Buckling.Slender slender = buckling.of(moment);
        return basis.place(
                UTILISATION,
                Sheet.on(stress, strength, slender.sheet()),
                combination,
                moment::place,
                () -> basis.assumptions(List.of(
                        "Supports hold members against twisting (EN 1995-1-1, 6.3.3).",
                        slender.length().assumption())));
    }
}
