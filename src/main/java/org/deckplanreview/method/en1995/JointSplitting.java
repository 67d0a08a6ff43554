package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Splitting of a beam by fasteners that push across its grain, 8.1.4 (8.2) to (8.4), with w = 1 for bolts and screws. */
final class JointSplitting implements Method {
    private static final Formula FARTHEST = Formula.of("h_e = e + l", MILLIMETRE, "8.1.4(3)");
    private static final Formula CHARACTERISTIC = Formula.ofNumbers(
            "F_90,Rk = 14 * b * sqrt(h_e / (1 - h_e / h))",
            NEWTON_,
            "(8.4)",
            Map.of("b", MILLIMETRE, "h_e", MILLIMETRE, "h", MILLIMETRE));
    private static final ConnectionResistance RESISTANCE = ConnectionResistance.of("F_90,Rd", "F_90,Rk");
    private static final Utilisation UTILISATION = Utilisation.atMost("F_v,Ed", "F_90,Rd", NEWTON_, "(8.2)");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.splitting",
            En1995.SOURCE,
            "shear force beside the fasteners",
            NEWTON_,
            List.of(SubjectKind.BEAMS),
            MemberBasis.parameters(
                    ConnectionResistance.PARAMETERS,
                    List.of(),
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE),
            "Largest design shear force of the beam beside its fasteners at a post, against the force that splits it along the"
                    + " farthest fastener: (8.2) to (8.4) for softwood.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return BeamJoint.evaluate(subject, context, joint -> {
            List<Need> needs = new ArrayList<>(joint.spacingNeeds());
            needs.addAll(joint.edgeNeeds());
            return joint.underLoad(parameters, needs, basis -> worst(joint, basis));
        });
    }

    private static Evaluation worst(BeamJoint joint, MemberBasis basis) {
        if (!basis.strengthClass().softwood()) {
            return new Evaluation.OutOfScope("The force that splits a beam is given for softwood", "8.1.4(3)");
        }
        Sheet fastened = Sheet.on(basis.start());
        joint.enterEdgeDistance(fastened);
        joint.enterRowLength(fastened);
        double he = fastened.calculate(FARTHEST);
        if (he >= basis.depthMm()) {
            return new Evaluation.OutOfScope(
                    "The farthest fastener would lie " + basis.context().written(Measure.mm(he))
                            + " below the upper edge of a beam of "
                            + basis.context().written(Measure.mm(basis.depthMm())),
                    "8.1.4(3)");
        }
        fastened.calculate(CHARACTERISTIC);
        List<Case> cases = new ArrayList<>();
        for (Combination combination : basis.combinations(State.ULTIMATE)) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < effects.supports().size(); i++) {
                cases.add(beside(basis, i, combination, effects.supports().get(i), fastened));
            }
        }
        return Case.worst(cases);
    }

    /** The beam beside one post under one combination. */
    private static Case beside(
            MemberBasis basis, int support, Combination combination, Effects.SupportEffects effects, Sheet fastened) {
        Sheet sheet = Sheet.on(fastened);
        RESISTANCE.calculate(sheet, combination, basis.parameters());
        double shear = effects.shear().value();
        basis.enterForce(sheet, "F_v,Ed", shear, "largest design shear force beside ", support, combination);
        return UTILISATION.of(
                sheet,
                () -> "at " + basis.supportName(support) + ", combination " + combination.id(),
                () -> basis.assumptions(List.of()));
    }
}
