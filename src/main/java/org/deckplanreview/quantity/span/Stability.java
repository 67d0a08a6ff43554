package org.deckplanreview.quantity.span;

import static org.deckplanreview.quantity.DescribedQuantity.number;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.SubjectKind;

/** What keeps the frame from moving sideways, and how far apart its beams lie. */
public final class Stability {

    private Stability() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "unbraced post height",
                        MeasureUnit.MILLIMETRE,
                        PostPlace.class,
                        List.of(SubjectKind.POSTS),
                        "The clear height of a post of a platform that no ledger holds and that has no brace along the"
                                + " post's beam, or none across it.",
                        Stability::unbracedHeight),
                number(
                        "fewest braces",
                        MeasureUnit.RATIO,
                        PlatformLayout.class,
                        List.of(SubjectKind.PLATFORMS),
                        "The number of braces along the platform's first beam or across it, whichever is smaller; of a"
                                + " platform that has braces and no ledger.",
                        Stability::fewestBraces),
                number(
                        "distance between brace lines over width",
                        MeasureUnit.RATIO,
                        PlatformLayout.class,
                        List.of(SubjectKind.PLATFORMS),
                        "How far apart the outermost braces in one direction stand, across it, over the platform's width there; the"
                                + " smaller value of those directions, along and across the first beam, that have braces. 0 for"
                                + " braces in one line. Of a platform that has braces and no ledger.",
                        Stability::braceLines),
                number(
                        "reach over ledger length",
                        MeasureUnit.RATIO,
                        PlatformLayout.class,
                        List.of(SubjectKind.PLATFORMS),
                        "How far the platform reaches from the wall, over the length of its ledger.",
                        Stability::reach),
                number(
                        "distance between beams",
                        MeasureUnit.MILLIMETRE,
                        JoistLine.class,
                        List.of(SubjectKind.JOISTS),
                        "The largest distance along the joist from one beam or ledger to the next.",
                        Stability::distanceBetweenBeams));
    }

    private static Observation unbracedHeight(PostPlace post, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(post);
        SidewaysSupport support = new SidewaysSupport(platform);
        if (support.isTiedToBuilding()) {
            return Observations.notApplicable("a ledger ties the platform to a building");
        }
        Optional<Direction> along = support.alongBeam(post);
        if (along.isEmpty()) {
            return Observations.missing(
                    platform.pointer().child("beams"), "the beam that " + post.label() + " carries");
        }
        boolean bracedAlong = !support.braces(along.get()).isEmpty();
        boolean bracedAcross =
                !support.braces(SidewaysSupport.across(along.get())).isEmpty();
        if (bracedAlong && bracedAcross) {
            return Observations.notApplicable("the platform is braced along the beam and across it");
        }
        String open =
                bracedAlong ? "across its beam" : bracedAcross ? "along its beam" : "along its beam and across it";
        return post.heightMm() instanceof Derived.Known<Double> height
                ? Observations.number(
                        "h_post",
                        height.value(),
                        MeasureUnit.MILLIMETRE,
                        "clear height of the post",
                        "no brace " + open,
                        platform.pointer().child("braces"))
                : Observations.missing(post.heightMm().needs());
    }

    private static Observation fewestBraces(PlatformLayout platform, ReviewContext context) {
        SidewaysSupport support = new SidewaysSupport(platform);
        if (support.isTiedToBuilding() || platform.braces().isEmpty()) {
            return Observations.notApplicable(
                    support.isTiedToBuilding()
                            ? "a ledger ties the platform to a building"
                            : "the platform has no braces");
        }
        Optional<Direction> along = support.alongFirstBeam();
        if (along.isEmpty()) {
            return Observations.missing(platform.pointer().child("beams"), "the beams of " + platform.label());
        }
        int alongBeam = support.braces(along.get()).size();
        int acrossBeam = support.braces(SidewaysSupport.across(along.get())).size();
        return Observations.number(
                "n",
                Math.min(alongBeam, acrossBeam),
                MeasureUnit.RATIO,
                "braces in the direction that has fewer",
                alongBeam <= acrossBeam ? "along the first beam" : "across the first beam",
                platform.pointer().child("braces"));
    }

    private static Observation braceLines(PlatformLayout platform, ReviewContext context) {
        SidewaysSupport support = new SidewaysSupport(platform);
        if (support.isTiedToBuilding() || platform.braces().isEmpty()) {
            return Observations.notApplicable(
                    support.isTiedToBuilding()
                            ? "a ledger ties the platform to a building"
                            : "the platform has no braces");
        }
        Optional<Direction> along = support.alongFirstBeam();
        if (along.isEmpty()) {
            return Observations.missing(platform.pointer().child("beams"), "the beams of " + platform.label());
        }
        double least = Stream.of(along.get(), SidewaysSupport.across(along.get()))
                .filter(d -> !support.braces(d).isEmpty())
                .mapToDouble(d -> support.evenness(d)
                                .map(SidewaysSupport.Evenness::apartMm)
                                .orElse(0.0)
                        / support.widthMm(d))
                .min()
                .orElse(0);
        return Observations.number(
                "k",
                least,
                MeasureUnit.RATIO,
                "distance between the outermost braces over the platform's width",
                "in the direction where it is least",
                platform.pointer().child("braces"));
    }

    private static Observation reach(PlatformLayout platform, ReviewContext context) {
        OptionalDouble reach = new SidewaysSupport(platform).reachOverLedger();
        return reach.isEmpty()
                ? Observations.notApplicable("no ledger ties the platform to a building")
                : Observations.number(
                        "k",
                        reach.getAsDouble(),
                        MeasureUnit.RATIO,
                        "reach from the wall over the ledger's length",
                        "",
                        platform.pointer().child("ledger"));
    }

    private static Observation distanceBetweenBeams(JoistLine joist, ReviewContext context) {
        return Spans.largestSpan(
                joist,
                "largest distance between beams or ledger along the joist",
                Spans.supportsMissing(joist, context),
                context.layout().platformOf(joist).pointer().child("beams"));
    }
}
