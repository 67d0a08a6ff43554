package org.deckplanreview.quantity.site;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.risingWord;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Adjoining;
import org.deckplanreview.layout.Overlap;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Occupancy;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.Soil;
import org.deckplanreview.submission.SoilClass;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.VolumeChange;

/** What every part of the deck shares: who uses it, how high it stands, on what ground and how near to the sea. */
public final class UseAndSite {

    private static final Pointer USE = Pointer.of("/use");
    private static final Pointer SITE = Pointer.of("/site");
    private static final Pointer SOIL = SITE.child("soil");
    private static final List<SubjectKind> EVERY_KIND = List.of(SubjectKind.values());
    private static final List<SubjectKind> ON_THE_GROUND =
            List.of(SubjectKind.DECK, SubjectKind.PLATFORMS, SubjectKind.POSTS, SubjectKind.FOOTINGS);

    private UseAndSite() {}

    public static List<Quantity> quantities() {
        return List.of(
                word(
                        "occupancy",
                        Occupancy.values(),
                        Subject.class,
                        EVERY_KIND,
                        "Who uses the deck: the people of one dwelling, of several, or the public.",
                        (subject, context) ->
                                Observations.word(context.submission().use().occupancy(), "")),
                flag(
                        "young children",
                        Subject.class,
                        EVERY_KIND,
                        "Whether children under five may use the deck.",
                        (subject, context) -> Observations.flag(
                                context.submission().use().youngChildren(),
                                USE.child("youngChildren"),
                                "whether children under five may use the deck")),
                number(
                        "largest drop",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        EVERY_KIND,
                        "The largest height of the platform's boards above the ground, or above another platform's boards,"
                                + " beside any edge that is not against a wall; of the deck and of fixings, over all platforms.",
                        UseAndSite::largestDrop),
                word(
                        "soil class",
                        SoilClass.values(),
                        Subject.class,
                        ON_THE_GROUND,
                        "The ground under the footings, as an investigation or a careful look names it.",
                        (subject, context) -> Observations.word(
                                soil(context).flatMap(Soil::soilClass),
                                SOIL.child("soilClass"),
                                "the class of the soil under the footings, for example firm-clay")),
                risingWord(
                        "volume change",
                        VolumeChange.values(),
                        Subject.class,
                        ON_THE_GROUND,
                        "How much the soil shrinks and swells with its moisture; none for gravel and sand.",
                        UseAndSite::volumeChange),
                flag(
                        "trees nearby",
                        Subject.class,
                        ON_THE_GROUND,
                        "Whether trees stand, or stood, so near that their roots dry the soil under the footings.",
                        (subject, context) -> Observations.flag(
                                soil(context).flatMap(Soil::treesNearby),
                                SOIL.child("treesNearby"),
                                "whether trees stand, or stood, near the footings")),
                number(
                        "frost depth",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        ON_THE_GROUND,
                        "The depth that frost reaches, where the local authority states one.",
                        (subject, context) -> Observations.length(
                                site(context).frostDepth(),
                                "d_frost",
                                "the frost depth that the local authority states",
                                SITE.child("frostDepth"))),
                number(
                        "bearing resistance",
                        MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                        Subject.class,
                        ON_THE_GROUND,
                        "The pressure that an investigation allows on the soil under service loads.",
                        (subject, context) -> Observations.measure(
                                soil(context).flatMap(Soil::bearingResistance),
                                "q",
                                MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                                "the bearing resistance that an investigation states",
                                SOIL.child("bearingResistance"))),
                number(
                        "distance to coast",
                        MeasureUnit.KILOMETRE,
                        Subject.class,
                        EVERY_KIND,
                        "The distance from the site to the sea.",
                        (subject, context) -> Observations.measure(
                                site(context).coastDistance(),
                                "l_coast",
                                MeasureUnit.KILOMETRE,
                                "the distance from the site to the sea",
                                SITE.child("coastDistance"))),
                number(
                        "ground snow load",
                        MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                        Subject.class,
                        EVERY_KIND,
                        "The snow load on the ground at the site.",
                        (subject, context) -> Observations.measure(
                                site(context).groundSnowLoad(),
                                "p_g",
                                MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                                "the snow load on the ground at the site",
                                SITE.child("groundSnowLoad"))),
                number(
                        "deck live load",
                        MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                        Subject.class,
                        EVERY_KIND,
                        "The uniform imposed load that the review puts on the platform, the edition's or a larger one that the"
                                + " design states; of the deck and of fixings, the largest of all platforms.",
                        UseAndSite::liveLoad),
                flag(
                        "roof over deck",
                        Subject.class,
                        EVERY_KIND,
                        "Whether a roof stands on the deck or on its posts.",
                        (subject, context) -> Observations.flag(
                                context.submission().use().roofOver(),
                                USE.child("roofOver"),
                                "whether a roof stands on the deck or on its posts")),
                flag(
                        "roof stated",
                        Subject.class,
                        EVERY_KIND,
                        "Whether the submission says that a roof stands on the deck or on its posts; no where it says nothing.",
                        (subject, context) -> Observations.flag(
                                context.submission().use().roofOver().orElse(false), "")),
                flag(
                        "room below stated",
                        Subject.class,
                        EVERY_KIND,
                        "Whether the submission says that a room lies under the platform; of the deck and of fixings, under any;"
                                + " no where it says nothing.",
                        (subject, context) -> Observations.flag(
                                platforms(subject, context).stream()
                                        .anyMatch(p -> p.platform().overRoom().orElse(false)),
                                "")),
                flag(
                        "platform over another",
                        Subject.class,
                        EVERY_KIND,
                        "Whether the platform lies over or under another in plan; of the deck and of fixings, whether any does.",
                        (subject, context) -> Observations.flag(
                                platforms(subject, context).stream()
                                        .anyMatch(p -> Overlap.ofPlatforms(context.submission(), p.platformIndex())),
                                "")),
                flag(
                        "heavy item on platform",
                        Subject.class,
                        EVERY_KIND,
                        "Whether a heavy item, such as a spa bath or a planter, stands on the platform; of the deck and of"
                                + " fixings, on any.",
                        (subject, context) -> Observations.flag(
                                platforms(subject, context).stream()
                                        .anyMatch(p -> Overlap.ofHeavyItems(context.submission(), p.platformIndex())),
                                "")));
    }

    private static Observation largestDrop(Subject subject, ReviewContext context) {
        Derived<Double> largest = Derived.known(0.0);
        for (PlatformLayout platform : platforms(subject, context)) {
            for (int joined : Adjoining.of(context.submission(), platform.platformIndex())) {
                largest = largest.with(context.layout().platforms().get(joined).largestDropMm(), Math::max);
            }
        }
        return Observations.derived(
                largest, "h_drop", MeasureUnit.MILLIMETRE, "largest height of the boards above what lies beside them");
    }

    private static Observation liveLoad(Subject subject, ReviewContext context) {
        Derived<Double> largest = Derived.known(0.0);
        for (PlatformLayout platform : platforms(subject, context)) {
            largest = largest.with(context.loadPath().imposedKNPerM2(platform.platformIndex()), Math::max);
        }
        return Observations.derived(
                largest, "q", MeasureUnit.KILONEWTON_PER_SQUARE_METRE, "uniform imposed load on the deck");
    }

    private static List<PlatformLayout> platforms(Subject subject, ReviewContext context) {
        boolean wholeDeck = subject.kind() == SubjectKind.DECK || subject.kind() == SubjectKind.FIXINGS;
        return wholeDeck
                ? context.layout().platforms()
                : List.of(context.layout().platformOf(subject));
    }

    private static Observation volumeChange(Subject subject, ReviewContext context) {
        Optional<VolumeChange> stated = soil(context).flatMap(Soil::volumeChange);
        if (stated.isEmpty()
                && soil(context)
                        .flatMap(Soil::soilClass)
                        .filter(UseAndSite::isGranular)
                        .isPresent()) {
            return Observations.word(VolumeChange.NONE, "gravel and sand do not shrink");
        }
        return Observations.word(
                stated,
                SOIL.child("volumeChange"),
                "the volume change potential of the soil: none, low, medium or high");
    }

    private static boolean isGranular(SoilClass soil) {
        return switch (soil) {
            case DENSE_GRAVEL, MEDIUM_DENSE_GRAVEL, LOOSE_GRAVEL, COMPACT_SAND, MEDIUM_DENSE_SAND, LOOSE_SAND -> true;
            case HARD_CLAY, STIFF_CLAY, FIRM_CLAY, SOFT_CLAY, MADE_GROUND -> false;
        };
    }

    private static Site site(ReviewContext context) {
        return context.submission().site();
    }

    private static Optional<Soil> soil(ReviewContext context) {
        return site(context).soil();
    }
}
