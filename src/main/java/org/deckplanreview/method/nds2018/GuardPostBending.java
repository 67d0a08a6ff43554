package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_INCH;
import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_INCH;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.nds2018.AdjustedValue.Factor;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Bending of a guard's post at its root under one load at its top, 3.3.1 and 3.3.2 (3.3-1). */
final class GuardPostBending implements Method {
    private static final ParameterDescription LOAD =
            ParameterDescription.number("guardPostLoad", POUND_FORCE, "load at the top of a guard, in any direction");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "nds2018.guardPost",
            Nds2018.SOURCE,
            "bending stress of the guard's posts",
            POUND_FORCE_PER_SQUARE_INCH,
            List.of(SubjectKind.GUARDS),
            parameters(),
            "Bending stress of a post at the boards' upper face under the whole load at the guard's top, f_b = M/S (3.3-1),"
                    + " against F_b' = F_b C_D C_M C_t C_F C_fu C_i (Table 4.3.1). Notched posts are out of scope.");

    private static List<ParameterDescription> parameters() {
        List<ParameterDescription> all = new ArrayList<>(Adjustments.PARAMETERS);
        all.add(Adjustments.FLAT_USE);
        all.add(Combination.DURATION_FACTORS);
        all.add(LOAD);
        return List.copyOf(all);
    }

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        GuardRun run = (GuardRun) subject;
        if (run.guard().postsNotched().orElse(false)) {
            return new Evaluation.OutOfScope("The posts are notched where they bend most", "4.4.3");
        }
        Derived<GuardPosts> posts = Derived.of(
                run.guard().posts(),
                run.pointer().child("posts"),
                "the posts of " + run.label() + ": their timber, spacing and fixing");
        Derived<Double> height = Derived.of(
                        run.guard().height(),
                        run.pointer().child("height"),
                        "the height of " + run.label() + " above the boards, a length")
                .map(Length::mm);
        if (!posts.isKnown()) {
            return new Evaluation.Missing(posts.with(height, (p, h) -> h).needs());
        }
        Timber timber = context.submission().timber(posts.get().timber());
        Pointer pointer = context.submission().timberPointer(timber.id());
        return Graded.gather(
                timber,
                pointer,
                height,
                parameters,
                (heightMm, adjustments) -> new Root(run, timber, pointer, heightMm, adjustments).measured());
    }

    /** A post at its root. */
    private record Root(GuardRun run, Timber timber, Pointer pointer, double heightMm, Adjustments adjustments) {

        private double loadLbf() {
            return adjustments.parameters().number(LOAD.name(), POUND_FORCE);
        }

        private double heightIn() {
            return MILLIMETRE.convert(heightMm, INCH);
        }

        private Section section() {
            return Section.of(timber, 1);
        }

        private double moment() {
            return loadLbf() * heightIn();
        }

        private double stress() {
            return moment() / section().modulusIn3();
        }

        private AdjustedValue allowed() {
            double cd = Combination.durationFactor(adjustments.parameters(), "guard");
            Factor flat = adjustments.flatUse(section());
            return adjustments.of(Property.BENDING, cd, "load on a guard").times(flat);
        }

        Evaluation measured() {
            double utilisation = stress() / allowed().psi();
            List<String> assumptions = new ArrayList<>(adjustments.assumptions(timber));
            assumptions.add("One post carries the whole load at a guard's top, as at a corner or a joint of the rail.");
            assumptions.add(
                    "The root of a guard's post is at the boards' upper face, and the post is not notched there.");
            assumptions.add("The depth of the timber of guards lies along the horizontal load.");
            Sheet w = Sheet.blank();
            w.given("b", section().breadthIn(), INCH, "breadth of a post", "", pointer.child("breadth"));
            w.given("d", section().depthIn(), INCH, "depth of a post, along the load", "", pointer.child("depth"));
            w.given(
                    "P",
                    loadLbf(),
                    POUND_FORCE,
                    "load at the guard's top",
                    adjustments.parameters().source(LOAD.name()));
            w.given(
                    "h",
                    heightIn(),
                    INCH,
                    "height of the guard",
                    "",
                    run.pointer().child("height"));
            w.step("M", "P * h", moment(), POUND_FORCE_INCH, "");
            w.step("S", "b * d^2 / 6", section().modulusIn3(), CUBIC_INCH, "3.3.2");
            w.step("f_b", "M / S", stress(), POUND_FORCE_PER_SQUARE_INCH, "(3.3-1)");
            allowed().write(w, pointer.child("species"), pointer.child("grade"));
            w.step("utilisation", "f_b / F_b'", utilisation, RATIO, "3.3.1");
            return new Evaluation.Measured(
                    Measure.of(stress(), POUND_FORCE_PER_SQUARE_INCH),
                    Sense.AT_MOST,
                    Measure.of(allowed().psi(), POUND_FORCE_PER_SQUARE_INCH),
                    utilisation,
                    "at the root of a post",
                    w.steps(),
                    List.copyOf(assumptions));
        }
    }
}
