package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.submission.NotchSide;

/** More load, a longer span or a lower grade never makes a simple joist better by any check. */
class MonotonyTest {

    /** Softwood grades of EN 338 in rising order of every strength and stiffness. */
    private static final List<String> GRADES = List.of("C14", "C16", "C18", "C24", "C27", "C30");

    private static final List<Method> METHODS = List.of(
            new MemberBending(),
            new MemberShear(),
            new MemberNotch(),
            new MemberBearing(),
            new MemberDeflection(DeflectionState.INSTANTANEOUS),
            new MemberDeflection(DeflectionState.FINAL));

    private static final StandardParameters PARAMETERS =
            StandardParameters.ofEurocodes().with("spanRatio", 250).with("cantileverRatio", 125);
    private static final StandardParameters UNHELD = StandardParameters.ofEurocodes()
            .with("spanRatio", 250)
            .with("cantileverRatio", 125)
            .with("sideRestraint", "none");

    private record Joist(String grade, double depthMm, double spanMm, double g, double q) {
        double utilisation(Method method, StandardParameters parameters) {
            StrengthClass c = StrengthClass.find(parameters, grade).orElseThrow();
            Section section = new Section(47, depthMm);
            Evaluation e = DeckPiece.joist()
                    .of(grade)
                    .section(47, depthMm)
                    .span(spanMm, 50)
                    .notched(20, 40, 0, NotchSide.SUPPORT)
                    .under(a -> a.with(
                                    Action.PERMANENT, LinearAnalysis.uniform(g, spanMm, section, c.e0Mean(), c.gMean()))
                            .with(Action.IMPOSED, LinearAnalysis.uniform(q, spanMm, section, c.e0Mean(), c.gMean())))
                    .evaluate(method, parameters);
            return ((Evaluation.Measured) e).utilisation();
        }
    }

    private static void assertNoBetter(Joist worse, Joist better) {
        for (Method method : METHODS) {
            for (StandardParameters parameters : List.of(PARAMETERS, UNHELD)) {
                double u = better.utilisation(method, parameters);
                assertThat(worse.utilisation(method, parameters))
                        .as(method.description().name())
                        .isGreaterThanOrEqualTo(u * (1 - 1e-12));
            }
        }
    }

    @Property(tries = 100)
    void more_load_is_never_better(
            @ForAll @IntRange(max = 5) int grade,
            @ForAll @DoubleRange(min = 75, max = 300) double depth,
            @ForAll @DoubleRange(min = 500, max = 6000) double span,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double g,
            @ForAll @DoubleRange(min = 0.1, max = 3) double q,
            @ForAll @DoubleRange(min = 0, max = 2) double more) {
        Joist joist = new Joist(GRADES.get(grade), depth, span, g, q);
        assertNoBetter(new Joist(joist.grade(), depth, span, g, q + more), joist);
        assertNoBetter(new Joist(joist.grade(), depth, span, g + more, q), joist);
    }

    /** From 800 mm on: bearings nearer to each other than two depths have a lower k_c,90. */
    @Property(tries = 100)
    void a_longer_span_is_never_better(
            @ForAll @IntRange(max = 5) int grade,
            @ForAll @DoubleRange(min = 75, max = 300) double depth,
            @ForAll @DoubleRange(min = 800, max = 6000) double span,
            @ForAll @DoubleRange(min = 0.1, max = 3) double q,
            @ForAll @DoubleRange(min = 0, max = 2000) double longer) {
        assertNoBetter(
                new Joist(GRADES.get(grade), depth, span + longer, 0.2, q),
                new Joist(GRADES.get(grade), depth, span, 0.2, q));
    }

    @Property(tries = 100)
    void a_lower_grade_is_never_better(
            @ForAll @IntRange(min = 1, max = 5) int grade,
            @ForAll @DoubleRange(min = 75, max = 300) double depth,
            @ForAll @DoubleRange(min = 500, max = 6000) double span,
            @ForAll @DoubleRange(min = 0.1, max = 3) double q) {
        assertNoBetter(
                new Joist(GRADES.get(grade - 1), depth, span, 0.2, q),
                new Joist(GRADES.get(grade), depth, span, 0.2, q));
    }
}
