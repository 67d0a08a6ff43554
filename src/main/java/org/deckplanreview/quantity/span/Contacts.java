package org.deckplanreview.quantity.span;

import static org.deckplanreview.quantity.DescribedQuantity.flag;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Miss;
import org.deckplanreview.layout.SupportContact;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.PostCap;
import org.deckplanreview.submission.SubjectKind;

/** Whether members touch what is drawn to carry them. */
public final class Contacts {

    private static final int FEWEST_CARRIERS = 2;

    private Contacts() {}

    public static List<Quantity> quantities() {
        return List.of(
                flag(
                        "plies carried at posts",
                        BeamLine.class,
                        List.of(SubjectKind.BEAMS),
                        "Whether every ply of the beam lies on each of its posts with a part of its breadth at least, or a"
                                + " connector on the post carries those that do not.",
                        Contacts::ofPlies),
                flag(
                        "contact with supports",
                        Member.class,
                        List.of(SubjectKind.JOISTS, SubjectKind.BEAMS),
                        "Whether the drawn pieces overlap: a joist lies on two or more beams or ledgers, or hangs on them with its"
                                + " whole breadth, and ends just in front of none; a beam touches every post that it names.",
                        (member, context) -> member instanceof JoistLine joist
                                ? ofJoist(joist, context)
                                : ofBeam((BeamLine) member, context)));
    }

    private static Observation ofJoist(JoistLine joist, ReviewContext context) {
        SupportContact contact = SupportContact.of(context.layout(), joist);
        return contact.carriers() < FEWEST_CARRIERS
                ? Observations.missing(List.of(Spans.supportsMissing(joist, context)))
                : observed(contact.ofJoist(joist), context);
    }

    private static Observation ofBeam(BeamLine beam, ReviewContext context) {
        return SupportContact.of(context.layout(), beam)
                .ofBeam(beam)
                .map(miss -> observed(Optional.of(miss), context))
                .orElseGet(() -> beam.supports().isEmpty()
                        ? Observations.missing(List.of(Spans.supportsMissing(beam, context)))
                        : observed(Optional.empty(), context));
    }

    private static Observation ofPlies(BeamLine beam, ReviewContext context) {
        if (beam.supports().isEmpty()) {
            return Observations.missing(List.of(Spans.supportsMissing(beam, context)));
        }
        Optional<Miss> beside = SupportContact.of(context.layout(), beam).ofPlies(beam);
        if (beside.isEmpty()) {
            return Observations.flag(true, "");
        }
        String post = beside.get().label();
        return Spans.described(beam, context)
                .postCap()
                .map(cap -> cap == PostCap.CONNECTOR
                        ? Observations.flag(true, "")
                        : Observations.flag(false, "a ply lies beside " + post))
                .orElseGet(() -> Observations.missing(
                        beam.pointer().child("postCap"),
                        "what carries the plies of " + beam.label() + " that do not lie on " + post));
    }

    private static Observation observed(Optional<Miss> miss, ReviewContext context) {
        return Observations.flag(
                miss.isEmpty(), miss.map(m -> sentence(m, context)).orElse(""));
    }

    private static String sentence(Miss miss, ReviewContext context) {
        String mm = context.written(Measure.of(miss.mm(), MeasureUnit.MILLIMETRE));
        return switch (miss.kind()) {
            case SHORT ->
                miss.mm() > 0
                        ? "falls short of " + miss.label() + " by " + mm
                        : "ends where " + miss.label() + " begins and overlaps it by " + mm;
            case BESIDE -> "lies " + mm + " beside " + miss.label();
            case PARTLY_BESIDE -> "lies beside the end of " + miss.label() + " with " + mm + " of its breadth";
            case OVERHANGS_HANGER ->
                "hangs on " + miss.label() + " at one end and on nothing at the other, " + mm + " from it";
            case ALONE -> "rests on " + miss.label() + " alone";
            case NOTHING -> "rests on nothing";
        };
    }
}
