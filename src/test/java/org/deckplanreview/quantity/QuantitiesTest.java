package org.deckplanreview.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.deckplanreview.measure.MeasureUnit.DEGREE;
import static org.deckplanreview.measure.MeasureUnit.KILOMETRE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.PERCENT_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_METRE_;
import static org.deckplanreview.measure.MeasureUnit.YEAR_;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.ValueType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every quantity on {@link PaperDeck}: what it is there, and which member it asks for when that is left out. */
class QuantitiesTest {

    private static final String BEAM = "/platforms/0/beams/0";
    private static final String STAIR = "/platforms/0/stairs/0/";
    private static final String LEDGER_FIXINGS = "/platforms/0/ledger/fixings";
    private static final String NATURAL = "{\"heartwoodClass\": 2, \"heartwoodOnly\": true}";
    private static final String WALL_IN_FRONT =
            "{\"id\": \"W2\", \"line\": {\"from\": [0, 0], \"to\": [4800, 0]}, \"dampProofCourseLevel\": 1050}";

    /** From members without which the document is no submission, or, like a guard, whose absence is the answer. */
    private static final List<String> ALWAYS_GIVEN = List.of(
            "occupancy",
            "beams or posts",
            "stands on blocks",
            "free-standing",
            "fixing kind",
            "deck area",
            "stair rise",
            "stair going",
            "stair pitch",
            "twice rise plus going",
            "risers in a flight",
            "rise of flight",
            "stair width",
            "flight guard present");
    /** Of things that a deck need not have: who leaves them out says that there are none. */
    private static final List<String> NOT_APPLICABLE_IF_LEFT_OUT = List.of(
            "headroom",
            "gap over block",
            "roof stated",
            "room below stated",
            "vents covered",
            "depth over breadth",
            "deviation of measured levels",
            "wall top above boards",
            "footing below the line from a foundation",
            "snow on deck over snow on ground",
            "flight guard climbable",
            "largest stated resistance",
            "hanger resistance over joist section",
            "ledger fixing resistance over its bearing",
            "tensile strength of fasteners",
            "lever arm over depth of frame",
            "foot of brace above ground",
            "foot of stair off the ground",
            "least load of spa baths",
            "least load of planters",
            "difference of measured diagonals",
            "deviation of measured diagonals",
            "reach over ledger length");

    record Example(
            String name,
            SubjectKind kind,
            Value value,
            UnaryOperator<PaperDeck> given,
            UnaryOperator<PaperDeck> leftOut,
            String asksFor) {
        @Override
        public String toString() {
            return name + " of " + kind.word();
        }
    }

    static Stream<Example> examples() {
        return Stream.of(
                example("young children", SubjectKind.EDGES, yes(), "/use/youngChildren"),
                unsurveyed("largest drop", SubjectKind.BOARDS, number(900, MILLIMETRE)),
                unsurveyed("largest drop", SubjectKind.FIXINGS, number(900, MILLIMETRE)),
                example("soil class", SubjectKind.FOOTINGS, word("firm-clay"), "/site/soil/soilClass"),
                example("volume change", SubjectKind.DECK, word("low"), "/site/soil/volumeChange"),
                example("trees nearby", SubjectKind.POSTS, no(), "/site/soil/treesNearby"),
                example("frost depth", SubjectKind.FOOTINGS, number(450, MILLIMETRE), "/site/frostDepth"),
                example(
                        "bearing resistance",
                        SubjectKind.FOOTINGS,
                        number(75, KILONEWTON_PER_SQUARE_METRE),
                        "/site/soil/bearingResistance"),
                example("distance to coast", SubjectKind.FIXINGS, number(20, KILOMETRE), "/site/coastDistance"),
                example("fall gradient", SubjectKind.BOARDS, number(0.0125, RATIO), "/platforms/0/fall"),
                example("fall away from building", SubjectKind.PLATFORMS, yes(), "/platforms/0/fall"),
                example("gap between boards", SubjectKind.BOARDS, number(6, MILLIMETRE), "/platforms/0/boards/gap"),
                example("board profile", SubjectKind.BOARDS, word("smooth"), "/platforms/0/boards/profile"),
                unsurveyed("angle of boards to fall", SubjectKind.BOARDS, number(90, DEGREE)),
                unsurveyed("drop", SubjectKind.EDGES, number(900, MILLIMETRE)),
                undescribed("edge kind", word("open")),
                undescribed("guard present", yes()),
                undescribed("guard height", number(1100, MILLIMETRE)),
                undescribed("guard infill", word("balusters")),
                undescribed("largest opening", number(99, MILLIMETRE)),
                undescribed("guard climbable", no()),
                example("guard height", SubjectKind.EDGES, number(1100, MILLIMETRE), "/platforms/0/guards/0/height"),
                example("guard infill", SubjectKind.EDGES, word("balusters"), "/platforms/0/guards/0/infill"),
                example(
                        "largest opening",
                        SubjectKind.EDGES,
                        number(99, MILLIMETRE),
                        "/platforms/0/guards/0/largestOpening"),
                having(
                        "frame blocked at guard posts",
                        SubjectKind.GUARDS,
                        yes(),
                        d -> d.with("/platforms/0/guards/0/blocked", true),
                        "/platforms/0/guards/0/blocked"),
                having(
                        // 1050 above a front edge at 900 - 3600 / 80
                        "boards below damp-proof course",
                        SubjectKind.EDGES,
                        number(195, MILLIMETRE),
                        d -> d.with("/platforms/0/edges/0/kind", "wall")
                                .without("/platforms/0/edges/0/guard")
                                .withJson("/site/walls/-", WALL_IN_FRONT),
                        "/site/walls/1/dampProofCourseLevel"),
                example("guard climbable", SubjectKind.EDGES, no(), "/platforms/0/guards/0/climbable"),
                example("post top", SubjectKind.POSTS, word("covered"), "/platforms/0/posts/0/top"),
                embedded("ground end of post", SubjectKind.POSTS, word("uncut"), "/platforms/0/posts/0/groundEnd"),
                unsurveyed("post height", SubjectKind.POSTS, number(600, MILLIMETRE)),
                unsurveyed("post length", SubjectKind.POSTS, number(600, MILLIMETRE)),
                new Example(
                        "unbraced post height",
                        SubjectKind.POSTS,
                        number(600, MILLIMETRE),
                        d -> d.without("/platforms/0/ledger"),
                        d -> d.without("/platforms/0/ledger").unsurveyed(),
                        "/site/groundLevels"),
                new Example(
                        "fewest braces",
                        SubjectKind.PLATFORMS,
                        number(1, RATIO),
                        QuantitiesTest::braced,
                        d -> braced(d).withJson("/platforms/0/beams", "[]"),
                        "/platforms/0/beams"),
                new Example(
                        "distance between brace lines over width",
                        SubjectKind.PLATFORMS,
                        number(0, RATIO),
                        QuantitiesTest::braced,
                        d -> braced(d).withJson("/platforms/0/beams", "[]"),
                        "/platforms/0/beams"),
                new Example(
                        "distance between beams",
                        SubjectKind.JOISTS,
                        number(1800, MILLIMETRE),
                        d -> d.joistSpans(1200, 1800),
                        d -> d,
                        "/platforms/0/beams"),
                example("footing kind", SubjectKind.POSTS, word("pad"), "/platforms/0/posts/0/footing"),
                embedded(
                        "embedment",
                        SubjectKind.FOOTINGS,
                        number(600, MILLIMETRE),
                        "/platforms/0/footings/0/embedment"),
                embedded("embedment", SubjectKind.POSTS, number(600, MILLIMETRE), "/platforms/0/posts/0/footing"),
                example(
                        "footing depth",
                        SubjectKind.FOOTINGS,
                        number(900, MILLIMETRE),
                        "/platforms/0/footings/0/depth"),
                example(
                        "footing top above ground",
                        SubjectKind.FOOTINGS,
                        number(50, MILLIMETRE),
                        "/platforms/0/footings/0/topAboveGround"),
                example(
                        "footing top sheds water",
                        SubjectKind.FOOTINGS,
                        yes(),
                        "/platforms/0/footings/0/topShedsWater"),
                unsurveyed("ground clearance", SubjectKind.BOARDS, number(600, MILLIMETRE)),
                unsurveyed("ground clearance", SubjectKind.JOISTS, number(600, MILLIMETRE)),
                unsurveyed("ground clearance", SubjectKind.BEAMS, number(600, MILLIMETRE)),
                unsurveyed("ground clearance", SubjectKind.LEDGERS, number(600, MILLIMETRE)),
                example("treated", SubjectKind.BEAMS, yes(), "/timbers/1/treatment"),
                example("use class of treatment", SubjectKind.POSTS, word("UC4"), "/timbers/2/treatment"),
                example("use class of treatment", SubjectKind.LEDGERS, word("UC3.2"), "/timbers/0/treatment"),
                having(
                        "use class of treatment",
                        SubjectKind.LEDGERS,
                        word("UC3.2"),
                        d -> d.with("/timbers/0/treatment/useCategory", "UC3B"),
                        "/timbers/0/treatment/useClass"),
                example("service life", SubjectKind.JOISTS, number(30, YEAR_), "/timbers/0/treatment/serviceLifeYears"),
                natural("heartwood class", number(2, RATIO)),
                natural("heartwood only", yes()),
                example("cut ends treated", SubjectKind.DECK, yes(), "/protection/cutEndsTreated"),
                new Example(
                        "treated timber in the deck",
                        SubjectKind.FIXINGS,
                        yes(),
                        d -> d,
                        d -> d.without("/timbers/0/treatment")
                                .without("/timbers/1/treatment")
                                .without("/timbers/2/treatment")
                                .without("/timbers/3/treatment"),
                        "/timbers/0/treatment"),
                example("fixing finish", SubjectKind.FIXINGS, word("stainless-A2"), "/protection/fixings/0/finish"),
                example(
                        "fixing diameter",
                        SubjectKind.FIXINGS,
                        number(5, MILLIMETRE),
                        "/protection/fixings/0/diameter"),
                new Example(
                        "plate thickness",
                        SubjectKind.FIXINGS,
                        number(2, MILLIMETRE),
                        d -> d.without("/protection/fixings/0"),
                        d -> d.without("/protection/fixings/0").without("/protection/fixings/0/thickness"),
                        "/protection/fixings/0/thickness"),
                new Example(
                        "measured fall",
                        SubjectKind.PLATFORMS,
                        number(0.0125, RATIO),
                        d -> d.withJson(
                                "/siteMeasurements",
                                "{\"levels\": [{\"at\": [0, 3600], \"z\": 900}, {\"at\": [0, 0], \"z\": 855}]}"),
                        d -> d.withJson("/siteMeasurements", "{\"levels\": [{\"at\": [0, 3600], \"z\": 900}]}"),
                        "/siteMeasurements/levels"),
                unsurveyed("platform height", SubjectKind.PLATFORMS, number(900, MILLIMETRE)),
                example(
                        "platform height above highest ground",
                        SubjectKind.PLATFORMS,
                        number(900, MILLIMETRE),
                        "/site/groundLevels"),
                example(
                        "height with guards",
                        SubjectKind.PLATFORMS,
                        number(2000, MILLIMETRE),
                        "/platforms/0/guards/0/height"),
                planning("building kind", SubjectKind.DECK, word("house"), "building"),
                planning("listed building", SubjectKind.PLATFORMS, no(), "listed"),
                planning("protected area", SubjectKind.DECK, no(), "protectedArea"),
                planning("beyond principal elevation", SubjectKind.PLATFORMS, no(), "beyondPrincipalElevation"),
                planning("garden covered", SubjectKind.DECK, number(20, PERCENT_), "gardenCovered"),
                planning("distance to boundary", SubjectKind.PLATFORMS, number(4000, MILLIMETRE), "boundaryDistance"),
                having("spa bath", SubjectKind.DECK, yes(), QuantitiesTest::spaBath, "/use/heavyItems/0/kind"),
                having(
                        "over a room",
                        SubjectKind.PLATFORMS,
                        no(),
                        d -> d.with("/platforms/0/overRoom", false),
                        "/platforms/0/overRoom"),
                having(
                        "cross-ventilated",
                        SubjectKind.DECK,
                        yes(),
                        d -> d.with("/protection/crossVentilated", true),
                        "/protection/crossVentilated"),
                having(
                        "weed control",
                        SubjectKind.DECK,
                        word("membrane"),
                        d -> d.with("/protection/weedControl", "membrane"),
                        "/protection/weedControl"),
                new Example(
                        "difference between risers and climb",
                        SubjectKind.STAIRS,
                        number(25, MILLIMETRE),
                        QuantitiesTest::stair,
                        d -> stair(d).unsurveyed(),
                        "/site/groundLevels"),
                ofStair("difference between risers", number(2, MILLIMETRE), "largestRiseDifference"),
                ofStair("open risers", no(), "openRisers"),
                ofOpenStair("tread overlap", number(20, MILLIMETRE), "treadOverlap"),
                ofOpenStair("riser opening", number(95, MILLIMETRE), "riserOpening"),
                ofStair("handrail sides", word("both"), "handrails"),
                ofStair("handrail height", number(900, MILLIMETRE), "handrails"),
                ofStair("handrail height", number(900, MILLIMETRE), "handrails/height"),
                ofStair("top landing to width", number(1.2, RATIO), "topLanding"),
                ofStair("bottom landing to width", number(1.1, RATIO), "bottomLanding"),
                ofStair("top landing", number(1200, MILLIMETRE), "topLanding"),
                ofStair("bottom landing", number(1100, MILLIMETRE), "bottomLanding"),
                new Example(
                        "nosing",
                        SubjectKind.STAIRS,
                        number(20, MILLIMETRE),
                        d -> stair(d).with(STAIR + "nosing", 20),
                        QuantitiesTest::stair,
                        STAIR + "nosing"),
                new Example(
                        "guarded sides of flight",
                        SubjectKind.STAIRS,
                        word("both"),
                        d -> stair(d).with(STAIR + "guardedSides", "both"),
                        QuantitiesTest::stair,
                        STAIR + "guardedSides"),
                ofStair("triangle under flight guard", number(140, MILLIMETRE), "guardTriangle"),
                statedOfStair("lowest edge of flight guard above pitch line", number(45, MILLIMETRE), "guardEdge", 45),
                statedOfStair("slip-resistant treads", yes(), "slipResistantTreads", true),
                statedOfStair("contrasting nosings", yes(), "contrastingNosings", true),
                statedOfStair("handrail extension", number(300, MILLIMETRE), "handrails/extension", 300),
                statedOfStair("handrail grip", number(40, MILLIMETRE), "handrails/grip", 40),
                statedOfStair("clear width between handrails", number(950, MILLIMETRE), "handrails/clearWidth", 950),
                having(
                        "flight guard height",
                        SubjectKind.STAIRS,
                        number(1100, MILLIMETRE),
                        QuantitiesTest::stair,
                        "/platforms/0/guards/0/height"),
                having(
                        "opening in flight guard",
                        SubjectKind.STAIRS,
                        number(99, MILLIMETRE),
                        QuantitiesTest::stair,
                        "/platforms/0/guards/0/largestOpening"),
                bolted("fasteners in joint", 4, ""),
                bolted("washer diameter over bolt diameter", 3, "/washerDiameter"),
                bolted("washer thickness over bolt diameter", 0.25, "/washerThickness"),
                having(
                        "screw penetration over diameter",
                        SubjectKind.BEAMS,
                        number(12.5, RATIO),
                        d -> joint(d, "screw", 8),
                        BEAM + "/joint/penetration"),
                ofPlies("ply fixing kind", word("screw")),
                ofPlies("ply fixing spacing", number(300, MILLIMETRE)),
                ofPlies("ply fixing rows", number(2, RATIO)),
                ofPlies("ply fixing diameter", number(5, MILLIMETRE)),
                ofLedger("ledger base", word("masonry"), ""),
                new Example(
                        "ledger base",
                        SubjectKind.LEDGERS,
                        word("concrete"),
                        d -> ledger(d, "concrete"),
                        d -> ledger(d, "unknown"),
                        LEDGER_FIXINGS + "/base"),
                ofLedger("ledger fixing spacing", number(400, MILLIMETRE), "/spacing"),
                ofLedger("ledger weathering", word("flashing"), "/weathering"));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void a_quantity_is_found_where_the_submission_gives_it(Example e) {
        Observation seen = observe(e.name(), e.kind(), e.given().apply(new PaperDeck()));
        assertThat(seen)
                .isInstanceOfSatisfying(
                        Observation.Found.class, f -> assertThat(f.value()).isEqualTo(e.value()));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void a_quantity_that_is_left_out_names_the_member_to_give(Example e) {
        Observation seen = observe(e.name(), e.kind(), e.leftOut().apply(new PaperDeck()));
        assertThat(seen).isInstanceOfSatisfying(Observation.Missing.class, m -> {
            assertThat(m.needs()).extracting(n -> n.pointer().value()).containsExactly(e.asksFor());
            assertThat(m.needs())
                    .extracting(Need::what)
                    .allSatisfy(what -> assertThat(what).isNotBlank());
        });
    }

    @Test
    void the_examples_cover_every_quantity_that_can_be_missing() {
        List<String> covered = Stream.concat(examples().map(Example::name), FrameQuantitiesTest.names().stream())
                .distinct()
                .sorted()
                .toList();
        List<String> all = Quantities.all().stream()
                .map(q -> q.description().name())
                .filter(name -> !ALWAYS_GIVEN.contains(name) && !NOT_APPLICABLE_IF_LEFT_OUT.contains(name))
                .sorted()
                .toList();
        assertThat(all).isEqualTo(covered);
    }

    @Test
    void what_a_submission_must_have_is_always_found() {
        PaperDeck deck = new PaperDeck();
        assertThat(value(observe("occupancy", SubjectKind.LEDGERS, deck))).isEqualTo(word("single-dwelling"));
        assertThat(value(observe("fixing kind", SubjectKind.FIXINGS, deck))).isEqualTo(word("screw"));
        assertThat(value(observe("free-standing", SubjectKind.POSTS, deck))).isEqualTo(no());
        assertThat(value(observe("free-standing", SubjectKind.POSTS, deck.without("/platforms/0/ledger"))))
                .isEqualTo(yes());
    }

    /** Of a rise of 175 mm and a going of 250 mm. */
    @Test
    void what_a_stair_must_have_is_always_found() {
        PaperDeck deck = stair(new PaperDeck());
        assertThat(value(observe("stair rise", SubjectKind.STAIRS, deck))).isEqualTo(number(175, MILLIMETRE));
        assertThat(value(observe("stair going", SubjectKind.STAIRS, deck))).isEqualTo(number(250, MILLIMETRE));
        assertThat(value(observe("stair pitch", SubjectKind.STAIRS, deck))).isEqualTo(number(35, DEGREE));
        assertThat(value(observe("twice rise plus going", SubjectKind.STAIRS, deck)))
                .isEqualTo(number(600, MILLIMETRE));
        assertThat(value(observe("risers in a flight", SubjectKind.STAIRS, deck)))
                .isEqualTo(number(5, RATIO));
        assertThat(value(observe("rise of flight", SubjectKind.STAIRS, deck))).isEqualTo(number(875, MILLIMETRE));
        assertThat(value(observe("stair width", SubjectKind.STAIRS, deck))).isEqualTo(number(1000, MILLIMETRE));
        assertThat(value(observe("flight guard present", SubjectKind.STAIRS, deck)))
                .isEqualTo(yes());
    }

    /** 4800 mm by 3600 mm. */
    @Test
    void the_area_of_the_deck_is_that_of_its_platforms() {
        assertThat(value(observe("deck area", SubjectKind.DECK, new PaperDeck())))
                .isEqualTo(number(17.28, SQUARE_METRE_));
    }

    /** Two braces along the beam, one across it, and no ledger. */
    private static PaperDeck braced(PaperDeck deck) {
        return deck.without("/platforms/0/ledger")
                .having(d -> d.withBrace("K1", "P1", 1, 0, 400, 400)
                        .withBrace("K2", "P3", -1, 0, 400, 400)
                        .withBrace("K3", "P1", 0, 1, 400, 400));
    }

    @Test
    void posts_are_unbraced_until_braces_stand_both_ways() {
        PaperDeck oneWay = braced(new PaperDeck()).without("/platforms/0/braces/2");
        assertThat(value(observe("unbraced post height", SubjectKind.POSTS, oneWay)))
                .isEqualTo(number(600, MILLIMETRE));
        assertThat(observe("unbraced post height", SubjectKind.POSTS, braced(new PaperDeck())))
                .isInstanceOf(Observation.NotApplicable.class);
        assertThat(observe("unbraced post height", SubjectKind.POSTS, new PaperDeck()))
                .isInstanceOf(Observation.NotApplicable.class);
    }

    @Test
    void braces_are_counted_only_where_they_alone_hold_the_deck() {
        assertThat(observe("fewest braces", SubjectKind.PLATFORMS, new PaperDeck()))
                .isInstanceOf(Observation.NotApplicable.class);
        assertThat(observe("fewest braces", SubjectKind.PLATFORMS, new PaperDeck().without("/platforms/0/ledger")))
                .isInstanceOf(Observation.NotApplicable.class);
    }

    /** 3600 mm from the wall over a ledger of 4800 mm. */
    @Test
    void the_reach_from_the_wall_is_measured_in_lengths_of_the_ledger() {
        assertThat(value(observe("reach over ledger length", SubjectKind.PLATFORMS, new PaperDeck())))
                .isEqualTo(number(0.75, RATIO));
        assertThat(observe(
                        "reach over ledger length",
                        SubjectKind.PLATFORMS,
                        new PaperDeck().without("/platforms/0/ledger")))
                .isInstanceOf(Observation.NotApplicable.class);
    }

    @Test
    void each_name_stands_for_one_quantity() {
        assertThat(Quantities.all()).extracting(q -> q.description().name()).doesNotHaveDuplicates();
    }

    @Test
    void descriptions_fit_their_type() {
        assertThat(Quantities.all()).extracting(Quantity::description).allSatisfy(d -> {
            assertThat(d.unit().isPresent()).as(d.name()).isEqualTo(d.type() == ValueType.NUMBER);
            assertThat(d.words().isEmpty()).as(d.name()).isEqualTo(d.type() != ValueType.WORD);
            assertThat(d.subjects()).as(d.name()).isNotEmpty();
            assertThat(d.definition()).as(d.name()).endsWith(".");
        });
    }

    @Test
    void every_quantity_answers_for_every_kind_of_subject_that_it_names() {
        PaperDeck deck = stair(new PaperDeck()).having(d -> d.withBrace("K1", "P1", 1, 0, 400, 400));
        for (Quantity quantity : Quantities.all()) {
            for (SubjectKind kind : quantity.description().subjects()) {
                assertThat(quantity.observe(deck.subject(kind), deck.context()))
                        .as(quantity.description().name() + " of " + kind.word())
                        .isNotNull();
            }
        }
    }

    @Test
    void a_quantity_refuses_a_kind_of_subject_that_has_none() {
        PaperDeck deck = new PaperDeck();
        assertThatThrownBy(() -> observe("guard height", SubjectKind.POSTS, deck))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("posts have no guard height; [edges] have");
    }

    @Test
    void a_number_that_was_given_says_where() {
        Observation seen = observe("guard height", SubjectKind.EDGES, new PaperDeck());
        assertThat(((Observation.Found) seen).working())
                .singleElement()
                .satisfies(step -> assertThat(step.from())
                        .extracting(Object::toString)
                        .containsExactly("/platforms/0/guards/0/height"));
    }

    static Observation observe(String name, SubjectKind kind, PaperDeck deck) {
        Quantity quantity = Quantities.all().stream()
                .filter(q -> q.description().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No quantity " + name));
        Subject subject = deck.subject(kind);
        return quantity.observe(subject, deck.context());
    }

    static Value value(Observation seen) {
        assertThat(seen).isInstanceOf(Observation.Found.class);
        return ((Observation.Found) seen).value();
    }

    private static Example example(String name, SubjectKind kind, Value value, String pointer) {
        return new Example(name, kind, value, d -> d, d -> d.without(pointer), pointer);
    }

    private static Example unsurveyed(String name, SubjectKind kind, Value value) {
        return new Example(name, kind, value, d -> d, PaperDeck::unsurveyed, "/site/groundLevels");
    }

    private static Example undescribed(String name, Value value) {
        return new Example(name, SubjectKind.EDGES, value, d -> d, PaperDeck::edgesUndescribed, "/platforms/0/edges");
    }

    private static Example embedded(String name, SubjectKind kind, Value value, String pointer) {
        UnaryOperator<PaperDeck> embedded = d -> d.with("/platforms/0/footings/0/kind", "embedded-post")
                .with("/platforms/0/footings/0/embedment", 600)
                .with("/platforms/0/posts/0/groundEnd", "uncut");
        return new Example(name, kind, value, embedded, d -> embedded.apply(d).without(pointer), pointer);
    }

    private static Example natural(String name, Value value) {
        return new Example(
                name,
                SubjectKind.BOARDS,
                value,
                d -> d.without("/timbers/3/treatment").withJson("/timbers/3/naturalDurability", NATURAL),
                d -> d.without("/timbers/3/treatment"),
                "/timbers/3/treatment");
    }

    private static Example having(
            String name, SubjectKind kind, Value value, UnaryOperator<PaperDeck> given, String pointer) {
        return new Example(name, kind, value, given, d -> given.apply(d).without(pointer), pointer);
    }

    private static Example planning(String name, SubjectKind kind, Value value, String member) {
        return having(name, kind, value, d -> d.having(s -> s.withPlanning("house")), "/site/planning/" + member);
    }

    private static Example ofStair(String name, Value value, String member) {
        return having(name, SubjectKind.STAIRS, value, QuantitiesTest::stair, STAIR + member);
    }

    private static Example statedOfStair(String name, Value value, String member, Object stated) {
        return new Example(
                name,
                SubjectKind.STAIRS,
                value,
                d -> stair(d).with(STAIR + member, stated),
                QuantitiesTest::stair,
                STAIR + member);
    }

    private static Example ofOpenStair(String name, Value value, String member) {
        return having(
                name,
                SubjectKind.STAIRS,
                value,
                d -> stair(d).with(STAIR + "openRisers", true).with(STAIR + "riserOpening", 95),
                STAIR + member);
    }

    private static Example bolted(String name, double value, String member) {
        return having(
                name, SubjectKind.BEAMS, number(value, RATIO), d -> joint(d, "bolt", 12), BEAM + "/joint" + member);
    }

    private static Example ofPlies(String name, Value value) {
        return having(
                name,
                SubjectKind.BEAMS,
                value,
                d -> d.having(s -> s.withPlyFixing(0, "SC", 300, 2)),
                BEAM + "/plyFixing");
    }

    private static Example ofLedger(String name, Value value, String member) {
        return having(name, SubjectKind.LEDGERS, value, d -> ledger(d, "masonry"), LEDGER_FIXINGS + member);
    }

    /** 5 risers of 175 mm with a going of 250 mm, closed, between landings of 1200 mm and 1100 mm. */
    static PaperDeck stair(PaperDeck deck) {
        return deck.having(d -> d.withStair("S1", SampleDeck.line(0, 600, 0, 1600), 5, 175, 250))
                .with(STAIR + "bottomLanding", 1100);
    }

    /** Four fasteners at the sides of each post, with washers of 36 mm by 3 mm, 100 mm inside the post. */
    static PaperDeck joint(PaperDeck deck, String kind, double diameterMm) {
        return deck.with(BEAM + "/seating", "both-sides")
                .having(d -> d.withJoint(0, kind, diameterMm, 4, 2))
                .with(BEAM + "/joint/washerThickness", 3);
    }

    private static PaperDeck ledger(PaperDeck deck, String base) {
        return deck.having(d -> d.withLedgerFixings(base, 12, 400));
    }

    static PaperDeck spaBath(PaperDeck deck) {
        return deck.having(d -> d.withHeavyItem(
                "SPA", "spa-bath", "9 kN", SampleDeck.points(2000, 1000, 4000, 1000, 4000, 3000, 2000, 3000)));
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
