package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.submission.SampleDeck.line;
import static org.deckplanreview.submission.SampleDeck.point;
import static org.deckplanreview.submission.SampleDeck.points;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Spans of outdoor joists, computed independently of this project, through the whole review: rows of
 * {@code outdoor-joist-spans.csv}, whose method {@code OutdoorJoistSpansTest} states; not a published table.
 *
 * <p>What the method assumes and the deck provides: one simple span, here from a ledger to a beam under the joists' ends;
 * uniform load alone, by looking at the provisions of uniform load; service class 3, k_mod, gamma_M, k_h, k_cr, k_def and
 * shear deformation as the edition of England of 2024 sets them; k_sys 1.1, by more than four joists closer than 610 mm;
 * k_crit 1, by boards on the edge in compression; psi2 0.3 or 0.6 by the category that the occupancy brings; no snow. The
 * imposed load is that of a low deck, a high deck and a public deck. The permanent load of the method includes the joist:
 * finishes make up what boards and joists leave of it. What differs: a bearing is 47 mm long at the beam, not 50 mm, which
 * matters to no row because bearing governs none.
 */
class OutdoorJoistsReviewedTest {

    private static final double STEP_MM = 10;
    /** EN 338:2016, Table 1. */
    private static final Map<String, Integer> MEAN_DENSITY = Map.of("C16", 370, "C24", 420);

    private static final double GRAVITY = 9.80665;
    private static final int BAYS_ACROSS = 5;
    private static final List<String> NATIONAL =
            List.of("joist.bending", "joist.shear", "joist.bearing", "joist.deflection-final");
    private static final Map<String, String> GOVERNING = Map.of(
            "B", "joist.bending",
            "U", "joist.deflection-final",
            "F", "joist.deflection-final-comfort");

    @ParameterizedTest(name = "{0} {4}x{5} at {6}, {1} + {2} kN/m2")
    @CsvSource({
        "C16, 0.25, 2.0, low,    47, 147, 450, 2.53, F, 2.82, B",
        "C24, 0.5,  2.0, low,    47, 122, 400, 2.30, F, 2.74, U",
        "C16, 0.25, 2.5, high,   47, 220, 600, 3.22, F, 3.29, B",
        "C24, 0.5,  2.5, high,   47, 170, 400, 3.04, F, 3.62, U",
        "C16, 0.5,  5.0, public, 47, 195, 600, 2.02, F, 2.06, B",
        "C24, 0.25, 5.0, public, 47,  97, 450, 1.28, F, 1.53, U"
    })
    void a_joist_complies_at_the_computed_span_and_fails_10_mm_beyond(
            String strengthClass,
            double permanent,
            double imposed,
            String use,
            int breadth,
            int depth,
            int spacing,
            double comfortSpanM,
            String comfortGoverns,
            double nationalSpanM,
            String nationalGoverns) {
        Joists joists = new Joists(strengthClass, permanent, use, breadth, depth, spacing);

        assertThat(joists.assumptions(nationalSpanM * 1000))
                .anyMatch(a -> a.contains("Imposed load on") && a.contains(": " + plain(imposed) + " kN/m²"));
        for (String provision : NATIONAL) {
            assertThat(joists.utilisation(provision, nationalSpanM * 1000))
                    .as(provision)
                    .isLessThanOrEqualTo(1);
        }
        assertThat(joists.utilisation(GOVERNING.get(nationalGoverns), nationalSpanM * 1000 + STEP_MM))
                .isGreaterThan(1);
        assertThat(joists.utilisation(GOVERNING.get(comfortGoverns), comfortSpanM * 1000))
                .isLessThanOrEqualTo(1);
        assertThat(joists.utilisation(GOVERNING.get(comfortGoverns), comfortSpanM * 1000 + STEP_MM))
                .isGreaterThan(1);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private record Joists(
            String strengthClass, double permanentKNPerM2, String use, int breadth, int depth, int spacing) {

        double utilisation(String provision, double spanMm) {
            return BuiltIn.assess(deck(spanMm).submission()).findings().stream()
                    .filter(f -> f.provision().id().equals(provision))
                    .map(Finding::utilisation)
                    .mapToDouble(u -> u.orElseThrow())
                    .max()
                    .orElseThrow();
        }

        List<String> assumptions(double spanMm) {
            return BuiltIn.assess(deck(spanMm).submission()).assumptions();
        }

        private SampleDeck deck(double spanMm) {
            double width = BAYS_ACROSS * spacing + breadth;
            // The ledger is of the joists' timber, and they end at its face.
            double wallMm = spanMm + breadth;
            SampleDeck deck = SampleDeck.complete()
                    .with("/use/occupancy", use.equals("public") ? "public" : "single-dwelling")
                    .without("/site/snowLoad")
                    .with("/platforms/0/level/z", use.equals("low") ? 500 : 900)
                    .withJson("/platforms/0/fall", "{\"gradient\": \"level\"}")
                    .with("/platforms/0/finishes", finishes() + " kN/m2")
                    // Guards would load the outermost joists, which the spans do not know.
                    .without("/platforms/0/edges/0/guard")
                    .without("/platforms/0/edges/1/guard")
                    .without("/platforms/0/edges/3/guard")
                    .with("/timbers/0/breadth", breadth)
                    .with("/timbers/0/depth", depth)
                    .with("/timbers/0/strengthClass", strengthClass)
                    .withJson("/timbers/3", thinBoard())
                    .with("/platforms/0/joists/spacing", spacing)
                    .with("/platforms/0/outline", points(0, 0, width, 0, width, wallMm, 0, wallMm))
                    .with("/platforms/0/beams/0/line", line(0, 0, width, 0))
                    .with("/platforms/0/ledger/line", line(0, wallMm, width, wallMm))
                    .with("/platforms/0/ledger/bearingLength", 50)
                    .with("/site/walls/0/line", line(-1000, wallMm, width + 1000, wallMm))
                    .with("/platforms/0/edges/0/line", line(0, 0, width, 0))
                    .with("/platforms/0/edges/1/line", line(width, 0, width, wallMm))
                    .with("/platforms/0/edges/2/line", line(width, wallMm, 0, wallMm))
                    .with("/platforms/0/edges/3/line", line(0, wallMm, 0, 0));
            for (int post = 0; post < 3; post++) {
                deck.with("/platforms/0/posts/" + post + "/at", point(100 + post * (width - 200) / 2, 0));
            }
            return deck;
        }

        /** Light enough for the smallest permanent load: 145 x 20 with gaps of 6 mm. */
        private static String thinBoard() {
            return "{\"id\": \"BD\", \"breadth\": 145, \"depth\": 20, \"strengthClass\": \"C16\"}";
        }

        private String finishes() {
            double boards = MEAN_DENSITY.get("C16") * GRAVITY * 0.020 * 145 / 151;
            double joist = MEAN_DENSITY.get(strengthClass) * GRAVITY * breadth * depth * 1e-6 / (spacing * 1e-3);
            return BigDecimal.valueOf(permanentKNPerM2 - (boards + joist) / 1000)
                    .setScale(4, RoundingMode.HALF_EVEN)
                    .toPlainString();
        }
    }
}
