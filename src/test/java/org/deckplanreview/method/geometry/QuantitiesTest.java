package org.deckplanreview.method.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.deckplanreview.measure.MeasureUnit.DEGREE;
import static org.deckplanreview.measure.MeasureUnit.KILOMETRE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.YEAR_;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.submission.Need;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.ValueType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every quantity on {@link PaperDeck}: what it is there, and which member it asks for when that is left out. */
class QuantitiesTest {

    private static final String NATURAL = "{\"heartwoodClass\": 2, \"heartwoodOnly\": true}";
    private static final List<String> NEVER_MISSING =
            List.of("occupancy", "free-standing", "fixing kind", "reach over ledger length", "stair pitch");
    private static final String BOLTS =
            "{\"kind\": \"bolt\", \"diameter\": 12, \"count\": 4, \"rows\": 2, \"washerDiameter\": 42, \"washerThickness\": 6}";
    private static final String SCREWS =
            "{\"kind\": \"screw\", \"diameter\": 12, \"count\": 4, \"rows\": 2, \"penetration\": 72}";
    private static final String PLY_FIXING = "{\"fixing\": \"SC\", \"spacing\": 450, \"rows\": 2}";
    private static final String LEDGER_FIXINGS = "{\"base\": \"masonry\", \"spacing\": 500, \"weathering\": \"gap\"}";

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
                joined("fasteners in joint", number(4, RATIO), BOLTS, ""),
                joined("washer diameter over bolt diameter", number(3.5, RATIO), BOLTS, "/washerDiameter"),
                joined("washer thickness over bolt diameter", number(0.5, RATIO), BOLTS, "/washerThickness"),
                joined("screw penetration over diameter", number(6, RATIO), SCREWS, "/penetration"),
                plied("ply fixing kind", word("screw")),
                plied("ply fixing spacing", number(450, MILLIMETRE)),
                plied("ply fixing rows", number(2, RATIO)),
                fixed("ledger base", word("masonry"), ""),
                fixed("ledger fixing spacing", number(500, MILLIMETRE), "/spacing"),
                fixed("ledger weathering", word("gap"), "/weathering"),
                unsurveyed("ground clearance", SubjectKind.BOARDS, number(600, MILLIMETRE)),
                unsurveyed("ground clearance", SubjectKind.JOISTS, number(600, MILLIMETRE)),
                unsurveyed("ground clearance", SubjectKind.BEAMS, number(600, MILLIMETRE)),
                unsurveyed("ground clearance", SubjectKind.LEDGERS, number(600, MILLIMETRE)),
                example("treated", SubjectKind.BEAMS, yes(), "/timbers/1/treatment"),
                example("use class of treatment", SubjectKind.POSTS, word("UC4"), "/timbers/2/treatment"),
                example("use class of treatment", SubjectKind.LEDGERS, word("UC3.2"), "/timbers/0/treatment"),
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
                        "/protection/fixings/0/thickness"));
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
        Stream<String> elsewhere = StairsAndPlanningTest.examples().stream().map(StairsAndPlanningTest.Example::name);
        List<String> covered = Stream.concat(examples().map(Example::name), elsewhere)
                .distinct()
                .sorted()
                .toList();
        List<String> all = Quantities.all().stream()
                .map(q -> q.description().name())
                .filter(name -> !NEVER_MISSING.contains(name))
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

    /** Two braces along the beam, one across it, and no ledger. */
    private static PaperDeck braced(PaperDeck deck) {
        return deck.without("/platforms/0/ledger")
                .withJson(
                        "/platforms/0/braces",
                        "[" + brace("K1", "P1", "[1, 0]") + "," + brace("K2", "P3", "[-1, 0]") + ","
                                + brace("K3", "P1", "[0, 1]") + "]");
    }

    private static String brace(String id, String post, String direction) {
        return "{\"id\": \"" + id + "\", \"timber\": \"J\", \"post\": \"" + post + "\", \"direction\": " + direction
                + ", \"below\": 400, \"reach\": 400}";
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
    void a_ledger_on_an_unknown_base_asks_what_it_is() {
        PaperDeck deck = new PaperDeck().withJson("/platforms/0/ledger/fixings", "{\"base\": \"unknown\"}");
        assertThat(observe("ledger base", SubjectKind.LEDGERS, deck))
                .isInstanceOfSatisfying(
                        Observation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly("/platforms/0/ledger/fixings/base"));
    }

    @Test
    void joints_and_ply_fixings_are_only_asked_for_where_they_matter() {
        PaperDeck onPosts = new PaperDeck();
        assertThat(observe("fasteners in joint", SubjectKind.BEAMS, onPosts))
                .isInstanceOf(Observation.NotApplicable.class);
        PaperDeck apart = new PaperDeck().with("/platforms/0/beams/0/seating", "both-sides");
        assertThat(observe("ply fixing rows", SubjectKind.BEAMS, apart)).isInstanceOf(Observation.NotApplicable.class);
        PaperDeck screwed = apart.withJson("/platforms/0/beams/0/joint", SCREWS);
        assertThat(observe("washer diameter over bolt diameter", SubjectKind.BEAMS, screwed))
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
        PaperDeck deck = new PaperDeck();
        for (Quantity quantity : Quantities.all()) {
            for (SubjectKind kind : quantity.description().subjects()) {
                if (deck.context().layout().subjects(kind).isEmpty()) {
                    continue;
                }
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

    private static Example joined(String name, Value value, String joint, String member) {
        String pointer = "/platforms/0/beams/0/joint";
        UnaryOperator<PaperDeck> given =
                d -> d.with("/platforms/0/beams/0/seating", "both-sides").withJson(pointer, joint);
        return new Example(
                name, SubjectKind.BEAMS, value, given, d -> given.apply(d).without(pointer + member), pointer + member);
    }

    private static Example plied(String name, Value value) {
        String pointer = "/platforms/0/beams/0/plyFixing";
        return new Example(
                name, SubjectKind.BEAMS, value, d -> d.withJson(pointer, PLY_FIXING), d -> d.without(pointer), pointer);
    }

    private static Example fixed(String name, Value value, String member) {
        String pointer = "/platforms/0/ledger/fixings";
        UnaryOperator<PaperDeck> given = d -> d.withJson(pointer, LEDGER_FIXINGS);
        return new Example(
                name,
                SubjectKind.LEDGERS,
                value,
                given,
                d -> given.apply(d).without(pointer + member),
                pointer + member);
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
