package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;

/** Footings with the posts on them. */
final class Footings {

    private final Submission submission;
    private final Platform platform;
    private final GroundSurface ground;

    private Footings(Submission submission, Platform platform, GroundSurface ground) {
        this.submission = submission;
        this.platform = platform;
        this.ground = ground;
    }

    static List<FootingPlace> of(
            Submission submission, Platform platform, int platformIndex, Pointer pointer, GroundSurface ground) {
        Footings footings = new Footings(submission, platform, ground);
        List<FootingPlace> places = new ArrayList<>();
        for (int i = 0; i < platform.footings().size(); i++) {
            places.add(footings.place(
                    platform.footings().get(i),
                    platformIndex,
                    pointer.child("footings").child(i)));
        }
        return places;
    }

    private FootingPlace place(Footing footing, int platformIndex, Pointer pointer) {
        List<Post> posts = platform.posts().stream()
                .filter(p -> p.footing().filter(footing.id()::equals).isPresent())
                .toList();
        Derived<Double> groundLevel = Derived.of(
                        footing.at()
                                .filter(at -> footing.kind() == FootingKind.BLOCK)
                                .or(() -> posts.stream().map(Post::at).findFirst()),
                        pointer,
                        "a post that stands on " + footing.displayLabel())
                .flatMap(ground::levelMm);
        return new FootingPlace(
                platformIndex,
                pointer,
                footing.displayLabel(),
                footing,
                posts.stream().map(Post::id).toList(),
                areaMm2(footing),
                concreteVolumeMm3(footing, posts, pointer),
                groundLevel);
    }

    private static double areaMm2(Footing footing) {
        double breadth = footing.breadth().mm();
        return footing.shape() == FootingShape.ROUND
                ? StrictMath.PI / 4 * breadth * breadth
                : breadth * footing.length().map(Length::mm).orElse(breadth);
    }

    private Derived<Double> concreteVolumeMm3(Footing footing, List<Post> posts, Pointer pointer) {
        double area = areaMm2(footing);
        if (footing.kind() != FootingKind.EMBEDDED_POST) {
            return given(
                            footing.thickness(),
                            pointer.child("thickness"),
                            "the thickness of the concrete of " + footing.displayLabel() + ", "
                                    + submission.units().word())
                    .map(t -> area * t);
        }
        Derived<Double> top = topAboveGround(footing, pointer, submission.units());
        Derived<Double> thickness = footing.thickness().isPresent()
                ? Derived.known(footing.thickness().get().mm())
                : given(
                                footing.depth(),
                                pointer.child("depth"),
                                "the depth of " + footing.displayLabel() + " below the ground, "
                                        + submission.units().word())
                        .with(top, Double::sum);
        double postsArea = posts.stream()
                .map(p -> submission.timber(p.timber()))
                .mapToDouble(Footings::sectionMm2)
                .sum();
        Derived<Double> inConcrete = embedment(footing, pointer, submission.units())
                .with(top, Double::sum)
                .with(thickness, Math::min);
        return thickness.with(inConcrete, (t, e) -> area * t - postsArea * Math.max(0, e));
    }

    private static double sectionMm2(Timber timber) {
        return timber.breadth().mm() * timber.depth().mm();
    }

    static Derived<Double> topAboveGround(Footing footing, Pointer pointer, LengthUnit units) {
        return given(
                footing.topAboveGround(),
                pointer.child("topAboveGround"),
                "the height of the top of " + footing.displayLabel() + " above the ground, " + units.word());
    }

    static Derived<Double> embedment(Footing footing, Pointer pointer, LengthUnit units) {
        return given(
                footing.embedment(),
                pointer.child("embedment"),
                "the embedment of the post in " + footing.displayLabel() + " below the ground, " + units.word());
    }

    private static Derived<Double> given(Optional<Length> length, Pointer pointer, String what) {
        return Derived.of(length.map(Length::mm), pointer, what);
    }
}
