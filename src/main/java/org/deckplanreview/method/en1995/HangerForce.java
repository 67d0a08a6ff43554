package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.formula.Sheet;
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

/** Joist hangers by the characteristic resistance that their maker states, 2.4.3 (2.17). */
final class HangerForce implements Method {
    private static final ConnectionResistance RESISTANCE = ConnectionResistance.of("R_d", "R_k");
    private static final Utilisation UTILISATION = Utilisation.atMost("F_Ed", "R_d", NEWTON_, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.hanger",
            En1995.SOURCE,
            "force on a joist hanger",
            NEWTON_,
            List.of(SubjectKind.JOISTS),
            MemberBasis.parameters(
                    ConnectionResistance.PARAMETERS,
                    List.of(),
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE),
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

    private static List<Case> places(MemberBasis basis, double resistanceN, Pointer pointer) {
        Sheet stated = Sheet.blank();
        stated.given("R_k", resistanceN, NEWTON_, "characteristic resistance of a hanger", "", pointer);
        List<Case> places = new ArrayList<>();
        List<MemberSupport> supports = basis.member().supports();
        for (Combination combination : basis.combinations(State.ULTIMATE)) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < supports.size(); i++) {
                if (isHanger(supports.get(i))) {
                    places.add(at(basis, i, combination, effects.supports().get(i), stated));
                }
            }
        }
        return places;
    }

    /** One support under one combination. */
    private static Case at(
            MemberBasis basis, int support, Combination combination, Effects.SupportEffects effects, Sheet stated) {
        Sheet sheet = Sheet.on(stated);
        RESISTANCE.calculate(sheet, combination, basis.parameters());
        double force = Math.max(0, effects.largestReactionN());
        basis.enterForce(sheet, "F_Ed", force, "design reaction at ", support, combination);
        return UTILISATION.of(
                sheet,
                () -> "at " + basis.supportName(support) + ", combination " + combination.id(),
                () -> List.of("Every fixing that the maker of the hangers asks for is in its hole."));
    }
}
