package org.deckplanreview.quantity.site;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Deck;
import org.deckplanreview.layout.Drop;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.GroundBesideEdge;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.BuildingKind;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.HeavyItemKind;
import org.deckplanreview.submission.Planning;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.WeedControl;

/** What decides whom to ask before building, and what lies on and under the deck. */
public final class AccessAndPlanning {
    private static final Formula TOTAL_HEIGHT = Formula.of("H = h + h_guard", MeasureUnit.MILLIMETRE, "");

    private static final List<SubjectKind> DECK = List.of(SubjectKind.DECK);
    private static final List<SubjectKind> PLATFORMS = List.of(SubjectKind.PLATFORMS);
    private static final List<SubjectKind> BOTH = List.of(SubjectKind.DECK, SubjectKind.PLATFORMS);
    private static final Pointer PLANNING = Pointer.of("/site/planning");
    private static final Pointer PROTECTION = Pointer.of("/protection");
    private static final Pointer HEAVY_ITEMS = Pointer.of("/use/heavyItems");

    private AccessAndPlanning() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "platform height",
                        MeasureUnit.MILLIMETRE,
                        PlatformLayout.class,
                        PLATFORMS,
                        "The largest height of the platform's boards above the ground anywhere along its outline, walls"
                                + " included.",
                        (platform, context) -> Observations.derived(
                                heightMm(platform),
                                "h",
                                MeasureUnit.MILLIMETRE,
                                "largest height of the boards above the ground")),
                number(
                        "platform height above highest ground",
                        MeasureUnit.MILLIMETRE,
                        PlatformLayout.class,
                        PLATFORMS,
                        "The height of the highest place of the platform's boards above the highest ground along its"
                                + " outline.",
                        (platform, context) -> Observations.derived(
                                GroundBesideEdge.heightAboveHighestMm(context.layout(), platform),
                                "h",
                                MeasureUnit.MILLIMETRE,
                                "height of the boards above the highest ground beside them")),
                number(
                        "height with guards",
                        MeasureUnit.MILLIMETRE,
                        PlatformLayout.class,
                        PLATFORMS,
                        "The platform height with the highest of its guards on top.",
                        (platform, context) -> heightWithGuards(platform)),
                number(
                        "deck area",
                        MeasureUnit.SQUARE_METRE_,
                        Deck.class,
                        DECK,
                        "The area of all platforms together, in plan.",
                        (deck, context) -> Observations.number(
                                "A",
                                MeasureUnit.SQUARE_MILLIMETRE.convert(
                                        context.layout().platforms().stream()
                                                .mapToDouble(PlatformLayout::areaMm2)
                                                .sum(),
                                        MeasureUnit.SQUARE_METRE_),
                                MeasureUnit.SQUARE_METRE_,
                                "area of all platforms",
                                "",
                                Pointer.of("/platforms"))),
                word(
                        "building kind",
                        BuildingKind.values(),
                        Subject.class,
                        BOTH,
                        "The building that the deck belongs to.",
                        (subject, context) -> Observations.word(
                                planning(context).flatMap(Planning::building),
                                PLANNING.child("building"),
                                "the building that the deck belongs to: house, flat or other")),
                planningFlag(
                        "listed building",
                        "Whether the building, or one on whose ground the deck stands, is listed.",
                        Planning::listed,
                        "listed",
                        "whether the building is listed"),
                planningFlag(
                        "protected area",
                        "Whether the site lies in a conservation area, national park or the like.",
                        Planning::protectedArea,
                        "protectedArea",
                        "whether the site lies in a conservation area, national park or the like"),
                planningFlag(
                        "beyond principal elevation",
                        "Whether any part of the deck lies forward of the building's principal elevation.",
                        Planning::beyondPrincipalElevation,
                        "beyondPrincipalElevation",
                        "whether the deck lies forward of the building's principal elevation"),
                number(
                        "garden covered",
                        MeasureUnit.PERCENT_,
                        Subject.class,
                        BOTH,
                        "The part of the garden that the deck and all other additions cover.",
                        (subject, context) -> Observations.measure(
                                planning(context).flatMap(Planning::gardenCovered),
                                "k",
                                MeasureUnit.PERCENT_,
                                "the part of the garden that the deck and all other additions cover",
                                PLANNING.child("gardenCovered"))),
                number(
                        "distance to boundary",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        BOTH,
                        "The distance from the deck to the nearest boundary of the site.",
                        (subject, context) -> Observations.length(
                                planning(context).flatMap(Planning::boundaryDistance),
                                "l_b",
                                "the distance from the deck to the nearest boundary",
                                PLANNING.child("boundaryDistance"))),
                flag(
                        "spa bath",
                        Deck.class,
                        DECK,
                        "Whether a spa bath stands on the deck.",
                        (deck, context) -> spaBath(context.submission().use().heavyItems())),
                flag(
                        "over a room",
                        PlatformLayout.class,
                        PLATFORMS,
                        "Whether a room lies under the platform.",
                        (platform, context) -> Observations.flag(
                                platform.platform().overRoom(),
                                platform.pointer().child("overRoom"),
                                "whether a room lies under " + platform.label())),
                flag(
                        "cross-ventilated",
                        Deck.class,
                        DECK,
                        "Whether air passes under the frame from side to side.",
                        (deck, context) -> Observations.flag(
                                context.submission().protection().crossVentilated(),
                                PROTECTION.child("crossVentilated"),
                                "whether air passes under the frame from side to side")),
                word(
                        "weed control",
                        WeedControl.values(),
                        Deck.class,
                        DECK,
                        "What keeps plants from growing under the deck.",
                        (deck, context) -> Observations.word(
                                context.submission().protection().weedControl(),
                                PROTECTION.child("weedControl"),
                                "what keeps plants from growing under the deck: membrane, gravel, membrane-and-gravel,"
                                        + " paved or none")));
    }

    private static Quantity planningFlag(
            String name,
            String definition,
            Function<Planning, Optional<Boolean>> member,
            String memberName,
            String what) {
        return flag(
                name,
                Subject.class,
                BOTH,
                definition,
                (subject, context) ->
                        Observations.flag(planning(context).flatMap(member), PLANNING.child(memberName), what));
    }

    private static Optional<Planning> planning(ReviewContext context) {
        return context.submission().site().planning();
    }

    private static Derived<Double> heightMm(PlatformLayout platform) {
        List<Need> needs = new ArrayList<>();
        double largest = Double.NEGATIVE_INFINITY;
        for (EdgeRun edge : platform.edges()) {
            needs.addAll(edge.drop().needs());
            largest = Math.max(
                    largest, edge.drop().optional().map(Drop::largestMm).orElse(Double.NEGATIVE_INFINITY));
        }
        return needs.isEmpty() ? Derived.known(largest) : Derived.missing(needs);
    }

    private static Observation heightWithGuards(PlatformLayout platform) {
        Derived<Double> platformHeight = heightMm(platform);
        List<Need> needs = new ArrayList<>(platformHeight.needs());
        double highest = 0;
        Pointer at = platform.pointer().child("guards");
        List<Guard> guards = platform.platform().guards();
        for (int i = 0; i < guards.size(); i++) {
            Optional<Length> height = guards.get(i).height();
            if (height.isEmpty()) {
                needs.add(new Need(
                        at.child(i).child("height"),
                        "the height of " + guards.get(i).displayLabel() + " above the boards, a length"));
            }
            highest = Math.max(highest, height.map(Length::mm).orElse(0.0));
        }
        if (!needs.isEmpty()) {
            return Observations.missing(needs.stream().distinct().sorted().toList());
        }
        Sheet w = Sheet.blank();
        double h = w.given(
                "h", platformHeight.get(), MeasureUnit.MILLIMETRE, "largest height of the boards above the ground", "");
        double guard = w.given("h_guard", highest, MeasureUnit.MILLIMETRE, "height of the highest guard", "", at);
        double total = w.calculate(TOTAL_HEIGHT);
        return new Observation.Found(Measure.mm(total), "", w.steps());
    }

    /** One item of unknown kind may be a spa bath; one that is a spa bath decides. */
    private static Observation spaBath(List<HeavyItem> items) {
        List<Need> needs = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Optional<HeavyItemKind> kind = items.get(i).kind();
            if (kind.filter(HeavyItemKind.SPA_BATH::equals).isPresent()) {
                return Observations.flag(
                        true, items.get(i).label().orElse(items.get(i).id()));
            }
            if (kind.isEmpty()) {
                needs.add(new Need(
                        HEAVY_ITEMS.child(i).child("kind"),
                        "what " + items.get(i).label().orElse(items.get(i).id()) + " is: spa-bath, planter or other"));
            }
        }
        return needs.isEmpty() ? Observations.flag(false, "") : Observations.missing(needs);
    }
}
