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
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.Working;
import org.deckplanreview.method.WorkingStep;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Uplift at a support of a joist or beam, equilibrium of EN 1990, 6.4.2 (6.7). */
final class MemberUplift implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.uplift",
            "EN 1990:2002+A1:2005, 6.4.2",
            "smallest reaction",
            NEWTON_,
            MemberBasis.SUBJECTS,
            List.of(StrengthClass.TABLE, Combination.COMBINATIONS, Combination.Psi.TABLE),
            "Smallest reaction of any support under the combinations of equilibrium, against nought; the utilisation is the"
                    + " part of the permanent reaction that adverse imposed load takes away.");

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
        /** What imposed load takes away, N. */
        private double adverseN() {
            return Math.max(0, permanentN - smallestN);
        }

        private double weightN() {
            return combination.factors().permanent() * basis.analysis().totalN(Action.PERMANENT);
        }

        private boolean restsUnderItsOwnWeight() {
            return permanentN > 0;
        }

        /** Where the member's own weight lifts the support already, lack of reaction over the member's weight. */
        @Override
        public double utilisation() {
            return restsUnderItsOwnWeight() ? adverseN() / permanentN : 1 - smallestN / weightN();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(smallestN, NEWTON_),
                    Sense.AT_LEAST,
                    Measure.of(0, NEWTON_),
                    utilisation(),
                    "at " + basis.supportName(support) + ", combination " + combination.id(),
                    working(),
                    basis.assumptions(List.of("Uplift is resisted by weight alone, not by fixings.")));
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
            if (restsUnderItsOwnWeight()) {
                w.step("R_Q,d", "max(0 , R_G,d - R_d)", adverseN(), NEWTON_, "");
                w.step("utilisation", "R_Q,d / R_G,d", utilisation(), RATIO, "(6.7)");
            } else {
                w.given("G_d", weightN(), NEWTON_, "permanent action on the member", source);
                w.step("utilisation", "1 - R_d / G_d", utilisation(), RATIO, "(6.7)");
            }
            return w.steps();
        }
    }
}
