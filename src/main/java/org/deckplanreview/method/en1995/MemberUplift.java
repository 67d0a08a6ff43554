package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.ActionFactors;
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
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Uplift at a support of a joist or beam, equilibrium of EN 1990, 6.4.2 (6.7) with the resistance of fixings, (6.8). */
final class MemberUplift implements Method {
    private static final ParameterDescription HOLD_DOWN = ParameterDescription.number(
            "holdDown",
            NEWTON_,
            "design resistance that ordinary fixings at a support are taken to have against uplift");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.uplift",
            "EN 1990:2002+A1:2005, 6.4.2",
            "smallest reaction",
            NEWTON_,
            MemberBasis.SUBJECTS,
            List.of(StrengthClass.TABLE, Combination.COMBINATIONS, Combination.Psi.TABLE, HOLD_DOWN),
            "Smallest reaction of any support under the combinations of equilibrium, against what fixings hold down; the"
                    + " utilisation is what adverse imposed load takes away over permanent reaction and fixings together.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return MemberBasis.evaluate(subject, parameters, context, MemberUplift::worst);
    }

    private static Evaluation worst(MemberBasis basis) {
        List<Place> places = new ArrayList<>();
        for (Combination combination : basis.combinations(State.EQUILIBRIUM)) {
            ActionFactors factors = combination.factors();
            Effects all = basis.analysis().effects(factors);
            Effects permanent = basis.analysis().effects(new ActionFactors(factors.permanent(), 0, 0, 0));
            for (int i = 0; i < all.supports().size(); i++) {
                places.add(new Place(
                        basis,
                        combination,
                        i,
                        permanent.supports().get(i).smallestReactionN(),
                        all.supports().get(i).smallestReactionN()));
            }
        }
        return Case.worst(places);
    }

    /** One support under one combination. */
    private record Place(MemberBasis basis, Combination combination, int support, double permanentN, double smallestN)
            implements Case {
        private double holdDownN() {
            return basis.parameters().number(HOLD_DOWN.name(), NEWTON_);
        }

        /** What imposed load takes away, N. */
        private double adverseN() {
            return Math.max(0, permanentN - smallestN);
        }

        private double stabilisingN() {
            return permanentN + holdDownN();
        }

        private double weightN() {
            return combination.factors().permanent() * basis.analysis().totalN(Action.PERMANENT);
        }

        private boolean restsWithoutImposedLoad() {
            return stabilisingN() > 0;
        }

        /** Where the member's own weight lifts the support already, what is lacking over that weight, beyond 1. */
        @Override
        public double utilisation() {
            return restsWithoutImposedLoad() ? adverseN() / stabilisingN() : 1 - (smallestN + holdDownN()) / weightN();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(smallestN, NEWTON_),
                    Sense.AT_LEAST,
                    Measure.of(-holdDownN(), NEWTON_),
                    utilisation(),
                    "at " + basis.supportName(support) + ", combination " + combination.id(),
                    working(),
                    basis.assumptions(assumed()));
        }

        private List<String> assumed() {
            return List.of(
                    holdDownN() == 0
                            ? "Uplift is resisted by weight alone, not by fixings."
                            : "Fixings at every support of "
                                    + basis.member().kind().word() + " hold down "
                                    + basis.context().written(Measure.of(holdDownN(), NEWTON_))
                                    + " at least.");
        }

        private List<WorkingStep> working() {
            String source = basis.parameters().source(Combination.COMBINATIONS.name());
            Working w = new Working();
            w.given(
                    "R_G,d",
                    permanentN,
                    NEWTON_,
                    "reaction of the permanent action at " + basis.supportName(support),
                    source,
                    basis.member().pointer());
            w.given(
                    "R_d",
                    smallestN,
                    NEWTON_,
                    "smallest reaction there, " + combination.id(),
                    source,
                    basis.member().pointer());
            w.given(
                    "H_d",
                    holdDownN(),
                    NEWTON_,
                    "resistance of fixings",
                    basis.parameters().source(HOLD_DOWN.name()));
            if (restsWithoutImposedLoad()) {
                w.step("R_Q,d", "max(0, R_G,d - R_d)", adverseN(), NEWTON_, "");
                w.step("utilisation", "R_Q,d / (R_G,d + H_d)", utilisation(), RATIO, "(6.7), (6.8)");
            } else {
                w.given("G_d", weightN(), NEWTON_, "permanent action on the member", source);
                w.step("utilisation", "1 - (R_d + H_d) / G_d", utilisation(), RATIO, "(6.7), (6.8)");
            }
            return w.steps();
        }
    }
}
