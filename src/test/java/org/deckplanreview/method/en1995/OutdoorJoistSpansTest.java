package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Spans of outdoor joists in service class 3 that were computed independently of this project by the stated method; not a
 * published table. One simple span between the middles of bearings of 50 mm with flush ends, uniform load only,
 * 1.35 G + 1.5 Q with k_mod 0.65 and 1.35 G with k_mod 0.50, gamma_M 1.3, k_sys 1.1, k_h, k_cr 0.67, k_crit 1, k_def 2.0,
 * psi2 0.3 up to 2.5 kN/m2 and 0.6 above, shear deformation with a shear area of A/1.2. G includes the joist.
 */
class OutdoorJoistSpansTest {

    /** The computed spans are rounded down to this. */
    private static final double ROUNDING_MM = 10;

    @ParameterizedTest(name = "{0} {3}x{4} at {5}, {1} + {2} kN/m2")
    @CsvFileSource(resources = "outdoor-joist-spans.csv", numLinesToSkip = 1)
    void a_joist_complies_at_the_computed_span_and_fails_10_mm_beyond(
            String strengthClass,
            double permanent,
            double imposed,
            double breadth,
            double depth,
            double spacing,
            double comfortSpanM,
            String comfortGoverns,
            double nationalSpanM,
            String nationalGoverns) {
        Joist joist = new Joist(strengthClass, permanent, imposed, new Section(breadth, depth), spacing);

        assertLargestSpan(joist, COMFORT, comfortSpanM * 1000, comfortGoverns);
        assertLargestSpan(joist, NATIONAL, nationalSpanM * 1000, nationalGoverns);
    }

    private static void assertLargestSpan(Joist joist, Map<String, Check> checks, double spanMm, String governs) {
        checks.forEach((letter, check) -> assertThat(joist.utilisation(check, spanMm))
                .as(letter + " at the span")
                .isLessThanOrEqualTo(1));
        assertThat(joist.utilisation(checks.get(governs), spanMm + ROUNDING_MM))
                .as(governs + " beyond the span")
                .isGreaterThan(1);
    }

    private static final Map<String, Check> COMFORT = checks(true);
    private static final Map<String, Check> NATIONAL = checks(false);

    private record Check(Method method, StandardParameters parameters) {}

    private static Map<String, Check> checks(boolean comfort) {
        Map<String, Check> checks = new LinkedHashMap<>();
        StandardParameters common = StandardParameters.ofEurocodes();
        checks.put("B", new Check(new MemberBending(), common));
        checks.put("V", new Check(new MemberShear(), common));
        checks.put("C", new Check(new MemberBearing(), common));
        Method last = new MemberDeflection(DeflectionState.FINAL);
        if (comfort) {
            checks.put("I", new Check(new MemberDeflection(DeflectionState.INSTANTANEOUS), limits(300, 150)));
            checks.put("F", new Check(last, limits(250, 125)));
        } else {
            checks.put("U", new Check(last, limits(150, 75)));
        }
        return checks;
    }

    private static StandardParameters limits(double span, double cantilever) {
        return StandardParameters.ofEurocodes().with("spanRatio", span).with("cantileverRatio", cantilever);
    }

    private record Joist(
            String strengthClass, double permanentKNPerM2, double imposedKNPerM2, Section section, double spacingMm) {

        double utilisation(Check check, double spanMm) {
            StrengthClass c =
                    StrengthClass.find(check.parameters(), strengthClass).orElseThrow();
            double g = permanentKNPerM2 / 1000 * spacingMm;
            double q = imposedKNPerM2 / 1000 * spacingMm;
            Evaluation e = DeckPiece.joist()
                    .section(section.breadthMm(), section.depthMm())
                    .of(strengthClass)
                    .side(spacingMm, 10)
                    .category(imposedKNPerM2 <= 2.5 ? "A" : "C")
                    .span(spanMm, 50)
                    .under(a -> a.with(
                                    Action.PERMANENT, LinearAnalysis.uniform(g, spanMm, section, c.e0Mean(), c.gMean()))
                            .with(Action.IMPOSED, LinearAnalysis.uniform(q, spanMm, section, c.e0Mean(), c.gMean())))
                    .evaluate(check.method(), check.parameters());
            return ((Evaluation.Measured) e).utilisation();
        }
    }
}
