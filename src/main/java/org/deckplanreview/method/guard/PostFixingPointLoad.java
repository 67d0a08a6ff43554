package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
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
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** The upper fixing of a guard's post to the frame under one load at the guard's top: the couple that holds the moment, and the load. */
final class PostFixingPointLoad implements Method {

    private static final ParameterDescription LOAD = ParameterDescription.number(
                    "guardPostLoad", NEWTON_, "load at the top of a guard, in any direction")
            .higherIsStricter();

    private static final Formula MOMENT = Formula.of("M = F * h", NEWTON_MILLIMETRE, "");
    private static final Formula TENSION = Formula.of("T = M / a + F", NEWTON_, "");
    private static final Formula UTILISATION = Formula.of("utilisation = T / R", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.postFixingPointLoad",
            "equilibrium",
            "tension in the upper fixing of the guard's posts",
            KILONEWTON,
            List.of(SubjectKind.GUARDS),
            List.of(LOAD),
            "Tension in the upper fixing of a post under one load at the guard's top, without factors: the moment at the boards'"
                    + " upper face over the distance between upper and lower fixing, and the load itself; against the"
                    + " resistance that the submission states.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        GuardRun run = (GuardRun) subject;
        Pointer at = run.pointer().child("posts");
        Derived<GuardPosts> posts = Derived.of(
                run.guard().posts(), at, "the posts of " + run.label() + ": their timber, spacing and fixing");
        Derived<Double> arm = posts.flatMap(p -> mm(
                p.leverArm(),
                at.child("leverArm"),
                "the distance between the upper and the lower fixing of a post of " + run.label()
                        + " to the frame, a length"));
        Derived<Double> height = mm(
                run.guard().height(),
                run.pointer().child("height"),
                "the height of " + run.label() + " above the boards, a length");
        Derived<Measure> resistance = posts.flatMap(p -> Derived.of(
                p.fixingResistance(),
                at.child("fixingResistance"),
                "the allowable tension of one fixing of a post of " + run.label() + " to the frame, a force"));
        Derived<Evaluation> result = arm.with(height, (a, h) -> new double[] {a, h})
                .with(resistance, (lengths, r) -> measured(run, lengths[0], lengths[1], r, parameters));
        return result.isKnown() ? result.get() : new Evaluation.Missing(result.needs());
    }

    private static Derived<Double> mm(Optional<Length> given, Pointer pointer, String what) {
        return Derived.of(given, pointer, what).map(Length::mm);
    }

    private static Evaluation measured(
            GuardRun run, double armMm, double heightMm, Measure allowable, Parameters parameters) {
        Pointer posts = run.pointer().child("posts");
        Sheet sheet = Sheet.blank();
        parameters.enter(sheet, "F", LOAD);
        sheet.given(
                "h",
                heightMm,
                MILLIMETRE,
                "height of the guard",
                "",
                run.pointer().child("height"));
        sheet.given("a", armMm, MILLIMETRE, "between the upper and the lower fixing", "", posts.child("leverArm"));
        sheet.calculate(MOMENT);
        sheet.calculate(TENSION);
        sheet.given(
                "R",
                allowable.in(NEWTON_),
                NEWTON_,
                "allowable tension of one fixing",
                "",
                posts.child("fixingResistance"));
        sheet.calculate(UTILISATION);
        return Evaluation.Measured.on(
                sheet,
                sheet.measure("T").to(KILONEWTON),
                Sense.AT_MOST,
                sheet.measure("R").to(KILONEWTON),
                "",
                List.of(PostFixing.UPPER));
    }
}
