package org.deckplanreview.method.guard;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.PartialFactors;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Bending of the top rail from post to post under the line load. */
final class RailBending implements Method {

    private static final Formula MOMENT = Formula.of("M_d = γ_Q * q_k * s^2 / 8", MeasureUnit.NEWTON_MILLIMETRE, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.railBending",
            "EN 1995-1-1:2004+A1:2008+A2:2014",
            "bending stress of the guard's top rail",
            MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE,
            GuardBasis.SUBJECTS,
            SingleTimber.parameters(GuardLoads.TABLE, PartialFactors.PARAMETER),
            "Bending stress of the top rail as a simple beam from post to post under the line load, against the design bending"
                    + " strength: equation (6.11) for one axis.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return GuardBasis.evaluate(subject, parameters, context, RailBending::check);
    }

    private static Evaluation check(GuardBasis basis) {
        Derived<String> id = basis.rail();
        Optional<Evaluation> outOfScope = basis.outOfScope(id);
        if (outOfScope.isPresent()) {
            return outOfScope.get();
        }
        Derived<Evaluation> result =
                basis.single(id).with(basis.guardPosts(), (timber, posts) -> measured(basis, posts, timber));
        return result.isKnown() ? result.get() : new Evaluation.Missing(result.needs());
    }

    private static Evaluation measured(GuardBasis basis, GuardPosts posts, SingleTimber timber) {
        Sheet sheet = Sheet.blank();
        basis.enterLineLoad(sheet);
        basis.enterFactor(sheet);
        basis.enterSpacing(sheet, posts);
        sheet.calculate(MOMENT);
        return timber.bending(
                        sheet,
                        "the rail",
                        "",
                        List.of(
                                GuardBasis.ALONG_LOAD,
                                GuardBasis.SEPARATE,
                                "The top rail of a guard spans from post to post as a simple beam and carries the line load"
                                        + " alone."))
                .measured();
    }
}
