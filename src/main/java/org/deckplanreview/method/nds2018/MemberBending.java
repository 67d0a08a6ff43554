package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_INCH;
import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_INCH;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.Notches;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Bending of joists and beams, 3.3.1 and 3.3.2 (3.3-1), with the stability of the compression edge, 3.3.3. */
final class MemberBending implements Method {
    private static final Formula LEFT_DEPTH = Section.left("3.2.3");
    private static final Formula LEFT_MODULUS = Formula.of("S = b * d_n^2 / 6", CUBIC_INCH, "3.3.2");
    static final Formula STRESS = Formula.of("f_b = M / S", POUND_FORCE_PER_SQUARE_INCH, "(3.3-1)");
    static final Formula UTILISATION = Formula.of("utilisation = f_b / F_b'", RATIO, "3.3.1");
    private static final Formula ADJUSTED = Formula.of(
            "F_b' = F_b * C_D * C_M * C_t * C_F * C_i * C_r * C_fu * C_L", POUND_FORCE_PER_SQUARE_INCH, "4.3.1");

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
        Adjustments adjustments = basis.adjustments();
        AdjustedValue reference = adjustments.of(Property.BENDING);
        adjustments.enterRepetitive(reference.factors(), basis.member());
        adjustments.enterFlatUse(reference.factors(), basis.ply());
        Map<Edge, BeamStability> stabilities = new LinkedHashMap<>();
        List<Case> places = new ArrayList<>();
        for (Combination combination : basis.combinations()) {
            Sheet strength = reference.under(combination.duration(basis.parameters()));
            for (Moment moment : moments(basis, basis.analysis().effects(combination.factors()))) {
                BeamStability stability = stabilities.computeIfAbsent(
                        moment.edge(), e -> new BeamStability(basis, e.span(), e.sagging()));
                if (!stability.isAllowed()) {
                    return new Evaluation.OutOfScope(
                            "Nothing holds the lower edge sideways, and it is too slender to be without, "
                                    + moment.place(),
                            "3.3.3.7");
                }
                places.add(place(basis, combination, moment, strength, stability));
            }
        }
        return Case.worst(places);
    }

    /** The compression edge of a span: the upper one in sagging. */
    private record Edge(int span, boolean sagging) {}

    /**
     * A moment that the member takes somewhere.
     *
     * @param notch on the section that it bends
     */
    private record Moment(Edge edge, double valueNmm, Optional<EndNotch> notch, String place) {}

    private static List<Moment> moments(MemberBasis basis, Effects effects) {
        List<Moment> moments = new ArrayList<>();
        Optional<EndNotch> notch = basis.member().endNotch();
        for (int i = 0; i < effects.spans().size(); i++) {
            Effects.SpanEffects span = effects.spans().get(i);
            String name = basis.member().spanName(i);
            moments.add(new Moment(new Edge(i, true), span.sagging().value(), Optional.empty(), "sagging in " + name));
            if (span.hogging().value() > 0) {
                moments.add(new Moment(new Edge(i, false), span.hogging().value(), notch, "hogging in " + name));
            }
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
                        new Edge(span, true),
                        momentNmm,
                        Optional.of(notch),
                        "at the notch at " + basis.supportName(i)));
            }
        }
        return moments;
    }

    private static Case place(
            MemberBasis basis, Combination combination, Moment moment, Sheet strength, BeamStability stability) {
        Sheet stress = Sheet.on(basis.section());
        stress.given(
                "M",
                NEWTON_MILLIMETRE.convert(moment.valueNmm(), POUND_FORCE_INCH),
                POUND_FORCE_INCH,
                () -> "moment, " + moment.place() + ", " + combination.id(),
                basis.combinationSource(),
                basis.member().pointer());
        moment.notch().ifPresent(n -> {
            Pointer depth = basis.member().pointer().child("endNotch").child("depth");
            stress.given("a", MILLIMETRE.convert(n.depth().mm(), INCH), INCH, "depth of the notch", "", depth);
            stress.calculate(LEFT_DEPTH);
        });
        stress.calculate(moment.notch().isPresent() ? LEFT_MODULUS : Section.MODULUS);
        stress.calculate(STRESS);
        Sheet sheet = stability.factor(Sheet.on(stress, strength));
        sheet.calculate(ADJUSTED);
        return SheetCase.of(
                        sheet,
                        UTILISATION,
                        "f_b",
                        Sense.AT_MOST,
                        "F_b'",
                        () -> moment.place() + ", combination " + combination.id(),
                        () -> basis.assumptions(stability.assumptions().toArray(String[]::new)))
                .after(basis.loads(combination.factors()));
    }
}
