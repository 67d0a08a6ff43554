package org.deckplanreview.quantity.stair;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Handrails;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.StairSides;
import org.deckplanreview.submission.SubjectKind;

/** What the feet, eyes and hands of people on a stair meet: treads, nosings, handrails, and the foot of the guard beside it. */
public final class TreadsAndHandrails {

    private static final List<SubjectKind> STAIRS = List.of(SubjectKind.STAIRS);

    private TreadsAndHandrails() {}

    public static List<Quantity> quantities() {
        return List.of(
                stated(
                        "slip-resistant treads",
                        "Whether the treads have a finish or inserts that grip when wet.",
                        "slipResistantTreads",
                        "whether the treads grip when wet, on",
                        Stair::slipResistantTreads),
                stated(
                        "contrasting nosings",
                        "Whether the nosings contrast with the treads.",
                        "contrastingNosings",
                        "whether the nosings contrast with the treads, on",
                        Stair::contrastingNosings),
                ofHandrails(
                        "handrail extension",
                        "The level length of the handrail beyond the first and the last nosing, the shorter of both.",
                        "extension",
                        "how far beyond the nosings the handrails go on, at",
                        Handrails::extension),
                ofHandrails(
                        "handrail grip",
                        "The width of the handrail that a hand closes round: the diameter of a round one, the larger side of"
                                + " another.",
                        "grip",
                        "the width that a hand closes round, of the handrails of",
                        Handrails::grip),
                number(
                        "clear width between handrails",
                        MeasureUnit.MILLIMETRE,
                        StairRun.class,
                        STAIRS,
                        "The clear width between a handrail and the next one across the flight.",
                        (stair, context) -> clearWidth(stair)),
                number(
                        "lowest edge of flight guard above pitch line",
                        MeasureUnit.MILLIMETRE,
                        StairRun.class,
                        STAIRS,
                        "The height of the lowest edge of the guard beside the flight above the line through the nosings, to which"
                                + " it runs parallel.",
                        (stair, context) -> stair.guard().isEmpty()
                                ? Observations.notApplicable("no guard stands beside the flight")
                                : Observations.length(
                                        stair.stair().guardEdge(),
                                        "h_edge",
                                        "how high above the pitch line the lowest edge of the guard beside "
                                                + stair.label() + " lies",
                                        stair.pointer().child("guardEdge"))));
    }

    private static Quantity stated(
            String name, String definition, String member, String what, Function<Stair, Optional<Boolean>> value) {
        return flag(
                name,
                StairRun.class,
                STAIRS,
                definition,
                (stair, context) -> Observations.flag(
                        value.apply(stair.stair()), stair.pointer().child(member), what + " " + stair.label()));
    }

    private static Quantity ofHandrails(
            String name, String definition, String member, String what, Function<Handrails, Optional<Length>> length) {
        return number(name, MeasureUnit.MILLIMETRE, StairRun.class, STAIRS, definition, (stair, context) -> {
            Optional<Handrails> rails = stair.stair().handrails();
            return rails.filter(r -> r.sides() == StairSides.NONE).isPresent()
                    ? Observations.notApplicable("the flight has no handrail")
                    : Observations.length(
                            rails.flatMap(length), "l_rail", what + " " + stair.label(), at(stair, member));
        });
    }

    private static Observation clearWidth(StairRun stair) {
        Optional<Handrails> rails = stair.stair().handrails();
        return rails.filter(r -> r.sides() != StairSides.BOTH).isPresent()
                ? Observations.notApplicable("the flight does not have handrails on both sides")
                : Observations.length(
                        rails.flatMap(Handrails::clearWidth),
                        "w_rail",
                        "the clear width between the handrails of " + stair.label(),
                        at(stair, "clearWidth"));
    }

    private static Pointer at(StairRun stair, String member) {
        Pointer handrails = stair.pointer().child("handrails");
        return stair.stair().handrails().isPresent() ? handrails.child(member) : handrails;
    }
}
