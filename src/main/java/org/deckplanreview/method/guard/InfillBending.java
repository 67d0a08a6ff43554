package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.PartialFactors;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.GuardInfill;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Bending of one baluster, or one horizontal rail, under the load on one place of the infill. */
final class InfillBending implements Method {

    private static final Formula MOMENT = Formula.of("M_d = γ_Q * Q_k * l / 4", MeasureUnit.NEWTON_MILLIMETRE, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.infillBending",
            "EN 1995-1-1:2004+A1:2008+A2:2014",
            "bending stress of the guard's infill",
            MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE,
            GuardBasis.SUBJECTS,
            SingleTimber.parameters(GuardLoads.TABLE, PartialFactors.PARAMETER),
            "Bending stress of one baluster over the guard's height, or of one horizontal rail from post to post, as a simple"
                    + " beam with the whole load on one place of the infill at its middle, against the design bending strength:"
                    + " equation (6.11) for one axis.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return GuardBasis.evaluate(subject, parameters, context, InfillBending::check);
    }

    /** What an infill member spans. */
    private record Span(double mm, String meaning, Pointer from) {}

    private static Evaluation check(GuardBasis basis) {
        Optional<GuardInfill> infill = basis.run().guard().infill();
        Pointer pointer = basis.run().pointer().child("infill");
        if (infill.isEmpty()) {
            return new Evaluation.Missing(List.of(new Need(
                    pointer, "what fills " + basis.run().label() + ": balusters, panel, horizontal-rails or none")));
        }
        return switch (infill.get()) {
            case NONE -> new Evaluation.NotApplicable("the guard has no infill");
            case PANEL ->
                new Evaluation.OutOfScope(
                        "The strength of a panel and of its fixings is not calculated; its maker must state the loads on its"
                                + " area and on one place of it that it carries",
                        basis.parameters().source(GuardLoads.TABLE.name()));
            case BALUSTERS ->
                ofMember(
                        basis,
                        basis.height()
                                .map(h -> new Span(
                                        h,
                                        "height of the guard, which a baluster spans at most",
                                        basis.run().pointer().child("height"))));
            case HORIZONTAL_RAILS ->
                ofMember(
                        basis,
                        basis.guardPosts()
                                .map(p -> new Span(
                                        p.spacing().mm(),
                                        "spacing of the posts, which a rail spans",
                                        basis.postsMember("spacing"))));
        };
    }

    private static Evaluation ofMember(GuardBasis basis, Derived<Span> span) {
        Derived<String> id = Derived.of(
                basis.run().guard().infillTimber(),
                basis.run().pointer().child("infillTimber"),
                "the timber of the balusters or rails of " + basis.run().label());
        Optional<Evaluation> outOfScope = basis.outOfScope(id);
        if (outOfScope.isPresent()) {
            return outOfScope.get();
        }
        Derived<Evaluation> result = basis.single(id).with(span, (timber, l) -> measured(basis, timber, l));
        return result.isKnown() ? result.get() : new Evaluation.Missing(result.needs());
    }

    private static Evaluation measured(GuardBasis basis, SingleTimber timber, Span span) {
        Sheet sheet = Sheet.blank();
        sheet.given(
                "Q_k",
                basis.loads().infillPointN(),
                NEWTON_,
                "horizontal load on one place of the infill",
                basis.parameters().source(GuardLoads.TABLE.name()),
                Pointer.of("/use/occupancy"));
        basis.enterFactor(sheet);
        sheet.given("l", span.mm(), MILLIMETRE, span.meaning(), "", span.from());
        sheet.calculate(MOMENT);
        return timber.bending(
                        sheet,
                        "one member of the infill",
                        "",
                        List.of(
                                GuardBasis.ALONG_LOAD,
                                GuardBasis.SEPARATE,
                                "One baluster or rail of a guard's infill carries the whole load on one place; its share of"
                                        + " the load on the infill's area is less."))
                .measured();
    }
}
