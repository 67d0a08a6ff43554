package org.deckplanreview.quantity.footing;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.CarriedArea;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.FrameLevels;
import org.deckplanreview.layout.GapOverBlock;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.PostBase;
import org.deckplanreview.submission.PostEnd;
import org.deckplanreview.submission.PostTop;
import org.deckplanreview.submission.SubjectKind;

/** What carries the deck on the ground. */
public final class PostsAndFootings {

    private static final List<SubjectKind> POSTS = List.of(SubjectKind.POSTS);
    private static final List<SubjectKind> FOOTINGS = List.of(SubjectKind.FOOTINGS);
    private static final List<SubjectKind> BOTH = List.of(SubjectKind.POSTS, SubjectKind.FOOTINGS);

    private PostsAndFootings() {}

    public static List<Quantity> quantities() {
        return List.of(
                word(
                        "post top",
                        PostTop.values(),
                        PostPlace.class,
                        POSTS,
                        "How the post's upper end is kept dry: cut to a slope, capped, covered by what it carries, or flat.",
                        (post, context) -> Observations.word(
                                post.post().top(),
                                post.pointer().child("top"),
                                "the upper end of " + post.label() + ": sloped, capped, covered or flat")),
                word(
                        "ground end of post",
                        PostEnd.values(),
                        PostPlace.class,
                        POSTS,
                        "The end of the post that stands in ground or concrete, and whether it was cut after treatment.",
                        (post, context) -> groundEnd(post)),
                number(
                        "post height",
                        MeasureUnit.MILLIMETRE,
                        PostPlace.class,
                        POSTS,
                        "The clear height of the post from the ground, or the pad's top, to its upper end.",
                        (post, context) -> Observations.derived(
                                post.heightMm(), "h_post", MeasureUnit.MILLIMETRE, "clear height of the post")),
                number(
                        "post length",
                        MeasureUnit.MILLIMETRE,
                        PostPlace.class,
                        POSTS,
                        "The whole length of the post, with the part in ground or concrete.",
                        (post, context) -> Observations.derived(
                                post.topLevelMm().with(post.bottomLevelMm(), (top, bottom) -> top - bottom),
                                "l_post",
                                MeasureUnit.MILLIMETRE,
                                "whole length of the post")),
                flag(
                        "free-standing",
                        Subject.class,
                        List.of(SubjectKind.PLATFORMS, SubjectKind.POSTS, SubjectKind.FOOTINGS, SubjectKind.STAIRS),
                        "Whether no ledger ties the platform to a wall.",
                        (subject, context) -> Observations.flag(
                                context.layout().platformOf(subject).ledger().isEmpty(), "")),
                word(
                        "footing kind",
                        FootingKind.values(),
                        Subject.class,
                        BOTH,
                        "Whether the footing is a pad that carries the post on top, concrete in which it is embedded, or a block under"
                                + " joists.",
                        (subject, context) -> ofFooting(
                                subject, f -> Observations.word(f.footing().kind(), ""))),
                flag(
                        "stands on blocks",
                        Subject.class,
                        List.of(SubjectKind.DECK, SubjectKind.PLATFORMS, SubjectKind.EDGES, SubjectKind.JOISTS),
                        "Whether joists lie on blocks at the ground without beam or post; of the deck, those of any platform.",
                        (subject, context) -> Observations.flag(onBlocks(subject, context), "")),
                flag(
                        "beams or posts",
                        PlatformLayout.class,
                        List.of(SubjectKind.PLATFORMS),
                        "Whether the platform has a beam or a post.",
                        (platform, context) -> Observations.flag(
                                !platform.beams().isEmpty() || !platform.posts().isEmpty(), "")),
                number(
                        "gap over block",
                        MeasureUnit.MILLIMETRE,
                        FootingPlace.class,
                        FOOTINGS,
                        "The distance, up or down, between the top of a block and the underside of the joists at its middle.",
                        (footing, context) -> footing.isBlock()
                                ? Observations.derived(
                                        GapOverBlock.gapMm(context.layout(), footing)
                                                .map(Math::abs),
                                        "g",
                                        MeasureUnit.MILLIMETRE,
                                        "distance between the block's top and the joists")
                                : Observations.notApplicable("it is no block")),
                number(
                        "embedment",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        BOTH,
                        "The depth to which an embedded post stands below the ground.",
                        (subject, context) -> ofFooting(subject, PostsAndFootings::embedment)),
                number(
                        "footing depth",
                        MeasureUnit.MILLIMETRE,
                        FootingPlace.class,
                        FOOTINGS,
                        "The depth from the ground to the underside of the footing.",
                        (footing, context) -> Observations.length(
                                footing.footing().depth(),
                                "d",
                                "the depth of " + footing.label() + " from the ground to its underside",
                                footing.pointer().child("depth"))),
                number(
                        "footing top above ground",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        BOTH,
                        "The height of the concrete's top above the ground.",
                        (subject, context) -> ofFooting(subject, PostsAndFootings::topAboveGround)),
                flag(
                        "footing top sheds water",
                        FootingPlace.class,
                        FOOTINGS,
                        "Whether the concrete's top is shaped so that water runs away from the post.",
                        (footing, context) -> Observations.flag(
                                footing.footing().topShedsWater(),
                                footing.pointer().child("topShedsWater"),
                                "whether the top of " + footing.label() + " is shaped to shed water")),
                word(
                        "post base",
                        PostBase.values(),
                        PostPlace.class,
                        POSTS,
                        "What keeps the lower end of the post from moving sideways.",
                        (post, context) -> Observations.word(
                                post.post().base(),
                                post.pointer().child("base"),
                                "what holds the lower end of " + post.label() + ": connector, embedded or none")),
                number(
                        "post height under beam",
                        MeasureUnit.MILLIMETRE,
                        PostPlace.class,
                        POSTS,
                        "The height of the post from the top of its footing or pier to the underside of the lowest beam that it"
                                + " carries.",
                        PostsAndFootings::heightUnderBeam),
                number(
                        "tributary area",
                        MeasureUnit.SQUARE_METRE_,
                        Subject.class,
                        BOTH,
                        "The area of deck that the post or footing carries, with borders midway between the supports of joists"
                                + " and midway between the posts of beams, overhangs added to the last support.",
                        (subject, context) -> Observations.derived(
                                tributaryArea(subject, context),
                                "A",
                                MeasureUnit.SQUARE_METRE_,
                                "area of deck carried")),
                word(
                        "footing shape",
                        FootingShape.values(),
                        FootingPlace.class,
                        FOOTINGS,
                        "The shape of the footing in plan.",
                        (footing, context) ->
                                Observations.word(footing.footing().shape(), "")),
                number(
                        "footing side",
                        MeasureUnit.MILLIMETRE,
                        FootingPlace.class,
                        FOOTINGS,
                        "The smaller side in plan of a rectangular footing.",
                        (footing, context) -> ofShape(
                                footing,
                                FootingShape.RECTANGULAR,
                                "b",
                                Math.min(
                                        footing.footing().breadth().mm(),
                                        footing.footing()
                                                .length()
                                                .orElse(footing.footing().breadth())
                                                .mm()),
                                "smaller side of the footing")),
                number(
                        "footing diameter",
                        MeasureUnit.MILLIMETRE,
                        FootingPlace.class,
                        FOOTINGS,
                        "The diameter of a round footing.",
                        (footing, context) -> ofShape(
                                footing,
                                FootingShape.ROUND,
                                "d",
                                footing.footing().breadth().mm(),
                                "diameter of the footing")),
                number(
                        "footing thickness",
                        MeasureUnit.MILLIMETRE,
                        FootingPlace.class,
                        FOOTINGS,
                        "The thickness of the footing's concrete.",
                        (footing, context) -> Observations.length(
                                footing.footing().thickness(),
                                "t",
                                "the thickness of the concrete of " + footing.label(),
                                footing.pointer().child("thickness"))),
                flag(
                        "frost protected",
                        FootingPlace.class,
                        FOOTINGS,
                        "Whether the footing is built as a frost-protected shallow foundation or stands on solid rock.",
                        (footing, context) -> Observations.flag(
                                footing.footing().frostProtected(),
                                footing.pointer().child("frostProtected"),
                                "whether " + footing.label()
                                        + " is a frost-protected shallow foundation or stands on solid rock")));
    }

    private static boolean onBlocks(Subject subject, ReviewContext context) {
        return subject.kind() == SubjectKind.DECK
                ? context.layout().platforms().stream().anyMatch(PlatformLayout::isOnBlocks)
                : context.layout().platformOf(subject).isOnBlocks();
    }

    private static Observation heightUnderBeam(PostPlace post, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(post);
        FrameLevels levels = FrameLevels.of(context.layout(), platform);
        List<BeamLine> beams = platform.beams().stream()
                .filter(b -> post.beams().contains(b.id()))
                .toList();
        Derived<Double> underside = beams.isEmpty()
                ? Derived.missing(platform.pointer().child("beams"), "the beam that " + post.label() + " carries")
                : Derived.known(Double.POSITIVE_INFINITY);
        for (BeamLine beam : beams) {
            underside = underside.with(levels.undersideMm(beam, post.post().at()), Math::min);
        }
        Derived<FootingPlace> footing =
                Derived.of(post.footing(), post.pointer().child("footing"), "the footing under " + post.label());
        Derived<Double> top = footing.flatMap(f -> Derived.of(
                        f.footing().topAboveGround(),
                        f.pointer().child("topAboveGround"),
                        "the height of the concrete's top above the ground at " + f.label() + ", a length"))
                .with(post.groundLevelMm(), (above, ground) -> ground + above.mm());
        return Observations.derived(
                underside.with(top, (beam, concrete) -> beam - concrete),
                "h_post",
                MeasureUnit.MILLIMETRE,
                "height of the post from its footing to the beam's underside");
    }

    private static Derived<Double> tributaryArea(Subject subject, ReviewContext context) {
        CarriedArea areas = new CarriedArea(context.layout().platformOf(subject));
        Derived<Double> mm2 = subject instanceof FootingPlace footing
                ? areas.ofFootingMm2(footing)
                : areas.ofPostMm2((PostPlace) subject);
        return mm2.map(a -> MeasureUnit.SQUARE_MILLIMETRE.convert(a, MeasureUnit.SQUARE_METRE_));
    }

    private static Observation ofShape(
            FootingPlace footing, FootingShape shape, String symbol, double mm, String meaning) {
        return footing.footing().shape() == shape
                ? Observations.number(
                        symbol,
                        mm,
                        MeasureUnit.MILLIMETRE,
                        meaning,
                        "",
                        footing.pointer().child("breadth"))
                : Observations.notApplicable(
                        "the footing is " + footing.footing().shape().word());
    }

    private static Observation groundEnd(PostPlace post) {
        Optional<PostEnd> stated = post.post().groundEnd();
        Optional<FootingKind> footing = post.footing().map(f -> f.footing().kind());
        if (stated.isEmpty() && footing.filter(FootingKind.PAD::equals).isPresent()) {
            return Observations.word(PostEnd.NOT_IN_GROUND, "the post stands on a pad");
        }
        boolean contradicted = stated.filter(PostEnd.NOT_IN_GROUND::equals).isPresent()
                && footing.filter(FootingKind.EMBEDDED_POST::equals).isPresent();
        return Observations.word(
                contradicted ? Optional.empty() : stated,
                post.pointer().child("groundEnd"),
                "the end of " + post.label() + " in ground or concrete: uncut, cut-and-treated or cut-untreated");
    }

    private static Observation topAboveGround(FootingPlace footing) {
        return Observations.length(
                footing.footing().topAboveGround(),
                "h_top",
                "the height of the concrete's top above the ground at " + footing.label(),
                footing.pointer().child("topAboveGround"));
    }

    private static Observation embedment(FootingPlace footing) {
        return footing.footing().kind() != FootingKind.EMBEDDED_POST
                ? Observations.notApplicable("no post is embedded in it")
                : Observations.length(
                        footing.footing().embedment(),
                        "l_e",
                        "the depth of the post below the ground in " + footing.label(),
                        footing.pointer().child("embedment"));
    }

    private static Observation ofFooting(Subject subject, Function<FootingPlace, Observation> observing) {
        if (subject instanceof FootingPlace footing) {
            return observing.apply(footing);
        }
        PostPlace post = (PostPlace) subject;
        return post.footing()
                .map(observing)
                .orElseGet(() ->
                        Observations.missing(post.pointer().child("footing"), "the footing under " + post.label()));
    }
}
