package org.deckplanreview.quantity.span;

import static org.deckplanreview.quantity.DescribedQuantity.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.quantity.timber.TimberAndMetal;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.SubjectKind;

/** Whether there is room for the frame between the ground and the boards. */
public final class Room {
    private static final Formula MISSING_THICKNESS = Formula.of("Δt = t - (d + h_top)", MeasureUnit.MILLIMETRE, "");

    private static final List<SubjectKind> ABOVE_GROUND =
            List.of(SubjectKind.BOARDS, SubjectKind.JOISTS, SubjectKind.BEAMS, SubjectKind.LEDGERS);

    private Room() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "room for the post",
                        MeasureUnit.MILLIMETRE,
                        PostPlace.class,
                        List.of(SubjectKind.POSTS),
                        "The height between the ground, or the pad's top, and what the post carries; negative where its upper"
                                + " end would lie below its foot.",
                        (post, context) -> room(post.roomMm(), "room for the post", context)),
                number(
                        "thickness beyond depth and top",
                        MeasureUnit.MILLIMETRE,
                        FootingPlace.class,
                        List.of(SubjectKind.FOOTINGS),
                        "By how much the concrete of a pad is thicker than what lies between its underside and its top;"
                                + " negative where a pier stands on it.",
                        (footing, context) -> padInItself(footing)),
                number(
                        "room above the ground",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        ABOVE_GROUND,
                        "The smallest height of the timber's underside above the ground; negative where the timber lies in it.",
                        (subject, context) -> room(
                                TimberAndMetal.groundClearance(subject), "room between ground and timber", context)));
    }

    private static Observation padInItself(FootingPlace place) {
        Footing footing = place.footing();
        if (place.isBlock()) {
            return Observations.notApplicable("a block is precast");
        }
        if (footing.kind() != FootingKind.PAD) {
            return Observations.notApplicable("the post is embedded in it");
        }
        List<Need> needs = new ArrayList<>();
        need(needs, footing.thickness(), place, "thickness", "the thickness of the concrete of ");
        need(needs, footing.depth(), place, "depth", "the depth from the ground to the underside of ");
        need(needs, footing.topAboveGround(), place, "topAboveGround", "the height above the ground of the top of ");
        if (!needs.isEmpty()) {
            return Observations.missing(needs);
        }
        Sheet w = Sheet.blank();
        Pointer at = place.pointer();
        double t = given(w, "t", footing.thickness(), "thickness of the concrete", at.child("thickness"));
        double d = given(w, "d", footing.depth(), "depth to its underside", at.child("depth"));
        given(w, "h_top", footing.topAboveGround(), "its top above the ground", at.child("topAboveGround"));
        return Observations.found(w.calculate(MISSING_THICKNESS), MeasureUnit.MILLIMETRE, w);
    }

    private static double given(Sheet w, String symbol, Optional<Length> length, String meaning, Pointer at) {
        return w.given(symbol, length.orElseThrow().mm(), MeasureUnit.MILLIMETRE, meaning, "", at);
    }

    private static void need(
            List<Need> needs, Optional<Length> length, FootingPlace place, String member, String what) {
        if (length.isEmpty()) {
            needs.add(new Need(place.pointer().child(member), what + place.label() + ", a length"));
        }
    }

    private static Observation room(Derived<Double> room, String meaning, ReviewContext context) {
        return room instanceof Derived.Known<Double> known
                ? Observations.number(
                        "h_room",
                        known.value(),
                        MeasureUnit.MILLIMETRE,
                        meaning,
                        known.value() < 0
                                ? "the deck must rise by "
                                        + context.writtenAtLeast(Measure.of(-known.value(), MeasureUnit.MILLIMETRE))
                                        + ", or the ground be lowered"
                                : "")
                : Observations.missing(room.needs());
    }
}
