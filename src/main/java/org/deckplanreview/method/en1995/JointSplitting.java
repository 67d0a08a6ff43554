package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Splitting of a beam by fasteners that push across its grain, 8.1.4 (8.2) to (8.4), with w = 1 for bolts and screws. */
final class JointSplitting implements Method {
    private static final ParameterDescription FACTOR =
            ParameterDescription.number("splittingFactor", RATIO, "factor of F_90,Rk, with N and mm");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.splitting",
            En1995.SOURCE,
            "shear force beside the fasteners",
            NEWTON_,
            List.of(SubjectKind.BEAMS),
            List.of(
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    Modification.SERVICE_CLASS,
                    Modification.KMOD,
                    Modification.DURATIONS,
                    BeamJoint.GAMMA_M,
                    FACTOR),
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
        double h = basis.ply().depthMm();
        double he = joint.joint().edgeDistance().orElseThrow().mm() + joint.rowLengthMm();
        if (he >= h) {
            return new Evaluation.OutOfScope(
                    "The farthest fastener would lie " + basis.context().written(Measure.mm(he))
                            + " below the upper edge of a beam of "
                            + basis.context().written(Measure.mm(h)),
                    "8.1.4(3)");
        }
        List<Place> places = new ArrayList<>();
        for (Combination combination : basis.combinations(State.ULTIMATE)) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < effects.supports().size(); i++) {
                double shear = effects.supports().get(i).shear().value();
                places.add(new Place(joint, basis, combination, i, shear, he));
            }
        }
        return Case.worst(places);
    }

    /** The beam beside one post under one combination. */
    private record Place(
            BeamJoint joint, MemberBasis basis, Combination combination, int support, double shearN, double heMm)
            implements Case {
        private double factor() {
            return basis.parameters().number(FACTOR.name(), RATIO);
        }

        private double characteristicN() {
            double h = basis.ply().depthMm();
            return factor() * basis.section().breadthMm() * Math.sqrt(heMm / (1 - heMm / h));
        }

        private ConnectionResistance resistance() {
            return ConnectionResistance.of(characteristicN(), combination, basis.parameters());
        }

        private double allowedN() {
            return resistance().designN();
        }

        @Override
        public double utilisation() {
            return shearN / allowedN();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(shearN, NEWTON_),
                    Sense.AT_MOST,
                    Measure.of(allowedN(), NEWTON_),
                    utilisation(),
                    "at " + basis.supportName(support) + ", combination " + combination.id(),
                    working(),
                    basis.assumptions(List.of()));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given(
                    "e",
                    joint.joint().edgeDistance().orElseThrow().mm(),
                    MILLIMETRE,
                    "from the upper edge to the nearest fastener",
                    "",
                    joint.pointer().child("edgeDistance"));
            w.given(
                    "l",
                    joint.rowLengthMm(),
                    MILLIMETRE,
                    "from there to the farthest",
                    "",
                    joint.pointer().child("count"));
            w.step("h_e", "e + l", heMm, MILLIMETRE, "8.1.4(3)");
            w.step(
                    "F_90,Rk",
                    Numbers.plain(factor()) + " * b * sqrt(h_e / (1 - h_e / h))",
                    characteristicN(),
                    NEWTON_,
                    "(8.4)");
            resistance().write(w, "F_90,Rd", "F_90,Rk");
            w.given(
                    "F_v,Ed",
                    shearN,
                    NEWTON_,
                    "largest design shear force beside " + basis.supportName(support) + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            w.step("utilisation", "F_v,Ed / F_90,Rd", utilisation(), RATIO, "(8.2)");
            return w.steps();
        }
    }
}
