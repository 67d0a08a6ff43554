package org.deckplanreview.method.geometry;

import static org.deckplanreview.method.geometry.DescribedQuantity.flag;
import static org.deckplanreview.method.geometry.DescribedQuantity.number;
import static org.deckplanreview.method.geometry.DescribedQuantity.word;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.PostEnd;
import org.deckplanreview.submission.PostTop;
import org.deckplanreview.submission.SubjectKind;

/** What carries the deck on the ground. */
final class PostsAndFootings {

    private static final List<SubjectKind> POSTS = List.of(SubjectKind.POSTS);
    private static final List<SubjectKind> FOOTINGS = List.of(SubjectKind.FOOTINGS);
    private static final List<SubjectKind> BOTH = List.of(SubjectKind.POSTS, SubjectKind.FOOTINGS);

    private PostsAndFootings() {}

    static List<Quantity> quantities() {
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
                        List.of(SubjectKind.PLATFORMS, SubjectKind.POSTS, SubjectKind.FOOTINGS),
                        "Whether no ledger ties the platform to a wall.",
                        (subject, context) -> Observations.flag(
                                context.layout().platformOf(subject).ledger().isEmpty(), "")),
                word(
                        "footing kind",
                        FootingKind.values(),
                        Subject.class,
                        BOTH,
                        "Whether the footing is a pad that carries the post on top, or concrete in which it is embedded.",
                        (subject, context) -> ofFooting(
                                subject, f -> Observations.word(f.footing().kind(), ""))),
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
                                "whether the top of " + footing.label() + " is shaped to shed water")));
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
        return footing.footing().kind() == FootingKind.PAD
                ? Observations.notApplicable("the post stands on a pad")
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
