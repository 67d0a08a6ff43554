package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.PartialFactors;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.Parameters;

/** What every check of a guard starts from: its loads, and the members that the submission must give. */
record GuardBasis(GuardRun run, GuardLoads loads, Parameters parameters, ReviewContext context) {

    static final List<SubjectKind> SUBJECTS = List.of(SubjectKind.GUARDS);
    static final String ALONG_LOAD = "The depth of the timber of guards lies along the horizontal load.";
    static final String SEPARATE =
            "The line load, the load on the infill's area and the load on one place of it act one at" + " a time.";

    private static final Formula LOAD_HEIGHT = Formula.of("h = min(H, h_max)", MILLIMETRE, "");

    static Evaluation evaluate(
            Subject subject, Parameters parameters, ReviewContext context, Function<GuardBasis, Evaluation> check) {
        var occupancy = context.submission().use().occupancy();
        return GuardLoads.find(parameters, occupancy)
                .map(loads -> check.apply(new GuardBasis((GuardRun) subject, loads, parameters, context)))
                .orElseGet(() -> new Evaluation.OutOfScope(
                        "The table has no loads on guards for the occupancy " + occupancy.word(),
                        parameters.source(GuardLoads.TABLE.name())));
    }

    private Pointer posts() {
        return run.pointer().child("posts");
    }

    Pointer postsMember(String name) {
        return posts().child(name);
    }

    Derived<GuardPosts> guardPosts() {
        return Derived.of(
                run.guard().posts(), posts(), "the posts of " + run.label() + ": their timber, spacing and fixing");
    }

    /** mm. */
    Derived<Double> height() {
        return Derived.of(
                        run.guard().height(),
                        run.pointer().child("height"),
                        "the height of " + run.label() + " above the boards, a length")
                .map(Length::mm);
    }

    Derived<String> rail() {
        return Derived.of(
                run.guard().rail(), run.pointer().child("rail"), "the timber of the top rail of " + run.label());
    }

    double postDepthMm(GuardPosts posts) {
        return timber(posts.timber()).depth().mm();
    }

    private Timber timber(String id) {
        return context.submission().timber(id);
    }

    Optional<Evaluation> outOfScope(Derived<String> id) {
        return id.optional().flatMap(i -> SingleTimber.outOfScope(timber(i), parameters));
    }

    Derived<SingleTimber> single(Derived<String> id) {
        return id.flatMap(i -> SingleTimber.of(timber(i), context.submission().timberPointer(i), parameters));
    }

    void enterFactor(Sheet sheet) {
        sheet.given(
                "γ_Q",
                PartialFactors.of(parameters).imposed(),
                RATIO,
                "partial factor of the load on a guard",
                parameters.source(PartialFactors.PARAMETER.name()));
    }

    void enterLineLoad(Sheet sheet) {
        sheet.given(
                "q_k",
                loads.lineNPerMm(),
                NEWTON_PER_MILLIMETRE,
                "horizontal line load on the guard",
                parameters.source(GuardLoads.TABLE.name()),
                Pointer.of("/use/occupancy"));
    }

    void enterSpacing(Sheet sheet, GuardPosts posts) {
        sheet.given("s", posts.spacing().mm(), MILLIMETRE, "spacing of the posts", "", postsMember("spacing"));
    }

    /** What a load on a post starts from: q_k, γ_Q, s, and h, at which it acts. */
    Sheet loadOnPost(GuardPosts posts, double guardHeightMm) {
        Sheet sheet = Sheet.blank();
        enterLineLoad(sheet);
        enterFactor(sheet);
        enterSpacing(sheet, posts);
        calculateLoadHeight(sheet, guardHeightMm);
        return sheet;
    }

    /** Calculates h, where the line load acts above the boards. */
    void calculateLoadHeight(Sheet sheet, double guardHeightMm) {
        sheet.given(
                "H",
                guardHeightMm,
                MILLIMETRE,
                "height of the guard",
                "",
                run.pointer().child("height"));
        parameters.enter(sheet, "h_max", GuardLoads.LARGEST_HEIGHT);
        sheet.calculate(LOAD_HEIGHT);
    }
}
