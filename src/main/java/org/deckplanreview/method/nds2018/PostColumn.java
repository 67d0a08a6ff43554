package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.nds2018.AdjustedValue.Factor;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Posts as solid columns under load along their axis, 3.6.3 and 3.7.1. */
final class PostColumn implements Method {
    private static final ParameterDescription EULER =
            ParameterDescription.number("columnEulerFactor", RATIO, "factor of F_cE");
    private static final ParameterDescription C =
            ParameterDescription.number("columnC", RATIO, "c of sawn lumber in C_P");
    private static final ParameterDescription LARGEST_SLENDERNESS =
            ParameterDescription.number("columnLargestSlenderness", RATIO, "largest slenderness ratio l_e/d");
    private static final ParameterDescription LENGTH_FACTOR =
            ParameterDescription.number("columnLengthFactor", RATIO, "buckling length coefficient K_e");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "nds2018.column",
            Nds2018.SOURCE,
            "use of the post's strength",
            RATIO,
            List.of(SubjectKind.POSTS),
            MemberBasis.parameters(List.of(EULER, C, LARGEST_SLENDERNESS, LENGTH_FACTOR)),
            "Largest f_c/F_c' over all combinations, with F_c' = F_c C_D C_M C_t C_F C_i C_P (Table 4.3.1) and C_P of (3.7-1)"
                    + " in the direction in which the post is more slender; or l_e/d over its limit (3.7.1.4) where it exceeds"
                    + " it. Posts whose beam lies on one side or off their axis are out of scope.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    /** What comes down on the post, and how high it is. */
    private record Loads(ActionForces forces, double weightN, double heightMm) {}

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        PostPlace post = (PostPlace) subject;
        if (isEccentric(post, context)) {
            return new Evaluation.OutOfScope(
                    "The beam does not lie on the post's axis, so that the post bends too", "15.4");
        }
        return Graded.gather(
                post.timber(),
                context.submission().timberPointer(post.timber().id()),
                loads(post, context),
                parameters,
                (loads, adjustments) -> worst(post, loads, adjustments, context));
    }

    private static boolean isEccentric(PostPlace post, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(post);
        List<String> oneSided = platform.platform().beams().stream()
                .filter(b -> b.seating() == BeamSeating.ONE_SIDE)
                .map(b -> b.id())
                .toList();
        Stream<BeamLine> carried =
                platform.beams().stream().filter(b -> post.beams().contains(b.id()));
        return carried.anyMatch(
                b -> oneSided.contains(b.id()) || b.offMm(post.post().at()) > 0);
    }

    private static Derived<Loads> loads(PostPlace post, ReviewContext context) {
        record Weighed(ActionForces forces, double weightN) {}
        return context.loadPath()
                .post(post)
                .with(context.loadPath().postWeightN(post), Weighed::new)
                .with(post.heightMm(), (w, height) -> new Loads(w.forces(), w.weightN(), height));
    }

    private static Evaluation worst(PostPlace post, Loads loads, Adjustments adjustments, ReviewContext context) {
        List<Loaded> cases = new ArrayList<>();
        for (Combination combination :
                Combination.of(adjustments.parameters(), loads.forces().snowN() != 0)) {
            cases.add(new Loaded(post, loads, adjustments, context, combination));
        }
        return Case.worst(cases);
    }

    /** The post under one combination. */
    private record Loaded(
            PostPlace post, Loads loads, Adjustments adjustments, ReviewContext context, Combination combination)
            implements Case {

        private double number(ParameterDescription parameter) {
            return adjustments.parameters().number(parameter.name(), RATIO);
        }

        private Section section() {
            return Section.of(post.timber(), 1);
        }

        private double loadLbf() {
            return NEWTON_.convert(loads.forces().largestN(combination.factors()), POUND_FORCE);
        }

        private double weightLbf() {
            return NEWTON_.convert(combination.factors().permanent() * loads.weightN(), POUND_FORCE);
        }

        private double axialLbf() {
            return Math.max(0, loadLbf() + weightLbf());
        }

        /** f_c, psi, 3.6.3. */
        private double stress() {
            return axialLbf() / section().areaIn2();
        }

        private double heightIn() {
            return MILLIMETRE.convert(loads.heightMm(), INCH);
        }

        /** The direction of the smaller side: both ends are held alike in both. */
        private ColumnAxis axis() {
            return new ColumnAxis(
                    number(LENGTH_FACTOR) * heightIn(),
                    Math.min(section().breadthIn(), section().depthIn()));
        }

        private AdjustedValue stability() {
            return adjustments.of(Property.STABILITY);
        }

        private double critical() {
            return axis().critical(number(EULER), stability().psi());
        }

        private AdjustedValue starred() {
            return adjustments.of(Property.COMPRESSION, combination);
        }

        private double stabilityFactor() {
            return ColumnAxis.stabilityFactor(critical() / starred().psi(), number(C));
        }

        private AdjustedValue allowed() {
            return starred().times(new Factor("C_P", stabilityFactor(), "", ""));
        }

        private boolean isTooSlender() {
            return !Sense.AT_MOST.holds(axis().slenderness(), number(LARGEST_SLENDERNESS));
        }

        private double strengthUse() {
            return stress() / allowed().psi();
        }

        private double slendernessUse() {
            return axis().slenderness() / number(LARGEST_SLENDERNESS);
        }

        @Override
        public double utilisation() {
            return isTooSlender() ? Math.max(strengthUse(), slendernessUse()) : strengthUse();
        }

        @Override
        public Evaluation.Measured measured() {
            List<String> assumptions = new ArrayList<>(adjustments.assumptions(post.timber()));
            assumptions.add("Ledger or braces hold the upper ends of posts in their place, so that a post buckles over "
                    + Numbers.plain(number(LENGTH_FACTOR)) + " times its clear height (NDS Appendix G).");
            assumptions.add("A post carries the whole of its own weight at its foot.");
            return new Evaluation.Measured(
                    Measure.of(utilisation(), RATIO),
                    Sense.AT_MOST,
                    Measure.of(1, RATIO),
                    utilisation(),
                    isTooSlender() ? "too slender for a column" : "combination " + combination.id(),
                    working(),
                    List.copyOf(assumptions));
        }

        private List<WorkingStep> working() {
            Parameters p = adjustments.parameters();
            Pointer timber = context.submission().timberPointer(post.timber().id());
            Pointer[] grading = {timber.child("species"), timber.child("grade")};
            String combinations = p.source(Combination.COMBINATIONS.name());
            Sheet w = Sheet.blank();
            w.given("b", section().breadthIn(), INCH, "side along the beam", "", timber.child("breadth"));
            w.given("h", section().depthIn(), INCH, "side across the beam", "", timber.child("depth"));
            w.given(
                    "P_b",
                    loadLbf(),
                    POUND_FORCE,
                    "load from the beam, " + combination.id(),
                    combinations,
                    post.pointer());
            w.given("P_w", weightLbf(), POUND_FORCE, "weight of the post", combinations, post.pointer());
            w.step("P", "max(0, P_b + P_w)", axialLbf(), POUND_FORCE, "");
            w.step("f_c", "P / (b * h)", stress(), POUND_FORCE_PER_SQUARE_INCH, "3.6.3");
            w.given("l", heightIn(), INCH, "clear height of the post", "", post.pointer());
            w.given("K_e", number(LENGTH_FACTOR), RATIO, "buckling length coefficient", p.source(LENGTH_FACTOR.name()));
            w.step("l_e", "K_e * l", axis().lengthIn(), INCH, "3.7.1.2");
            w.step("d", "min(b, h)", axis().sideIn(), INCH, "3.7.1.3");
            w.step("λ", "l_e / d", axis().slenderness(), RATIO, "3.7.1.3");
            stability().write(w, grading);
            w.step(
                    "F_cE",
                    Numbers.plain(number(EULER)) + " * E_min' / λ^2",
                    critical(),
                    POUND_FORCE_PER_SQUARE_INCH,
                    "3.7.1.5");
            starred().writeReference(w, grading);
            starred().writeProduct(w, "F_c,star");
            w.step("α", "F_cE / F_c,star", critical() / starred().psi(), RATIO, "3.7.1.5");
            w.given("c", number(C), RATIO, "sawn lumber", p.source(C.name()));
            w.step(
                    "C_P",
                    "(1 + α) / (2 * c) - sqrt(((1 + α) / (2 * c))^2 - α / c)",
                    stabilityFactor(),
                    RATIO,
                    "(3.7-1)");
            w.step("F_c'", "F_c,star * C_P", allowed().psi(), POUND_FORCE_PER_SQUARE_INCH, "3.6.3");
            writeUtilisation(w, p);
            return w.steps();
        }

        private void writeUtilisation(Sheet w, Parameters p) {
            if (!isTooSlender()) {
                w.step("utilisation", "f_c / F_c'", utilisation(), RATIO, "3.6.3");
                return;
            }
            w.given(
                    "λ_max",
                    number(LARGEST_SLENDERNESS),
                    RATIO,
                    "largest slenderness of a column",
                    p.source(LARGEST_SLENDERNESS.name()));
            w.step("utilisation", "max(f_c / F_c', λ / λ_max)", utilisation(), RATIO, "3.7.1.4");
        }
    }
}
