package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Enough;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Joist hangers by the characteristic resistance that their maker states, 2.4.3 (2.17). */
final class HangerForce implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.hanger",
            En1995.SOURCE,
            "force on a joist hanger",
            NEWTON_,
            List.of(SubjectKind.JOISTS),
            List.of(
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    Modification.SERVICE_CLASS,
                    Modification.KMOD,
                    Modification.DURATIONS,
                    BeamJoint.GAMMA_M),
            "Largest design reaction of the joist at a support where a hanger holds it, against k_mod R_k / γ_M of the hanger:"
                    + " (2.17).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        JoistLine joist = (JoistLine) subject;
        if (!hangs(joist)) {
            return new Evaluation.NotApplicable("No hanger holds it");
        }
        Optional<Measure> stated =
                context.layout().platformOf(joist).platform().joists().flatMap(JoistField::hangerResistance);
        if (stated.filter(r -> r.value() <= 0).isPresent()) {
            return new Evaluation.OutOfScope("A hanger without resistance holds no joist", "");
        }
        Pointer pointer = joist.pointer().child("hangerResistance");
        return MemberBasis.evaluate(
                joist,
                parameters,
                context,
                basis -> stated.<Evaluation>map(r -> Case.worst(places(basis, r.in(NEWTON_), pointer)))
                        .orElseGet(() -> new Evaluation.Missing(List.of(need(joist, parameters, context, pointer)))));
    }

    private static boolean hangs(JoistLine joist) {
        return joist.supports().stream().anyMatch(HangerForce::isHanger);
    }

    private static boolean isHanger(MemberSupport support) {
        return support.seating() == JoistSeating.HANGERS;
    }

    /** Names what all hangers of the platform would need, so that one answer serves all its joists. */
    private static Need need(JoistLine joist, Parameters parameters, ReviewContext context, Pointer pointer) {
        OptionalDouble enough = context.layout().platformOf(joist).joists().stream()
                .filter(HangerForce::hangs)
                .map(j -> MemberBasis.evaluate(j, parameters, context, basis -> Case.worst(places(basis, 1, pointer))))
                .filter(e -> e instanceof Evaluation.Measured)
                .mapToDouble(e -> ((Evaluation.Measured) e).utilisation())
                .max();
        return new Need(
                pointer,
                "the characteristic resistance of one joist hanger, as its maker states it, in "
                        + context.units().unit(MeasureUnit.KILONEWTON).symbol()
                        + Enough.from(enough.orElseThrow(), context.units()));
    }

    private static List<Place> places(MemberBasis basis, double resistanceN, Pointer pointer) {
        List<Place> places = new ArrayList<>();
        List<MemberSupport> supports = basis.member().supports();
        for (Combination combination : basis.combinations(State.ULTIMATE)) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < supports.size(); i++) {
                if (isHanger(supports.get(i))) {
                    double reaction = effects.supports().get(i).largestReactionN();
                    places.add(new Place(basis, combination, i, Math.max(0, reaction), resistanceN, pointer));
                }
            }
        }
        return places;
    }

    /** One support under one combination. */
    private record Place(
            MemberBasis basis,
            Combination combination,
            int support,
            double forceN,
            double characteristicN,
            Pointer pointer)
            implements Case {

        private ConnectionResistance resistance() {
            return ConnectionResistance.of(characteristicN, combination, basis.parameters());
        }

        private double allowedN() {
            return resistance().designN();
        }

        @Override
        public double utilisation() {
            return forceN / allowedN();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(forceN, NEWTON_),
                    Sense.AT_MOST,
                    Measure.of(allowedN(), NEWTON_),
                    utilisation(),
                    "at " + basis.supportName(support) + ", combination " + combination.id(),
                    working(),
                    List.of("Every fixing that the maker of the hangers asks for is in its hole."));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            w.given("R_k", characteristicN, NEWTON_, "characteristic resistance of a hanger", "", pointer);
            resistance().write(w, "R_d", "R_k");
            w.given(
                    "F_Ed",
                    forceN,
                    NEWTON_,
                    "design reaction at " + basis.supportName(support) + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            w.step("utilisation", "F_Ed / R_d", utilisation(), RATIO, "");
            return w.steps();
        }
    }
}
