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
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Posts as solid columns under load along their axis, 3.6.3 and 3.7.1. */
final class PostColumn implements Method {
    private static final ParameterDescription C =
            ParameterDescription.number("columnC", RATIO, "constant of columns of sawn lumber");
    private static final ParameterDescription LARGEST_SLENDERNESS =
            ParameterDescription.number("columnLargestSlenderness", RATIO, "largest slenderness of a column");
    private static final ParameterDescription LENGTH_FACTOR =
            ParameterDescription.number("columnLengthFactor", RATIO, "buckling length coefficient");

    private static final Formula LOAD = Formula.of("P = max(0, P_b + P_w)", POUND_FORCE, "");
    private static final Formula STRESS = Formula.of("f_c = P / (b * h)", POUND_FORCE_PER_SQUARE_INCH, "3.6.3");
    private static final Formula LENGTH = Formula.of("l_e = K_e * l", INCH, "3.7.1.2");
    private static final Formula SIDE = Formula.of("d = min(b, h)", INCH, "3.7.1.3");
    private static final Formula SLENDERNESS = Formula.of("λ = l_e / d", RATIO, "3.7.1.3");
    private static final Formula CRITICAL =
            Formula.of("F_cE = 0.822 * E_min' / λ^2", POUND_FORCE_PER_SQUARE_INCH, "3.7.1.5");
    private static final Formula STARRED =
            Formula.of("F_c,star = F_c * C_D * C_M * C_t * C_F * C_i", POUND_FORCE_PER_SQUARE_INCH, "4.3.1");
    private static final Formula CRITICAL_RATIO = Formula.of("α = F_cE / F_c,star", RATIO, "3.7.1.5");

    /** C_P of alpha. */
    static final Formula STABILITY =
            Formula.of("C_P = (1 + α) / (2 * c) - sqrt(((1 + α) / (2 * c))^2 - α / c)", RATIO, "(3.7-1)");

    private static final Formula ADJUSTED = Formula.of("F_c' = F_c,star * C_P", POUND_FORCE_PER_SQUARE_INCH, "3.6.3");
    private static final Formula UTILISATION = Formula.of("utilisation = f_c / F_c'", RATIO, "3.6.3");
    private static final Formula UTILISATION_OF_SLENDER =
            Formula.of("utilisation = max(f_c / F_c', λ / λ_max)", RATIO, "3.7.1.4");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "nds2018.column",
            Nds2018.SOURCE,
            "use of the post's strength",
            RATIO,
            List.of(SubjectKind.POSTS),
            MemberBasis.parameters(List.of(C, LARGEST_SLENDERNESS, LENGTH_FACTOR)),
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
        Parameters parameters = adjustments.parameters();
        Sheet section = section(post, context);
        Sheet slenderness = slenderness(post, loads, adjustments, section);
        AdjustedValue reference = adjustments.of(Property.COMPRESSION);
        List<Case> cases = new ArrayList<>();
        for (Combination combination : Combination.of(parameters, loads.forces().snowN() != 0)) {
            Sheet stress = stress(post, loads, combination, section, parameters);
            Sheet starred = reference.under(combination.duration(parameters));
            starred.calculate(STARRED);
            cases.add(loaded(post, combination, adjustments, Sheet.on(stress, slenderness, starred)));
        }
        return Case.worst(cases);
    }

    private static Sheet section(PostPlace post, ReviewContext context) {
        Section section = Section.of(post.timber(), 1);
        Pointer timber = context.submission().timberPointer(post.timber().id());
        Sheet sheet = Sheet.blank();
        sheet.given("b", section.breadthIn(), INCH, "side along the beam", "", timber.child("breadth"));
        sheet.given("h", section.depthIn(), INCH, "side across the beam", "", timber.child("depth"));
        return sheet;
    }

    private static Sheet stress(
            PostPlace post, Loads loads, Combination combination, Sheet section, Parameters parameters) {
        String source = parameters.source(Combination.COMBINATIONS.name());
        Sheet sheet = Sheet.on(section);
        sheet.given(
                "P_b",
                NEWTON_.convert(loads.forces().largestN(combination.factors()), POUND_FORCE),
                POUND_FORCE,
                () -> "load from the beam, " + combination.id(),
                source,
                post.pointer());
        sheet.given(
                "P_w",
                NEWTON_.convert(combination.factors().permanent() * loads.weightN(), POUND_FORCE),
                POUND_FORCE,
                "weight of the post",
                source,
                post.pointer());
        sheet.calculate(LOAD);
        sheet.calculate(STRESS);
        return sheet;
    }

    /** In the direction of the smaller side: both ends are held alike in both. Goes on to F_cE. */
    private static Sheet slenderness(PostPlace post, Loads loads, Adjustments adjustments, Sheet section) {
        Sheet sheet = Sheet.on(section);
        sheet.given(
                "l", MILLIMETRE.convert(loads.heightMm(), INCH), INCH, "clear height of the post", "", post.pointer());
        adjustments.parameters().enter(sheet, "K_e", LENGTH_FACTOR);
        sheet.calculate(LENGTH);
        sheet.calculate(SIDE);
        sheet.calculate(SLENDERNESS);
        Sheet critical = Sheet.on(sheet, adjustments.stability());
        critical.calculate(CRITICAL);
        return critical;
    }

    private static Case loaded(PostPlace post, Combination combination, Adjustments adjustments, Sheet sheet) {
        Parameters parameters = adjustments.parameters();
        sheet.calculate(CRITICAL_RATIO);
        parameters.enter(sheet, "c", C);
        sheet.calculate(STABILITY);
        sheet.calculate(ADJUSTED);
        boolean tooSlender =
                !Sense.AT_MOST.holds(sheet.value("λ"), parameters.number(LARGEST_SLENDERNESS.name(), RATIO));
        if (tooSlender) {
            parameters.enter(sheet, "λ_max", LARGEST_SLENDERNESS);
        }
        return SheetCase.use(
                sheet,
                tooSlender ? UTILISATION_OF_SLENDER : UTILISATION,
                () -> tooSlender ? "too slender for a column" : "combination " + combination.id(),
                () -> assumptions(post, adjustments));
    }

    private static List<String> assumptions(PostPlace post, Adjustments adjustments) {
        double ke = adjustments.parameters().number(LENGTH_FACTOR.name(), RATIO);
        List<String> assumptions = new ArrayList<>(adjustments.assumptions(post.timber()));
        assumptions.add("Ledger or braces hold the upper ends of posts in their place, so that a post buckles over "
                + Numbers.plain(ke) + " times its clear height (NDS Appendix G).");
        assumptions.add("A post carries the whole of its own weight at its foot.");
        return List.copyOf(assumptions);
    }
}
