package org.deckplanreview.method.foundation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.measure.MeasureUnit.METRE_;

import java.util.LinkedHashMap;
import java.util.Map;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.GivenParameters;
import org.deckplanreview.method.Method;
import org.deckplanreview.quantity.PaperDeck;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Footings of {@link PaperDeck}: 500 mm square, 900 mm deep, firm clay of low volume change, frost depth 450 mm. Depths are
 * those of Approved Document A, 2E4 (from memory); bearing values those of BS 8004:1986, Table 1 (secondary page); embedment is
 * common practice (from memory).
 */
class FoundationTest {

    private static final String FOOTING = "/platforms/0/footings/0";

    @ParameterizedTest
    @CsvSource({
        "450, 0, 1.0",
        "451, 0, 0.99778",
        "449, 0, 1.00223",
        "600, 600, 1.0",
        "599, 600, 1.00167",
        "900, 300, 0.5"
    })
    void a_footing_goes_as_deep_as_frost(double depth, double frost, double utilisation) {
        PaperDeck deck = new PaperDeck().with(FOOTING + "/depth", depth).with("/site/frostDepth", frost);
        Evaluation.Measured m = measured(evaluate("foundation.frostDepth", SubjectKind.FOOTINGS, deck));
        assertThat(m.found()).isEqualTo(Measure.mm(depth));
        assertThat(m.allowed()).isEqualTo(Measure.mm(Math.max(450, frost)));
        assertThat(m.utilisation()).isCloseTo(utilisation, within(1e-5));
    }

    @Test
    void without_a_local_frost_depth_the_least_one_counts_and_is_said_to() {
        PaperDeck deck = new PaperDeck().without("/site/frostDepth");
        Evaluation.Measured m = measured(evaluate("foundation.frostDepth", SubjectKind.FOOTINGS, deck));
        assertThat(m.allowed()).isEqualTo(Measure.mm(450));
        assertThat(m.assumptions()).containsExactly("No local frost depth is stated; the least depth alone counts.");
    }

    @Test
    void frost_needs_the_depth_of_the_footing() {
        PaperDeck deck = new PaperDeck().without(FOOTING + "/depth");
        assertMissing(evaluate("foundation.frostDepth", SubjectKind.FOOTINGS, deck), FOOTING + "/depth");
        assertMissing(evaluate("foundation.clayDepth", SubjectKind.FOOTINGS, deck), FOOTING + "/depth");
    }

    @ParameterizedTest
    @CsvSource({"low, 750", "medium, 900", "high, 1000"})
    void clay_asks_for_more_depth_the_more_it_moves(String volumeChange, double least) {
        PaperDeck atLimit = clay(volumeChange).with(FOOTING + "/depth", least);
        assertThat(measured(evaluate("foundation.clayDepth", SubjectKind.FOOTINGS, atLimit))
                        .utilisation())
                .isEqualTo(1);
        PaperDeck shallow = clay(volumeChange).with(FOOTING + "/depth", least - 1);
        assertThat(measured(evaluate("foundation.clayDepth", SubjectKind.FOOTINGS, shallow))
                        .utilisation())
                .isGreaterThan(1);
        PaperDeck deep = clay(volumeChange).with(FOOTING + "/depth", least + 1);
        assertThat(measured(evaluate("foundation.clayDepth", SubjectKind.FOOTINGS, deep))
                        .utilisation())
                .isLessThan(1);
    }

    @Test
    void soil_that_does_not_shrink_asks_for_no_depth() {
        assertThat(evaluate("foundation.clayDepth", SubjectKind.FOOTINGS, clay("none")))
                .isEqualTo(new Evaluation.NotApplicable("the soil does not shrink"));
    }

    @Test
    void near_trees_clay_depths_are_out_of_scope_unless_they_already_fail() {
        PaperDeck deep = clay("medium").with("/site/soil/treesNearby", true);
        assertThat(evaluate("foundation.clayDepth", SubjectKind.FOOTINGS, deep))
                .isInstanceOf(Evaluation.OutOfScope.class);
        PaperDeck shallow = clay("high").with("/site/soil/treesNearby", true);
        assertThat(measured(evaluate("foundation.clayDepth", SubjectKind.FOOTINGS, shallow))
                        .utilisation())
                .isGreaterThan(1);
    }

    @Test
    void clay_depths_need_the_volume_change_and_the_trees() {
        assertMissing(
                evaluate(
                        "foundation.clayDepth",
                        SubjectKind.FOOTINGS,
                        new PaperDeck().without("/site/soil/volumeChange")),
                "/site/soil/volumeChange");
        assertMissing(
                evaluate(
                        "foundation.clayDepth",
                        SubjectKind.FOOTINGS,
                        new PaperDeck().without("/site/soil/treesNearby")),
                "/site/soil/treesNearby");
    }

    @ParameterizedTest
    @CsvSource({
        "600, 1200, 600, 1.0", // a quarter of 1800 is 450, less than 600
        "599, 1200, 600, 1.00167",
        "700, 2100, 700, 1.0", // a quarter of 2800 is 700
        "700, 2104, 701, 1.00143",
        "800, 1600, 600, 0.75"
    })
    void a_post_stands_600_mm_and_a_quarter_of_its_length_in_the_ground(
            double embedment, double above, double allowed, double utilisation) {
        PaperDeck deck = embedded(embedment).postLevels(-embedment, above);
        Evaluation.Measured m = measured(evaluate("foundation.embedment", SubjectKind.POSTS, deck));
        assertThat(m.allowed()).isEqualTo(Measure.mm(allowed));
        assertThat(m.utilisation()).isCloseTo(utilisation, within(1e-5));
    }

    @Test
    void a_post_on_a_pad_is_not_embedded() {
        assertThat(evaluate("foundation.embedment", SubjectKind.POSTS, new PaperDeck()))
                .isEqualTo(new Evaluation.NotApplicable("the post stands on a pad"));
    }

    @Test
    void a_post_that_is_too_shallow_fails_before_its_length_is_known() {
        assertThat(measured(evaluate(
                                "foundation.embedment",
                                SubjectKind.POSTS,
                                embedded(599).unsurveyed()))
                        .utilisation())
                .isGreaterThan(1);
    }

    @Test
    void embedment_needs_footing_depth_and_levels() {
        assertMissing(
                evaluate(
                        "foundation.embedment",
                        SubjectKind.POSTS,
                        new PaperDeck().without("/platforms/0/posts/0/footing")),
                "/platforms/0/posts/0/footing");
        assertMissing(
                evaluate(
                        "foundation.embedment",
                        SubjectKind.POSTS,
                        new PaperDeck().with(FOOTING + "/kind", "embedded-post")),
                FOOTING + "/embedment");
        assertMissing(
                evaluate(
                        "foundation.embedment", SubjectKind.POSTS, embedded(700).unsurveyed()),
                "/site/groundLevels");
    }

    @Test
    void a_post_that_is_not_in_the_ground_at_all_has_a_finite_utilisation() {
        assertThat(measured(evaluate("foundation.embedment", SubjectKind.POSTS, embedded(0)))
                        .utilisation())
                .isEqualTo(600);
    }

    /**
     * By hand, net (BS 8004:1986, 1.2): concrete 0.25 m2 x 0.25 m deep in the ground stands in place of 1 kN of soil of 16
     * kN/m3, so (12 + 20 + 4 + 1 - 1) kN over 0.5 m x 0.5 m = 144 kN/m2.
     */
    @Test
    void pressure_is_what_the_footing_adds_to_the_ground() {
        assertThat(pressureAgainst("144 kN/m2").utilisation()).isCloseTo(1, within(1e-12));
        assertThat(pressureAgainst("145 kN/m2").utilisation()).isLessThan(1);
        assertThat(pressureAgainst("143 kN/m2").utilisation()).isGreaterThan(1);
        Evaluation.Measured m = pressureAgainst("144 kN/m2");
        assertThat(in(m.found())).isCloseTo(144, within(1e-9));
        assertThat(m.working().stream().filter(s -> s.symbol().equals("N_net")))
                .singleElement()
                .extracting(s -> s.substituted().orElseThrow().text())
                .isEqualTo("36 + 1 - 16 * 0.0625");
    }

    private static Evaluation.Measured pressureAgainst(String resistance) {
        PaperDeck deck = new PaperDeck().with("/site/soil/bearingResistance", resistance);
        return measured(evaluate("foundation.pressure", SubjectKind.FOOTINGS, deck));
    }

    /** Without it nothing is taken off: 37 kN over 0.25 m2 = 148 kN/m2. */
    @Test
    void the_top_above_the_ground_is_asked_for_only_where_it_decides() {
        PaperDeck enough =
                new PaperDeck().without(FOOTING + "/topAboveGround").with("/site/soil/bearingResistance", "148 kN/m2");
        assertThat(measured(evaluate("foundation.pressure", SubjectKind.FOOTINGS, enough))
                        .utilisation())
                .isCloseTo(1, within(1e-12));
        PaperDeck open =
                new PaperDeck().without(FOOTING + "/topAboveGround").with("/site/soil/bearingResistance", "147 kN/m2");
        assertMissing(evaluate("foundation.pressure", SubjectKind.FOOTINGS, open), FOOTING + "/topAboveGround");
    }

    /**
     * EN 1997-1, annex D.3: 37 kN of which 36 kN stand 50 mm off: e = 36 * 50 / 37 = 48.6486 mm, A' = 0.5 * (0.5 - 2 e) =
     * 0.201351 m2; 36 kN over it = 178.792 kN/m2.
     */
    @Test
    void a_load_off_the_middle_bears_on_the_area_around_it() {
        PaperDeck deck = off(50).with("/site/soil/bearingResistance", "178.8 kN/m2");
        Evaluation.Measured m = measured(evaluate("foundation.pressure", SubjectKind.FOOTINGS, deck));
        assertThat(in(m.found())).isCloseTo(178.792, within(1e-3));
        assertThat(m.utilisation()).isLessThan(1);
    }

    /** EN 1997-1, 6.5.4(1), by 0.3 of the side: 0.3 * 500 * 37 / 36 = 154.2 mm. */
    @Test
    void a_load_near_the_edge_of_its_footing_is_out_of_scope() {
        assertThat(evaluate("foundation.pressure", SubjectKind.FOOTINGS, off(154)))
                .isInstanceOf(Evaluation.Measured.class);
        assertThat(evaluate("foundation.pressure", SubjectKind.FOOTINGS, off(155)))
                .isInstanceOf(Evaluation.OutOfScope.class);
    }

    /** Two segments of the circle about the resultant: with e = r / 2 0.391 of it, 2/3 - sqrt(3) / (2 pi). */
    @Test
    void a_round_footing_keeps_two_segments() {
        assertThat(leftOfCircleOf2M(0)).isCloseTo(Math.PI, within(1e-12));
        assertThat(leftOfCircleOf2M(0.5) / Math.PI).isCloseTo(2.0 / 3 - Math.sqrt(3) / (2 * Math.PI), within(1e-12));
        assertThat(leftOfCircleOf2M(1)).isZero();
    }

    private static double leftOfCircleOf2M(double eccentricityM) {
        Sheet sheet = Sheet.blank();
        sheet.given("B", 2, METRE_, "", "");
        sheet.given("e", eccentricityM, METRE_, "", "");
        return sheet.calculate(Eccentricity.LEFT_OF_CIRCLE);
    }

    private static PaperDeck off(double mm) {
        PaperDeck deck = new PaperDeck();
        PlanPoint post = ((FootingPlace) deck.subject(SubjectKind.FOOTINGS))
                .posts().stream()
                        .flatMap(id -> deck.context().submission().platforms().get(0).posts().stream()
                                .filter(p -> p.id().equals(id)))
                        .findFirst()
                        .orElseThrow()
                        .at();
        return deck.withJson(FOOTING + "/at", "[%s, %s]".formatted(post.xMm() + mm, post.yMm()));
    }

    @Test
    void the_concentrated_load_counts_where_it_is_the_larger() {
        PaperDeck deck = new PaperDeck().footingForces(12_000, 2_000, 3_000, 0);
        Evaluation.Measured m = measured(evaluate("foundation.pressure", SubjectKind.FOOTINGS, deck));
        assertThat(in(m.found())).as("(12 + 3 + 1 - 1) kN / 0.25 m2").isCloseTo(60, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"stiff-clay, 150, true", "firm-clay, 75, false", "medium-dense-sand, 100, false", "hard-clay, 300, true"
    })
    void without_an_investigation_the_low_presumed_value_counts(String soilClass, double allowed, boolean enough) {
        Evaluation.Measured m = measured(evaluate("foundation.pressure", SubjectKind.FOOTINGS, soil(soilClass)));
        assertThat(in(m.allowed())).isEqualTo(allowed);
        assertThat(m.utilisation() <= 1).isEqualTo(enough);
        assertThat(m.assumptions()).anySatisfy(a -> assertThat(a).contains("preliminary use"));
    }

    @ParameterizedTest
    @CsvSource({"made-ground", "soft-clay", "loose-sand", "loose-gravel"})
    void weak_ground_has_no_presumed_value(String soilClass) {
        assertThat(evaluate("foundation.pressure", SubjectKind.FOOTINGS, soil(soilClass)))
                .isInstanceOfSatisfying(
                        Evaluation.OutOfScope.class, o -> assertThat(o.reason()).contains(soilClass));
    }

    @Test
    void an_investigation_goes_before_the_soil_class() {
        PaperDeck deck = soil("made-ground").with("/site/soil/bearingResistance", "200 kN/m2");
        assertThat(measured(evaluate("foundation.pressure", SubjectKind.FOOTINGS, deck))
                        .utilisation())
                .isCloseTo(0.72, within(1e-9));
    }

    @Test
    void ground_that_carries_nothing_is_out_of_scope() {
        PaperDeck deck = new PaperDeck().with("/site/soil/bearingResistance", "0 kN/m2");
        assertThat(evaluate("foundation.pressure", SubjectKind.FOOTINGS, deck))
                .isInstanceOf(Evaluation.OutOfScope.class);
    }

    @Test
    void pressure_needs_soil_and_loads() {
        assertMissing(
                evaluate("foundation.pressure", SubjectKind.FOOTINGS, new PaperDeck().without("/site/soil")),
                "/site/soil/soilClass");
        assertMissing(
                evaluate("foundation.pressure", SubjectKind.FOOTINGS, new PaperDeck().loadsMissing()),
                "/platforms/0/joists");
    }

    private static PaperDeck clay(String volumeChange) {
        return new PaperDeck().with("/site/soil/volumeChange", volumeChange);
    }

    private static PaperDeck soil(String soilClass) {
        return new PaperDeck().without("/site/soil/bearingResistance").with("/site/soil/soilClass", soilClass);
    }

    private static PaperDeck embedded(double mm) {
        return new PaperDeck().with(FOOTING + "/kind", "embedded-post").with(FOOTING + "/embedment", mm);
    }

    private static double in(Value value) {
        return ((Measure) value).in(MeasureUnit.KILONEWTON_PER_SQUARE_METRE);
    }

    private static Evaluation evaluate(String name, SubjectKind kind, PaperDeck deck) {
        Method method = Foundation.methods().stream()
                .filter(m -> m.description().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No method " + name));
        return method.evaluate(deck.subject(kind), parameters(), deck.context());
    }

    private static GivenParameters parameters() {
        Map<String, Value> depths = new LinkedHashMap<>();
        depths.put("low", Measure.mm(750));
        depths.put("medium", Measure.mm(900));
        depths.put("high", Measure.mm(1000));
        Map<String, Value> bearing = new LinkedHashMap<>();
        bearing.put("medium-dense-sand", Measure.of(100, MeasureUnit.KILONEWTON_PER_SQUARE_METRE));
        bearing.put("hard-clay", Measure.of(300, MeasureUnit.KILONEWTON_PER_SQUARE_METRE));
        bearing.put("stiff-clay", Measure.of(150, MeasureUnit.KILONEWTON_PER_SQUARE_METRE));
        bearing.put("firm-clay", Measure.of(75, MeasureUnit.KILONEWTON_PER_SQUARE_METRE));
        return new GivenParameters()
                .with("leastFrostDepth", "450 mm")
                .with("leastEmbedment", "600 mm")
                .with("embeddedPart", "0.25")
                .table("clayDepth", "volumeChange", "depth", depths)
                .with("soilWeight", "16 kN/m3")
                .with("largestEccentricity", "0.3")
                .rows("asdCombinations", combination("G + Q + S", 1, 0), combination("G + Q_k + S", 0, 1))
                .table("presumedBearing", "soilClass", "bearing", bearing);
    }

    private static Table.Row combination(String id, double imposed, double concentrated) {
        return new Table.Row(Map.of(
                "id",
                new Word(id),
                "permanent",
                ratio(1),
                "imposed",
                ratio(imposed),
                "concentrated",
                ratio(concentrated),
                "snow",
                ratio(1)));
    }

    private static Measure ratio(double value) {
        return Measure.of(value, MeasureUnit.RATIO);
    }

    private static Evaluation.Measured measured(Evaluation e) {
        assertThat(e).isInstanceOf(Evaluation.Measured.class);
        return (Evaluation.Measured) e;
    }

    private static void assertMissing(Evaluation e, String pointer) {
        assertThat(e)
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly(pointer));
    }
}
