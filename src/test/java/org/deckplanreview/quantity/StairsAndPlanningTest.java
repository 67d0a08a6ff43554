package org.deckplanreview.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Decks;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.TimberParameters;
import org.deckplanreview.submission.BuildingKind;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.Handrails;
import org.deckplanreview.submission.HeavyItemKind;
import org.deckplanreview.submission.Planning;
import org.deckplanreview.submission.Protection;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.StairSides;
import org.deckplanreview.submission.Stating;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.WeedControl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Stairs, access and planning: each quantity found on a deck that describes it, and missing on one that says nothing. The deck is
 * 4 m by 3 m and 855 mm above the ground; the stair has five risers of 171 mm and goings of 250 mm. Expected values by hand.
 */
class StairsAndPlanningTest {

    /** @param asksFor empty where the quantity is never missing */
    record Example(String name, SubjectKind kind, Value value, String asksFor) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static final String STAIR = "/platforms/0/stairs/0";
    private static final String PLANNING = "/site/planning";

    static List<Example> examples() {
        return List.of(
                stair("stair rise", Measure.mm(171), ""),
                stair("stair going", Measure.mm(250), ""),
                stair("twice rise plus going", Measure.mm(592), ""),
                stair("risers in a flight", Measure.of(5, MeasureUnit.RATIO), ""),
                stair("rise of flight", Measure.mm(855), ""),
                stair("stair width", Measure.mm(1000), ""),
                stair("flight guard present", new Flag(true), ""),
                stair("headroom", Measure.mm(2100), ""),
                stair("difference between risers and climb", Measure.mm(0), "/site/groundLevels"),
                stair("difference between risers", Measure.mm(2), STAIR + "/largestRiseDifference"),
                stair("open risers", new Flag(true), STAIR + "/openRisers"),
                stair("tread overlap", Measure.mm(16), STAIR + "/treadOverlap"),
                stair("riser opening", Measure.mm(99), STAIR + "/riserOpening"),
                stair("handrail sides", new Word("both"), STAIR + "/handrails"),
                stair("handrail height", Measure.mm(900), STAIR + "/handrails"),
                stair("top landing to width", Measure.of(1.2, MeasureUnit.RATIO), STAIR + "/topLanding"),
                stair("bottom landing to width", Measure.of(0.9, MeasureUnit.RATIO), STAIR + "/bottomLanding"),
                stair("flight guard height", Measure.mm(900), ""),
                stair("opening in flight guard", Measure.mm(95), ""),
                platform("platform height", Measure.mm(855), "/site/groundLevels"),
                platform("platform height above highest ground", Measure.mm(855), "/site/groundLevels"),
                platform("height with guards", Measure.mm(1755), "/site/groundLevels"),
                platform("building kind", new Word("house"), PLANNING + "/building"),
                platform("listed building", new Flag(false), PLANNING + "/listed"),
                platform("protected area", new Flag(true), PLANNING + "/protectedArea"),
                platform("beyond principal elevation", new Flag(false), PLANNING + "/beyondPrincipalElevation"),
                platform("garden covered", Measure.of(30, MeasureUnit.PERCENT_), PLANNING + "/gardenCovered"),
                platform("distance to boundary", Measure.mm(2000), PLANNING + "/boundaryDistance"),
                platform("over a room", new Flag(false), "/platforms/0/overRoom"),
                deck("deck area", Measure.of(12, MeasureUnit.SQUARE_METRE_), ""),
                deck("spa bath", new Flag(true), "/use/heavyItems/0/kind"),
                deck("cross-ventilated", new Flag(true), "/protection/crossVentilated"),
                deck("weed control", new Word("gravel"), "/protection/weedControl"));
    }

    static Stream<Example> missable() {
        return examples().stream().filter(e -> !e.asksFor().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void a_quantity_is_found_where_it_is_described(Example e) {
        Observation seen = observe(e.name(), e.kind(), described());
        assertThat(((Observation.Found) seen).value()).isEqualTo(e.value());
    }

    @ParameterizedTest
    @MethodSource("missable")
    void a_quantity_that_is_left_out_names_the_member_to_give(Example e) {
        Observation seen = observe(e.name(), e.kind(), silent());
        assertThat(((Observation.Missing) seen).needs())
                .extracting(n -> n.pointer().value())
                .containsExactly(e.asksFor());
    }

    @Test
    void the_pitch_is_the_angle_of_rise_over_going() {
        Observation seen = observe("stair pitch", SubjectKind.STAIRS, described());
        double degrees = ((Measure) ((Observation.Found) seen).value()).value();
        assertThat(degrees).as("arctan (171 / 250)").isCloseTo(34.372, within(1e-3));
    }

    @Test
    void what_a_stair_does_not_have_does_not_apply() {
        assertThat(observe("headroom", SubjectKind.STAIRS, silent())).isInstanceOf(Observation.NotApplicable.class);
        for (String guard : List.of("flight guard height", "opening in flight guard")) {
            assertThat(observe(guard, SubjectKind.STAIRS, silent())).isInstanceOf(Observation.NotApplicable.class);
        }
    }

    @Test
    void closed_risers_have_neither_overlap_nor_opening() {
        Decks closed = base().stair(stair(Optional.of(false), Optional.of(StairSides.NONE), true));
        for (String name : List.of("tread overlap", "riser opening", "handrail height")) {
            assertThat(observe(name, SubjectKind.STAIRS, closed)).isInstanceOf(Observation.NotApplicable.class);
        }
    }

    @Test
    void a_deck_without_heavy_items_has_no_spa_bath() {
        assertThat(((Observation.Found) observe("spa bath", SubjectKind.DECK, base())).value())
                .isEqualTo(new Flag(false));
    }

    private static Example stair(String name, Value value, String asksFor) {
        return new Example(name, SubjectKind.STAIRS, value, asksFor);
    }

    private static Example platform(String name, Value value, String asksFor) {
        return new Example(name, SubjectKind.PLATFORMS, value, asksFor);
    }

    private static Example deck(String name, Value value, String asksFor) {
        return new Example(name, SubjectKind.DECK, value, asksFor);
    }

    private static Observation observe(String name, SubjectKind kind, Decks decks) {
        Layout layout = decks.layout();
        return Quantities.all().stream()
                .filter(q -> q.description().name().equals(name))
                .findFirst()
                .orElseThrow()
                .observe(
                        layout.subjects(kind).get(0),
                        new ReviewContext(layout, TimberParameters.NO_LOADS, List.of(Derived.known("A"))));
    }

    private static Decks base() {
        return Decks.rectangle(4000, 3000).level(0, 0, 855).noFall();
    }

    private static Decks silent() {
        return base().heavyItem("h", Optional.empty()).stair(stair(Optional.empty(), Optional.empty(), false));
    }

    private static Decks described() {
        return base().levelGround(0)
                .guard(Stating.a(Guard.class)
                        .with("id", "g")
                        .with("height", new Length(900))
                        .with("largestOpening", new Length(95))
                        .made())
                .stair(stair(Optional.of(true), Optional.of(StairSides.BOTH), true))
                .heavyItem("p", Optional.of(HeavyItemKind.PLANTER))
                .heavyItem("s", Optional.of(HeavyItemKind.SPA_BATH))
                .overRoom(false)
                .protection(
                        new Protection(Optional.empty(), List.of(), Optional.of(WeedControl.GRAVEL), Optional.of(true)))
                .planning(new Planning(
                        Optional.of(BuildingKind.HOUSE),
                        Optional.of(false),
                        Optional.of(true),
                        Optional.of(false),
                        Optional.of(Measure.of(30, MeasureUnit.PERCENT_)),
                        Optional.of(new Length(2000))));
    }

    private static Stair stair(Optional<Boolean> open, Optional<StairSides> rails, boolean described) {
        return Stating.a(Stair.class)
                .with("id", "S1")
                .with("line", Decks.line(1000, 0, 2000, 0))
                .with("risers", 5)
                .with("rise", new Length(171))
                .with("going", new Length(250))
                .with("largestRiseDifference", length(described, 2))
                .with("openRisers", open)
                .with("treadOverlap", length(described, 16))
                .with("riserOpening", length(described, 99))
                .with(
                        "handrails",
                        rails.map(s -> Stating.a(Handrails.class)
                                .with("sides", s)
                                .with("height", new Length(900))
                                .made()))
                .with("topLanding", length(described, 1200))
                .with("bottomLanding", length(described, 900))
                .with("headroom", length(described, 2100))
                .with("guard", described ? Optional.of("g") : Optional.empty())
                .with("guardTriangle", length(described, 140))
                .made();
    }

    private static Optional<Length> length(boolean described, double mm) {
        return described ? Optional.of(new Length(mm)) : Optional.empty();
    }
}
