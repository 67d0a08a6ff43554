package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_INCH;
import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_INCH;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.Notches;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Bending of joists and beams, 3.3.1 and 3.3.2 (3.3-1), with the stability of the compression edge, 3.3.3. */
final class MemberBending implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "nds2018.bending",
            Nds2018.SOURCE,
            "bending stress",
            POUND_FORCE_PER_SQUARE_INCH,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(Stream.of(Adjustments.OF_BENDING, BeamStability.PARAMETERS)
                    .flatMap(List::stream)
                    .toList()),
            "Largest bending stress over all combinations, spans, sagging and hogging, f_b = M/S (3.3-1), against"
                    + " F_b' = F_b C_D C_M C_t C_L C_F C_fu C_i C_r (Table 4.3.1), with C_L of (3.3-6), or 1 where the"
                    + " compression edge is held (3.3.3, 4.4.1). Beside notched supports the section that is left counts.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return NotchLimit.exceeded((Member) subject)
                .orElseGet(() -> MemberBasis.evaluate(subject, parameters, context, MemberBending::worst));
    }

    private static Evaluation worst(MemberBasis basis) {
        List<Place> places = new ArrayList<>();
        Optional<EndNotch> notch = basis.member().endNotch();
        for (Combination combination : basis.combinations()) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < effects.spans().size(); i++) {
                Effects.SpanEffects span = effects.spans().get(i);
                String name = basis.member().spanName(i);
                places.add(new Place(
                        basis, combination, i, true, span.sagging().value(), Optional.empty(), "sagging in " + name));
                if (span.hogging().value() > 0) {
                    places.add(new Place(
                            basis, combination, i, false, span.hogging().value(), notch, "hogging in " + name));
                }
            }
            notch.ifPresent(n -> places.addAll(besideNotches(basis, combination, effects, n)));
        }
        Optional<Place> tooSlender =
                places.stream().filter(p -> !p.stability().isAllowed()).findFirst();
        return tooSlender
                .<Evaluation>map(p -> new Evaluation.OutOfScope(
                        "Nothing holds the lower edge sideways, and it is too slender to be without, " + p.moment(),
                        "3.3.3.7"))
                .orElseGet(() -> Case.worst(places));
    }

    /** At the inner corners of notches: the moment there is at most the shear force at the support times the distance. */
    private static List<Place> besideNotches(
            MemberBasis basis, Combination combination, Effects effects, EndNotch notch) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < effects.supports().size(); i++) {
            double moment = effects.supports().get(i).shear().value()
                    * notch.supportDistance().mm();
            for (int span : Notches.spansBeside(basis.member(), i)) {
                places.add(new Place(
                        basis,
                        combination,
                        span,
                        true,
                        moment,
                        Optional.of(notch),
                        "at the notch at " + basis.supportName(i)));
            }
        }
        return places;
    }

    /** One span under one combination, sagging or hogging; with the notch where the member has one there. */
    private record Place(
            MemberBasis basis,
            Combination combination,
            int span,
            boolean sagging,
            double momentNmm,
            Optional<EndNotch> notch,
            String moment)
            implements Case {

        private BeamStability stability() {
            return new BeamStability(basis, span, sagging);
        }

        private double momentLbfIn() {
            return NEWTON_MILLIMETRE.convert(momentNmm, POUND_FORCE_INCH);
        }

        /** f_b of (3.3-1), psi. */
        private double stress() {
            return momentLbfIn() / section().modulusIn3();
        }

        private Section section() {
            double cutIn =
                    notch.map(n -> MILLIMETRE.convert(n.depth().mm(), INCH)).orElse(0.0);
            return new Section(basis.section().breadthIn(), basis.section().depthIn() - cutIn);
        }

        /** F_b with all factors but C_fu and C_L. */
        private AdjustedValue starred() {
            return basis.adjustments()
                    .of(Property.BENDING, combination)
                    .times(basis.adjustments().repetitive(basis.member()));
        }

        private AdjustedValue allowed() {
            AdjustedValue starred = starred();
            return starred.times(basis.adjustments().flatUse(basis.ply()))
                    .times(stability().factor(starred));
        }

        @Override
        public double utilisation() {
            return stress() / allowed().psi();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(stress(), POUND_FORCE_PER_SQUARE_INCH),
                    Sense.AT_MOST,
                    Measure.of(allowed().psi(), POUND_FORCE_PER_SQUARE_INCH),
                    utilisation(),
                    moment + ", combination " + combination.id(),
                    working(),
                    basis.assumptions(stability().assumptions().toArray(String[]::new)));
        }

        private List<WorkingStep> working() {
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given(
                    "M",
                    momentLbfIn(),
                    POUND_FORCE_INCH,
                    "moment, " + moment + ", " + combination.id(),
                    basis.parameters().source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            notch.ifPresent(n -> writeNotch(w, n));
            w.step(
                    "S",
                    notch.isPresent() ? "b * d_n^2 / 6" : "b * d^2 / 6",
                    section().modulusIn3(),
                    CUBIC_INCH,
                    "3.3.2");
            w.step("f_b", "M / S", stress(), POUND_FORCE_PER_SQUARE_INCH, "(3.3-1)");
            AdjustedValue starred = starred();
            starred.writeReference(w, basis.grading());
            AdjustedValue.Factor flat = basis.adjustments().flatUse(basis.ply());
            w.given(flat.symbol(), flat.value(), RATIO, flat.meaning(), flat.source());
            stability().write(w, starred);
            allowed().writeProduct(w);
            w.step("utilisation", "f_b / F_b'", utilisation(), RATIO, "3.3.1");
            return w.steps();
        }

        private void writeNotch(Sheet w, EndNotch n) {
            Pointer depth = basis.member().pointer().child("endNotch").child("depth");
            w.given("a", MILLIMETRE.convert(n.depth().mm(), INCH), INCH, "depth of the notch", "", depth);
            w.step("d_n", "d - a", section().depthIn(), INCH, "3.2.3");
        }
    }
}
