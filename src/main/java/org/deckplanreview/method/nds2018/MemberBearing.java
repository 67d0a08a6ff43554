package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_INCH;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Bearing;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.Notches;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.nds2018.AdjustedValue.Factor;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Compression perpendicular to grain where joists and beams bear, 3.10.2, with the bearing area factor, 3.10.4 (3.10-2). */
final class MemberBearing implements Method {
    private static final ParameterDescription EXTENSION =
            ParameterDescription.number("bearingExtension", INCH, "length added to a short bearing in C_b");
    private static final ParameterDescription SHORT_UNDER =
            ParameterDescription.number("bearingShortUnder", INCH, "length under which a bearing is short");
    private static final ParameterDescription END_DISTANCE = ParameterDescription.number(
            "bearingLeastEndDistance", INCH, "least distance of a bearing from the member's end for C_b");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "nds2018.bearing",
            Nds2018.SOURCE,
            "bearing stress perpendicular to grain",
            POUND_FORCE_PER_SQUARE_INCH,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(List.of(EXTENSION, SHORT_UNDER, END_DISTANCE)),
            "Largest stress perpendicular to grain over all supports on which the member lies, against F_cperp' = F_cperp"
                    + " C_M C_t C_i C_b (Table 4.3.1, 3.10.2), with C_b of (3.10-2). Joists in hangers on a beam's face and"
                    + " beams bolted to a post's side are left to the connection.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return Bearing.evaluate(
                (Member) subject,
                context,
                () -> MemberBasis.evaluate(subject, parameters, context, MemberBearing::worst));
    }

    private static Evaluation worst(MemberBasis basis) {
        List<Place> places = new ArrayList<>();
        List<MemberSupport> supports = basis.member().supports();
        for (Combination combination : basis.combinations()) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < supports.size(); i++) {
                if (supports.get(i).contactLengthMm().isPresent()) {
                    places.add(new Place(
                            basis, combination, i, effects.supports().get(i).largestReactionN()));
                }
            }
        }
        return Case.worst(places);
    }

    /** C_b, (3.10-2). */
    static double areaFactor(double lengthIn, double extensionIn) {
        return (lengthIn + extensionIn) / lengthIn;
    }

    /** One support under one combination. */
    private record Place(MemberBasis basis, Combination combination, int support, double reactionN) implements Case {

        private Bearing bearing() {
            return new Bearing(basis.member(), support, basis.context());
        }

        private MemberSupport at() {
            return basis.member().supports().get(support);
        }

        private double lengthIn() {
            return MILLIMETRE.convert(bearsMm(-1) + bearsMm(1), INCH);
        }

        private double bearsMm(int towards) {
            return Notches.bearsMm(basis.member(), support, towards);
        }

        private double breadthIn() {
            return MILLIMETRE.convert(bearing().breadthMm(), INCH);
        }

        private double reactionLbf() {
            return NEWTON_.convert(Math.max(0, reactionN), POUND_FORCE);
        }

        private double areaIn2() {
            return breadthIn() * lengthIn();
        }

        private double stress() {
            return reactionLbf() / areaIn2();
        }

        private double number(ParameterDescription parameter) {
            return basis.parameters().number(parameter.name(), INCH);
        }

        private double endDistanceIn() {
            double before = Math.min(at().atMm(), Notches.cornerMm(basis.member(), support, -1)) - bearsMm(-1);
            double behind =
                    Math.min(basis.member().lengthMm() - at().atMm(), Notches.cornerMm(basis.member(), support, 1))
                            - bearsMm(1);
            return MILLIMETRE.convert(Math.min(before, behind), INCH);
        }

        private boolean hasAreaFactor() {
            return Sense.UNDER.holds(lengthIn(), number(SHORT_UNDER))
                    && Sense.AT_LEAST.holds(endDistanceIn(), number(END_DISTANCE));
        }

        private Factor areaFactor() {
            return hasAreaFactor()
                    ? new Factor("C_b", MemberBearing.areaFactor(lengthIn(), number(EXTENSION)), "", "")
                    : new Factor(
                            "C_b",
                            1,
                            "bearing area factor, within " + Numbers.plain(number(END_DISTANCE))
                                    + " in of the member's end or long",
                            "3.10.4");
        }

        private AdjustedValue withoutAreaFactor() {
            return basis.adjustments().of(Property.BEARING);
        }

        private AdjustedValue allowed() {
            return withoutAreaFactor().times(areaFactor());
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
                    "at " + basis.supportName(support) + ", combination " + combination.id(),
                    working(),
                    basis.assumptions("Members lie square and in full contact on what carries them."));
        }

        private List<WorkingStep> working() {
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given(
                    "R",
                    reactionLbf(),
                    POUND_FORCE,
                    "reaction at " + basis.supportName(support) + ", " + combination.id(),
                    basis.parameters().source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            w.given(
                    "l_b",
                    lengthIn(),
                    INCH,
                    "bearing length along the member at " + basis.supportName(support),
                    "",
                    at().pointer());
            writeArea(w);
            w.step("f_c,perp", "R / A", stress(), POUND_FORCE_PER_SQUARE_INCH, "3.10.2");
            withoutAreaFactor().writeReference(w, basis.grading());
            writeAreaFactor(w);
            allowed().writeProduct(w);
            w.step("utilisation", "f_c,perp / F_c,perp'", utilisation(), RATIO, "3.10.2");
            return w.steps();
        }

        private void writeArea(Sheet w) {
            Optional<PostPlace> post = bearing().post();
            if (post.isEmpty()) {
                w.step("A", "b * l_b", areaIn2(), SQUARE_INCH, "");
                return;
            }
            w.given(
                    "b_p",
                    MILLIMETRE.convert(post.get().timber().depth().mm(), INCH),
                    INCH,
                    "side of the post across the beam",
                    "",
                    basis.context()
                            .submission()
                            .timberPointer(post.get().timber().id())
                            .child("depth"));
            double off = bearing().offMm(post.get());
            if (off > 0) {
                w.given(
                        "o",
                        MILLIMETRE.convert(off, INCH),
                        INCH,
                        "from the post's axis to the beam's line",
                        "",
                        post.get().pointer());
            }
            w.step("A", "min(b, b_p" + (off > 0 ? ", (b + b_p) / 2 - o" : "") + ") * l_b", areaIn2(), SQUARE_INCH, "");
        }

        private void writeAreaFactor(Sheet w) {
            Factor factor = areaFactor();
            if (hasAreaFactor()) {
                w.step(
                        factor.symbol(),
                        "(l_b + " + Numbers.plain(number(EXTENSION)) + ") / l_b",
                        factor.value(),
                        RATIO,
                        "(3.10-2)");
            } else {
                w.given(factor.symbol(), factor.value(), RATIO, factor.meaning(), factor.source());
            }
        }
    }
}
