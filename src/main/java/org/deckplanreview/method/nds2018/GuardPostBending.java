package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_INCH;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
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

    private static final Formula MOMENT = Formula.of("M = P * h", POUND_FORCE_INCH, "");
    private static final Formula ADJUSTED =
            Formula.of("F_b' = F_b * C_D * C_M * C_t * C_F * C_i * C_fu", POUND_FORCE_PER_SQUARE_INCH, "4.3.1");

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
                (heightMm, adjustments) -> atRoot(run, timber, pointer, heightMm, adjustments));
    }

    private static Evaluation atRoot(
            GuardRun run, Timber timber, Pointer pointer, double heightMm, Adjustments adjustments) {
        Parameters parameters = adjustments.parameters();
        Section section = Section.of(timber, 1);
        Sheet stress = Sheet.blank();
        stress.given("b", section.breadthIn(), INCH, "breadth of a post", "", pointer.child("breadth"));
        stress.given("d", section.depthIn(), INCH, "depth of a post, along the load", "", pointer.child("depth"));
        parameters.enter(stress, "P", LOAD);
        stress.given(
                "h",
                MILLIMETRE.convert(heightMm, INCH),
                INCH,
                "height of the guard",
                "",
                run.pointer().child("height"));
        stress.calculate(MOMENT);
        stress.calculate(Section.MODULUS);
        stress.calculate(MemberBending.STRESS);
        AdjustedValue reference = adjustments.of(Property.BENDING);
        adjustments.enterFlatUse(reference.factors(), section);
        Sheet sheet = Sheet.on(stress, reference.under(Combination.duration(parameters, "guard", "load on a guard")));
        sheet.calculate(ADJUSTED);
        return SheetCase.of(
                        sheet,
                        MemberBending.UTILISATION,
                        "f_b",
                        Sense.AT_MOST,
                        "F_b'",
                        () -> "at the root of a post",
                        () -> assumptions(timber, adjustments))
                .measured();
    }

    private static List<String> assumptions(Timber timber, Adjustments adjustments) {
        List<String> assumptions = new ArrayList<>(adjustments.assumptions(timber));
        assumptions.add("One post carries the whole load at a guard's top, as at a corner or a joint of the rail.");
        assumptions.add("The root of a guard's post is at the boards' upper face, and the post is not notched there.");
        assumptions.add("The depth of the timber of guards lies along the horizontal load.");
        return List.copyOf(assumptions);
    }
}
