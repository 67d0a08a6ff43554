package org.deckplanreview.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.measure.MeasureUnit.DEGREE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_METRE_;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.LoadModel;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.InOtherUnits;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.SubmissionReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Quantities that follow from the layout of a whole deck, by hand on {@link SampleDeck}: 4800 mm by 3600 mm, joists from
 * the face of a ledger of 47 mm at y = 3600 over a beam of 2 x 47 mm at y = 600 to y = 0, posts of 100 mm at x = 300, 2400 and 4500.
 */
class FrameQuantitiesTest {

    private static final String BEAM = "/platforms/0/beams/0";
    private static final String LEDGER = "/platforms/0/ledger";
    private static final String JOISTS = "/platforms/0/joists";
    private static final String BEAMS = "/platforms/0/beams";
    private static final String FOOTING = "/platforms/0/footings/0";
    private static final double EXACT = 1e-9;
    private static final double OWN_WEIGHT = (28 * 145.0 / 151 + 47 * 170 / 400.0) * 400 * 9.81e-6;

    record Example(
            String name,
            SubjectKind kind,
            Value value,
            UnaryOperator<SampleDeck> given,
            String leftOut,
            String asksFor) {
        @Override
        public String toString() {
            return name + " of " + kind.word();
        }
    }

    /** Each with what it is and the member that it asks for where another is left out. */
    private static final double EQUIVALENT_LOAD = 1;

    private static final double LOAD_AT_TIP = 1;

    static Stream<Example> examples() {
        return Stream.of(
                example("joist spacing", SubjectKind.JOISTS, number(400, MILLIMETRE)),
                example("joist spacing", SubjectKind.BOARDS, number(400, MILLIMETRE), JOISTS, JOISTS),
                example("angle of boards to joists", SubjectKind.BOARDS, number(90, DEGREE), JOISTS, JOISTS),
                // 3600 - 47 - 600
                example("joist span", SubjectKind.JOISTS, number(2953, MILLIMETRE), LEDGER, BEAMS),
                example("joist overhang", SubjectKind.JOISTS, number(600, MILLIMETRE)),
                // 3600 - 600 - 47
                example("span beside overhang", SubjectKind.JOISTS, number(2953, MILLIMETRE), LEDGER, BEAMS),
                // 2400 - 300
                example("beam span", SubjectKind.BEAMS, number(2100, MILLIMETRE), BEAM + "/posts", BEAM + "/posts"),
                // 600 / 2953, to a thousand-millionth
                example("overhang over adjacent span", SubjectKind.JOISTS, number(0.203183204, RATIO), LEDGER, BEAMS),
                // 300 / 2100, to a thousand-millionth
                example(
                        "overhang over adjacent span",
                        SubjectKind.BEAMS,
                        number(0.142857143, RATIO),
                        BEAM + "/posts",
                        BEAM + "/posts"),
                example("joist span carried", SubjectKind.BEAMS, number(2953, MILLIMETRE), JOISTS, JOISTS),
                example("joist span carried", SubjectKind.BEAMS, number(2953, MILLIMETRE), LEDGER, BEAM + "/line"),
                example("joist span carried", SubjectKind.LEDGERS, number(2953, MILLIMETRE), JOISTS, JOISTS),
                example(
                        "joist overhang over span carried",
                        SubjectKind.BEAMS,
                        number(0.203183204, RATIO),
                        JOISTS,
                        JOISTS),
                example("joist overhang carried", SubjectKind.BEAMS, number(600, MILLIMETRE), JOISTS, JOISTS),
                example("beam overhang", SubjectKind.BEAMS, number(300, MILLIMETRE), BEAM + "/posts", BEAM + "/posts"),
                example("joists from both sides", SubjectKind.BEAMS, no(), JOISTS, JOISTS),
                example("manufactured boards", SubjectKind.BOARDS, no()),
                having(
                        "label of boards",
                        SubjectKind.BOARDS,
                        word("ASTM-D7032"),
                        d -> d.withJson("/platforms/0/boards/manufactured", "{\"labelledTo\": \"ASTM-D7032\"}"),
                        "/platforms/0/boards/manufactured/labelledTo"),
                example("contact with supports", SubjectKind.JOISTS, yes(), LEDGER, BEAMS),
                example("plies carried at posts", SubjectKind.BEAMS, yes(), BEAM + "/posts", BEAM + "/posts"),
                example("beam seating", SubjectKind.BEAMS, word("on-post")),
                example("least bearing length", SubjectKind.JOISTS, number(94, MILLIMETRE)),
                having(
                        "least bearing length",
                        SubjectKind.JOISTS,
                        number(45, MILLIMETRE),
                        d -> d.with(LEDGER + "/joists", "on-top"),
                        LEDGER + "/bearingLength"),
                example(
                        "least bearing length",
                        SubjectKind.BEAMS,
                        number(100, MILLIMETRE),
                        BEAM + "/posts",
                        BEAM + "/posts"),
                graded("species", word("southern-pine")),
                graded("timber grade", word("no.2")),
                having(
                        "incised",
                        SubjectKind.JOISTS,
                        yes(),
                        d -> d.with("/timbers/0/incised", true),
                        "/timbers/0/incised"),
                example("section breadth", SubjectKind.BEAMS, number(47, MILLIMETRE)),
                example("section depth", SubjectKind.POSTS, number(100, MILLIMETRE)),
                example("plies", SubjectKind.BEAMS, number(2, RATIO)),
                having(
                        "use category of treatment",
                        SubjectKind.JOISTS,
                        word("UC3B"),
                        d -> d.with("/timbers/0/treatment/useCategory", "UC3B"),
                        "/timbers/0/treatment/useCategory"),
                having(
                        "post base",
                        SubjectKind.POSTS,
                        word("connector"),
                        d -> d.with("/platforms/0/posts/0/base", "connector"),
                        "/platforms/0/posts/0/base"),
                // Boards at 900 - 3000 / 80 = 862.5 over the beam; less 28, 170 and 195; less the footing's 50.
                example(
                        "post height under beam",
                        SubjectKind.POSTS,
                        number(419.5, MILLIMETRE),
                        FOOTING + "/topAboveGround",
                        FOOTING + "/topAboveGround"),
                // a pier of the rest stands on 300 of concrete
                example(
                        "thickness beyond depth and top",
                        SubjectKind.FOOTINGS,
                        number(300 - 900 - 50, MILLIMETRE),
                        FOOTING + "/depth",
                        FOOTING + "/depth"),
                example(
                        "room for the post",
                        SubjectKind.POSTS,
                        number(419.5, MILLIMETRE),
                        FOOTING + "/topAboveGround",
                        FOOTING + "/topAboveGround"),
                // 419.5 and the footing's 50
                example(
                        "room above the ground",
                        SubjectKind.BEAMS,
                        number(469.5, MILLIMETRE),
                        "/platforms/0/level",
                        "/platforms/0/level"),
                // A strip of 600 + 2953 / 2; 4800 of it less the middle post's 2100, halved: 1350 x 2076.5
                example("tributary area", SubjectKind.POSTS, number(2.803275, SQUARE_METRE_), JOISTS, JOISTS),
                example("tributary area", SubjectKind.FOOTINGS, number(2.803275, SQUARE_METRE_), JOISTS, JOISTS),
                example("footing shape", SubjectKind.FOOTINGS, word("rectangular")),
                example("footing side", SubjectKind.FOOTINGS, number(500, MILLIMETRE)),
                having(
                        "footing diameter",
                        SubjectKind.FOOTINGS,
                        number(500, MILLIMETRE),
                        d -> d.with(FOOTING + "/shape", "round")),
                example(
                        "footing thickness",
                        SubjectKind.FOOTINGS,
                        number(300, MILLIMETRE),
                        FOOTING + "/thickness",
                        FOOTING + "/thickness"),
                having(
                        "frost protected",
                        SubjectKind.FOOTINGS,
                        yes(),
                        d -> d.with(FOOTING + "/frostProtected", true),
                        FOOTING + "/frostProtected"),
                having(
                        "guard posts notched",
                        SubjectKind.EDGES,
                        no(),
                        d -> d.with("/platforms/0/guards/0/postsNotched", false),
                        "/platforms/0/guards/0/postsNotched"),
                having(
                        "ground snow load",
                        SubjectKind.JOISTS,
                        number(2, KILONEWTON_PER_SQUARE_METRE),
                        d -> d.with("/site/groundSnowLoad", "2 kN/m2"),
                        "/site/groundSnowLoad"),
                having("roof over deck", SubjectKind.POSTS, no(), d -> d.with("/use/roofOver", false), "/use/roofOver"),
                example("platform over another", SubjectKind.PLATFORMS, no()),
                example("heavy item on platform", SubjectKind.BEAMS, no()),
                example("deck live load", SubjectKind.JOISTS, number(1.5, KILONEWTON_PER_SQUARE_METRE)),
                ofFixings("ledger fixing kind", word("lag-screw"), "kind"),
                ofFixings("ledger fixing diameter", number(12, MILLIMETRE), "diameter"),
                ofFixings("ledger sheathing", number(12, MILLIMETRE), "sheathing"),
                ofFixings("ledger gap", number(10, MILLIMETRE), "gap"),
                ofFixings("flashing up the wall", number(50, MILLIMETRE), "flashing/upWall"),
                ofFixings("flashing past the ledger's face", number(0, MILLIMETRE), "flashing/pastFace"),
                ofFixings("flashing down the ledger's face", number(12, MILLIMETRE), "flashing/downFace"),
                ofFixings("water barrier over flashing", number(60, MILLIMETRE), "flashing/barrierLap"),
                ofFixings("ledger end distance", number(100, MILLIMETRE), "endDistance"),
                ofFixings("ledger row distance", number(80, MILLIMETRE), "rowDistance"),
                ofFixings("ledger fixings staggered", yes(), "staggered"),
                ofFixings("lag tip beyond band joist", yes(), "tipBeyondBand"),
                fixed("ledger top edge distance", number(51, MILLIMETRE)),
                fixed("ledger bottom edge distance", number(20, MILLIMETRE)),
                ofLedger("band joist kind", word("solid-sawn"), "/bandJoist"),
                ofLedger("band joist thickness", number(38, MILLIMETRE), "/bandJoist"),
                ofLedger("band joist depth", number(235, MILLIMETRE), "/bandJoist/depth"),
                fixed("lateral connections", number(2, RATIO)),
                // 1500 lbf of 4.4482216152605 N
                fixed("least lateral capacity", number(6672.33242289075, NEWTON_)),
                // 2400 - 300
                example("beam span at post", SubjectKind.POSTS, number(2100, MILLIMETRE), BEAM + "/posts", BEAMS),
                example("beam span at post", SubjectKind.FOOTINGS, number(2100, MILLIMETRE), BEAM + "/posts", BEAMS),
                example("joist span at post", SubjectKind.POSTS, number(2953, MILLIMETRE), JOISTS, JOISTS),
                example("joist span at post", SubjectKind.FOOTINGS, number(2953, MILLIMETRE), JOISTS, JOISTS),
                example("plies carried", SubjectKind.POSTS, number(2, RATIO), BEAM + "/posts", BEAMS),
                // 4800 / 400 + 1
                example("joists under boards", SubjectKind.BOARDS, number(13, RATIO), JOISTS, JOISTS),
                // 195 / 170, to a thousand-millionth
                new Example(
                        "beam depth over joist depth",
                        SubjectKind.BEAMS,
                        number(1.147058824, RATIO),
                        d -> d.with(BEAM + "/joists", "hangers"),
                        JOISTS,
                        JOISTS),
                // 2 * 47 - 100
                example(
                        "beam beyond post",
                        SubjectKind.BEAMS,
                        number(-6, MILLIMETRE),
                        BEAM + "/posts",
                        BEAM + "/posts"),
                new Example(
                        "frame at the head",
                        SubjectKind.STAIRS,
                        yes(),
                        d -> d.withStair("S1", SampleDeck.line(0, 600, 0, 1600), 5, 175, 250),
                        JOISTS,
                        JOISTS),
                // Of the first piece, which ends 20 mm beyond the post's middle: 100 / 2 + 20
                new Example(
                        "least bearing at ply joints",
                        SubjectKind.BEAMS,
                        number(70, MILLIMETRE),
                        d -> d.withJson(BEAM + "/plyJoints", "[2420]"),
                        BEAM + "/posts",
                        BEAM + "/posts"),
                having(
                        "joists held upright",
                        SubjectKind.JOISTS,
                        no(),
                        d -> d.with(JOISTS + "/blocked", false),
                        JOISTS + "/blocked"),
                example("ledger depth over joist depth", SubjectKind.LEDGERS, number(1, RATIO), JOISTS, JOISTS),
                having(
                        "post cap",
                        SubjectKind.BEAMS,
                        word("notched-post"),
                        d -> d.with(BEAM + "/postCap", "notched-post"),
                        BEAM + "/postCap"),
                new Example(
                        "band joist cantilevered",
                        SubjectKind.LEDGERS,
                        yes(),
                        d -> fixings(d).with(LEDGER + "/bandJoist/cantilevered", true),
                        LEDGER + "/bandJoist/cantilevered",
                        LEDGER + "/bandJoist/cantilevered"),
                // Boards 28 * 145 / 151, joists 47 * 170 / 400; 400 kg/m3 and 9.81 m/s2.
                example(
                        "equivalent permanent load",
                        SubjectKind.FOOTINGS,
                        number(OWN_WEIGHT, KILONEWTON_PER_SQUARE_METRE),
                        "/platforms/0/boards",
                        "/platforms/0/boards"),
                example(
                        "equivalent load with snow",
                        SubjectKind.LEDGERS,
                        number(OWN_WEIGHT + 0.5, KILONEWTON_PER_SQUARE_METRE),
                        "/platforms/0/boards",
                        "/platforms/0/boards"),
                having("beam ends meet over posts", SubjectKind.BEAMS, yes(), d -> spliced(d, 2400)),
                // 12 + 10
                ofLedger("ledger distance from band joist", number(22, MILLIMETRE), "/fixings/sheathing"),
                having(
                        "footing depth below frost",
                        SubjectKind.FOOTINGS,
                        number(150, MILLIMETRE),
                        d -> d.with(FOOTING + "/depth", 600),
                        "/site/frostDepth"),
                // 4800 - 4300, as at the other end
                fixed("lateral connection end distance", number(500, MILLIMETRE)));
    }

    /** The beam parted at a place along it, its middle post at x = 2400. */
    private static SampleDeck spliced(SampleDeck deck, int x) {
        return deck.withJson(
                BEAMS,
                ("[{'id': 'B1', 'timber': 'BM', 'plies': 2, 'line': {'from': [0, 600], 'to': [%d, 600]},"
                                + " 'posts': ['P1', 'P2'], 'seating': 'on-post', 'joists': 'on-top'},"
                                + " {'id': 'B2', 'timber': 'BM', 'plies': 2, 'line': {'from': [%d, 600], 'to': [4800, 600]},"
                                + " 'posts': ['P3'], 'seating': 'on-post', 'joists': 'on-top'}]")
                        .formatted(x, x)
                        .replace('\'', '"'));
    }

    /** A post of 100 mm stands under what ends at most 50 mm from its middle, and 10 mm that drawings may be off. */
    @ParameterizedTest
    @CsvSource({"2460, true", "2461, false"})
    void beams_meet_over_a_post_or_beside_it(int x, boolean over) {
        assertSame(
                observe(
                        "beam ends meet over posts",
                        SubjectKind.BEAMS,
                        spliced(SampleDeck.complete(), x).node()),
                new Flag(over));
    }

    @Test
    void a_beam_in_one_piece_meets_no_other_and_one_under_joists_carries_none_at_its_side() {
        JsonNode deck = SampleDeck.complete().node();
        assertThat(observe("beam ends meet over posts", SubjectKind.BEAMS, deck))
                .isInstanceOf(Observation.NotApplicable.class);
        assertThat(observe("beam depth over joist depth", SubjectKind.BEAMS, deck))
                .isInstanceOf(Observation.NotApplicable.class);
    }

    /** Names of the quantities that are shown here. */
    static List<String> names() {
        return Stream.concat(examples().map(Example::name), Stream.of("equivalent load", "load at the tip of overhang"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void a_quantity_follows_from_the_drawing(Example e) {
        assertSame(
                observe(
                        e.name(),
                        e.kind(),
                        e.given().apply(SampleDeck.complete()).node()),
                e.value());
    }

    /** To the last digits that a number of inches without end leaves. */
    @ParameterizedTest
    @MethodSource("examples")
    void a_quantity_is_the_same_of_the_deck_in_inches(Example e) {
        JsonNode inches =
                InOtherUnits.read(e.given().apply(SampleDeck.complete()).node());
        assertSame(observe(e.name(), e.kind(), inches), e.value());
    }

    static Stream<Example> examplesThatCanLack() {
        return examples().filter(e -> !e.leftOut().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("examplesThatCanLack")
    void what_is_left_out_is_asked_for(Example e) {
        SampleDeck deck = e.given().apply(SampleDeck.complete());
        JsonNode document =
                (e.leftOut().endsWith("/posts") ? deck.withJson(e.leftOut(), "[]") : deck.without(e.leftOut())).node();
        assertThat(observe(e.name(), e.kind(), document))
                .isInstanceOfSatisfying(
                        Observation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly(e.asksFor()));
    }

    /** A second beam at y = 2000 parts the span of 2953 into 1400 and 1553; its joists come from both sides. */
    @Test
    void a_beam_in_the_middle_carries_the_larger_of_two_spans() {
        SampleDeck deck = twoBeams(2000);
        assertSame(ofSecondBeam("joist span carried", deck), number(1553, MILLIMETRE));
        assertSame(ofSecondBeam("joist overhang over span carried", deck), number(0, RATIO));
        assertSame(ofSecondBeam("joists from both sides", deck), yes());
        assertSame(observe("joist span", SubjectKind.JOISTS, deck.node()), number(1553, MILLIMETRE));
        assertSame(observe("joist span carried", SubjectKind.BEAMS, deck.node()), number(1400, MILLIMETRE));
    }

    /** Its post at x = 2400 carries 2100 mm of beam times (1400 + 1553) / 2 of joist. */
    @Test
    void the_areas_of_posts_add_up_to_what_the_ledger_does_not_carry() {
        SampleDeck deck = twoBeams(2000);
        Layout layout = layout(deck.node());
        double carried = layout.subjects(SubjectKind.POSTS).stream()
                .mapToDouble(p -> number(quantity("tributary area").observe(p, context(layout))))
                .sum();
        // 4800 mm times 3600 mm less the ledger's 47 mm and half of the last span of 1553 mm
        assertThat(carried).isCloseTo(4.8 * 2.7765, within(EXACT));
        assertThat(number(quantity("tributary area")
                        .observe(layout.subjects(SubjectKind.POSTS).get(4), context(layout))))
                .isCloseTo(2.1 * 1.4765, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 90", "1, 1, 45", "-1, 1, 45", "0, 1, 0"})
    void boards_lie_at_an_angle_to_the_joists(int dx, int dy, double degrees) {
        SampleDeck deck = SampleDeck.complete().with("/platforms/0/boards/direction", new int[] {dx, dy});
        assertSame(observe("angle of boards to joists", SubjectKind.BOARDS, deck.node()), number(degrees, DEGREE));
    }

    @Test
    void what_hangs_or_is_bolted_bears_on_nothing() {
        SampleDeck hung = SampleDeck.complete().with(BEAM + "/joists", "hangers");
        assertThat(observe("least bearing length", SubjectKind.JOISTS, hung.node()))
                .isInstanceOf(Observation.NotApplicable.class);
        SampleDeck bolted = SampleDeck.complete().with(BEAM + "/seating", "both-sides");
        assertThat(observe("least bearing length", SubjectKind.BEAMS, bolted.node()))
                .isInstanceOf(Observation.NotApplicable.class);
        assertSame(observe("beam seating", SubjectKind.BEAMS, bolted.node()), word("both-sides"));
    }

    @Test
    void a_round_footing_has_a_diameter_and_another_its_smaller_side() {
        SampleDeck longer = SampleDeck.complete().with(FOOTING + "/length", 400);
        assertSame(observe("footing side", SubjectKind.FOOTINGS, longer.node()), number(400, MILLIMETRE));
        assertThat(observe("footing diameter", SubjectKind.FOOTINGS, longer.node()))
                .isEqualTo(new Observation.NotApplicable("the footing is rectangular"));
    }

    @Test
    void a_ledger_without_lateral_connections_has_none_and_no_capacity() {
        JsonNode none = SampleDeck.complete().node();
        assertSame(observe("lateral connections", SubjectKind.LEDGERS, none), number(0, RATIO));
        assertThat(observe("least lateral capacity", SubjectKind.LEDGERS, none))
                .isInstanceOf(Observation.NotApplicable.class);
        assertThat(observe("lateral connection end distance", SubjectKind.LEDGERS, none))
                .isInstanceOf(Observation.NotApplicable.class);
    }

    @Test
    void one_distance_to_either_edge_of_the_ledger_stands_for_both() {
        SampleDeck deck = SampleDeck.complete().withLedgerFixings("timber-frame", 12, 400);
        assertSame(observe("ledger top edge distance", SubjectKind.LEDGERS, deck.node()), number(50, MILLIMETRE));
        assertSame(observe("ledger bottom edge distance", SubjectKind.LEDGERS, deck.node()), number(50, MILLIMETRE));
        deck.without(LEDGER + "/fixings/edgeDistance");
        assertThat(observe("ledger top edge distance", SubjectKind.LEDGERS, deck.node()))
                .isInstanceOfSatisfying(
                        Observation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly(LEDGER + "/fixings/topEdgeDistance"));
    }

    @Test
    void bolts_have_no_tip() {
        SampleDeck deck = fixings(SampleDeck.complete()).with(LEDGER + "/fixings/kind", "bolt");
        assertThat(observe("lag tip beyond band joist", SubjectKind.LEDGERS, deck.node()))
                .isInstanceOf(Observation.NotApplicable.class);
    }

    @Test
    void platforms_a_storey_apart_may_lie_over_each_other() {
        SampleDeck deck = SampleDeck.complete()
                .withJson(
                        "/platforms/-",
                        "{\"id\": \"high\", \"outline\": [[0, 0], [2000, 0], [2000, 2000], [0, 2000]],"
                                + " \"level\": {\"at\": [0, 0], \"z\": 3600}}");
        assertSame(observe("platform over another", SubjectKind.PLATFORMS, deck.node()), yes());
        assertSame(observe("platform over another", SubjectKind.DECK, deck.node()), yes());
    }

    @Test
    void platforms_side_by_side_do_not_lie_over_each_other() {
        SampleDeck deck = SampleDeck.complete()
                .withJson(
                        "/platforms/-",
                        "{\"id\": \"low\", \"outline\": [[0, 0], [4800, 0], [4800, -1000], [0, -1000]]}");
        assertSame(observe("platform over another", SubjectKind.PLATFORMS, deck.node()), no());
    }

    @Test
    void a_heavy_item_stands_on_one_platform() {
        SampleDeck deck = SampleDeck.complete()
                .withHeavyItem("T", "planter", "3 kN", SampleDeck.points(1000, 1000, 2000, 1000, 2000, 2000))
                .withJson(
                        "/platforms/-",
                        "{\"id\": \"low\", \"outline\": [[0, 0], [4800, 0], [4800, -1000], [0, -1000]]}");
        assertSame(observe("heavy item on platform", SubjectKind.JOISTS, deck.node()), yes());
        Layout layout = layout(deck.node());
        assertSame(
                quantity("heavy item on platform")
                        .observe(layout.subjects(SubjectKind.PLATFORMS).get(1), context(layout)),
                no());
    }

    /** The floor of 0.5 kN/m2 is not there: what is counted is what lies on the joists. */
    @Test
    void a_joist_in_the_field_without_overhang_is_loaded_like_its_area() {
        SampleDeck deck = SampleDeck.complete().with(BEAM + "/line", SampleDeck.line(0, 0, 4800, 0));
        for (int i = 0; i < 3; i++) {
            deck.with("/platforms/0/posts/" + i + "/at", SampleDeck.point(300 + i * 2100, 0));
        }
        Layout layout = layout(deck.node());
        Observation joist = quantity("equivalent permanent load")
                .observe(layout.subjects(SubjectKind.JOISTS).get(4), context(layout, OptionalDouble.of(0.5)));
        assertThat(number(joist)).isCloseTo(OWN_WEIGHT, within(0.02));
        // With the weight of the beam over the 1.8 m that joists of 3.6 m bring to it.
        double beam = 2 * 47 * 195 * 400 * 9.81e-9 / 1.8;
        Observation first = quantity("equivalent permanent load")
                .observe(layout.subjects(SubjectKind.BEAMS).get(0), context(layout, OptionalDouble.of(0.5)));
        assertThat(number(first)).isLessThan(OWN_WEIGHT + beam + 0.02);
    }

    /**
     * By statics, spans of 2953 and 600, joists at 400: the largest moment is w l^2 / 8 - M / 2 + M^2 / (2 w l^2) with the
     * span loaded and the overhang not, M = g a^2 / 2; the shear force w l / 2 + w a^2 / (2 l) is far from 5/8 w l.
     */
    @Test
    void what_a_joist_carries_counts_by_its_moment_and_at_the_tip_of_its_overhang() {
        Layout layout = layout(SampleDeck.complete().node());
        Subject joist = layout.subjects(SubjectKind.JOISTS).get(4);
        double own = OWN_WEIGHT * 400e-3;
        double all = own + 1.5 * 400e-3;
        double over = own * 600 * 600 / 2;
        double moment = all * 2953 * 2953 / 8 - over / 2 + over * over / (2 * all * 2953 * 2953);
        Observation load = quantity("equivalent load").observe(joist, context(layout, OptionalDouble.of(0.5)));
        assertThat(number(load)).isCloseTo(moment * 8 / (400 * 2953.0 * 2953) * 1e3, within(0.02));
        // Its own weight, as a load at the tip: g a / 2.
        Observation tip =
                quantity("load at the tip of overhang").observe(joist, context(layout, OptionalDouble.of(0.5)));
        assertThat(number(tip)).isCloseTo(own * 600 / 2, within(5.0));
        Observation none = quantity("load at the tip of overhang")
                .observe(
                        layout(SampleDeck.complete()
                                        .with(BEAM + "/line", SampleDeck.line(0, 0, 4800, 0))
                                        .node())
                                .subjects(SubjectKind.JOISTS)
                                .get(4),
                        context(layout, OptionalDouble.of(0.5)));
        assertThat(none).isInstanceOf(Observation.NotApplicable.class);
    }

    /** Joists go on over it: by statics it takes 1.25 of 1.5 m, where a beam at the end of joists of 1.6 m takes 0.8 m. */
    @Test
    void a_beam_under_joists_from_both_sides_is_loaded_far_beyond_joists_from_one() {
        Observation seen = ofSecondBeam("equivalent permanent load", twoBeams(2000));
        assertThat(number(seen)).isGreaterThan(1.5);
    }

    private static SampleDeck twoBeams(double y) {
        SampleDeck deck = SampleDeck.complete();
        ObjectNode beam = deck.node().at(BEAM).deepCopy();
        beam.put("id", "B2");
        beam.set("line", SampleDeck.line(0, y, 4800, y));
        beam.putArray("posts").add("Q1").add("Q2").add("Q3");
        deck.with(BEAMS + "/-", beam);
        for (int i = 0; i < 3; i++) {
            ObjectNode post = deck.node().at("/platforms/0/posts/" + i).deepCopy();
            post.put("id", "Q" + (i + 1));
            post.set("at", SampleDeck.point(300 + i * 2100, y));
            deck.with("/platforms/0/posts/-", post);
        }
        return deck;
    }

    private static Observation ofSecondBeam(String name, SampleDeck deck) {
        Layout layout = layout(deck.node());
        return quantity(name).observe(layout.subjects(SubjectKind.BEAMS).get(1), context(layout));
    }

    private static Observation observe(String name, SubjectKind kind, JsonNode document) {
        Layout layout = layout(document);
        return quantity(name).observe(layout.subjects(kind).get(0), context(layout));
    }

    private static Quantity quantity(String name) {
        return Quantities.all().stream()
                .filter(q -> q.description().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No quantity " + name));
    }

    private static Layout layout(JsonNode document) {
        ReadResult read = new SubmissionReader().read(document.toString().getBytes(StandardCharsets.UTF_8));
        if (read instanceof ReadResult.Read whole) {
            return Layout.derive(whole.submission());
        }
        throw new AssertionError(read);
    }

    /** With 1.5 kN/m2 on each platform. */
    private static ReviewContext context(Layout layout) {
        return context(layout, OptionalDouble.empty());
    }

    private static ReviewContext context(Layout layout, OptionalDouble leastDead) {
        Submission submission = layout.submission();
        LoadModel.PlatformLoads loads =
                new LoadModel.PlatformLoads(Derived.known(1.5), "", Derived.known(2_000.0), 0, 0.5);
        LoadModel model = new LoadModel(
                submission.platforms().stream().map(p -> loads).toList(),
                new TreeMap<>(Map.of(
                        "C18", new LoadModel.Material(9000, 560, 400), "C24", new LoadModel.Material(11000, 690, 400))),
                24,
                9.81,
                false,
                1.2,
                0.5,
                leastDead,
                new LoadModel.OnEdges(0, Derived.known(0.0), Derived.known(0.0), new TreeMap<>()));
        return new ReviewContext(layout, LoadPath.derive(layout, model), List.of(Derived.known("A")));
    }

    private static void assertSame(Observation seen, Value expected) {
        assertThat(seen).isInstanceOf(Observation.Found.class);
        Value value = ((Observation.Found) seen).value();
        if (expected instanceof Measure e && value instanceof Measure v) {
            assertThat(v.unit()).isEqualTo(e.unit());
            assertThat(v.value()).isCloseTo(e.value(), within(EXACT * Math.max(1, Math.abs(e.value()))));
        } else {
            assertThat(value).isEqualTo(expected);
        }
    }

    private static double number(Observation seen) {
        return ((Measure) ((Observation.Found) seen).value()).value();
    }

    private static Example example(String name, SubjectKind kind, Value value) {
        return new Example(name, kind, value, d -> d, "", "");
    }

    private static Example example(String name, SubjectKind kind, Value value, String leftOut, String asksFor) {
        return new Example(name, kind, value, d -> d, leftOut, asksFor);
    }

    private static Example having(String name, SubjectKind kind, Value value, UnaryOperator<SampleDeck> given) {
        return new Example(name, kind, value, given, "", "");
    }

    private static Example having(
            String name, SubjectKind kind, Value value, UnaryOperator<SampleDeck> given, String pointer) {
        return new Example(name, kind, value, given, pointer, pointer);
    }

    private static Example graded(String name, Value value) {
        String member = name.equals("species") ? "/timbers/0/species" : "/timbers/0/grade";
        return new Example(
                name,
                SubjectKind.JOISTS,
                value,
                d -> d.without("/timbers/0/strengthClass")
                        .with("/timbers/0/grade", "no.2")
                        .with("/timbers/0/species", "southern-pine"),
                member.endsWith("grade") ? member : "",
                member);
    }

    private static Example fixed(String name, Value value) {
        return having(name, SubjectKind.LEDGERS, value, FrameQuantitiesTest::fixings);
    }

    private static Example ofFixings(String name, Value value, String member) {
        return ofLedger(name, value, "/fixings/" + member);
    }

    private static Example ofLedger(String name, Value value, String member) {
        return having(name, SubjectKind.LEDGERS, value, FrameQuantitiesTest::fixings, LEDGER + member);
    }

    private static SampleDeck fixings(SampleDeck deck) {
        return deck.withLedgerFixings("timber-frame", 12, 400).withBandJoist();
    }

    private static Value number(double value, MeasureUnit unit) {
        return Measure.of(value, unit);
    }

    private static Value word(String word) {
        return new Word(word);
    }

    private static Value yes() {
        return new Flag(true);
    }

    private static Value no() {
        return new Flag(false);
    }
}
