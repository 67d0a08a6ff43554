package org.deckplanreview.quantity.connection;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.word;
import static org.deckplanreview.quantity.connection.Connections.ofFixings;

import java.util.List;
import java.util.function.BiFunction;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.BandJoist;
import org.deckplanreview.submission.BandJoistKind;
import org.deckplanreview.submission.LateralConnection;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.LedgerFixingKind;
import org.deckplanreview.submission.LedgerFlashing;
import org.deckplanreview.submission.SubjectKind;

/** How a ledger is fixed to the band joist of a timber-framed building, and what keeps the deck from being pulled off it. */
public final class LedgerConnection {

    private static final List<SubjectKind> LEDGERS = List.of(SubjectKind.LEDGERS);

    private LedgerConnection() {}

    public static List<Quantity> quantities() {
        return List.of(
                word(
                        "ledger fixing kind",
                        LedgerFixingKind.values(),
                        LedgerLine.class,
                        LEDGERS,
                        "Whether lag screws or bolts fix the ledger to the band joist.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.word(
                                        fixings.kind(),
                                        pointer.child("kind"),
                                        "what fixes the ledger to the band joist: lag-screw or bolt"))),
                number(
                        "ledger fixing diameter",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The diameter of the fixings of the ledger.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.diameter(),
                                        "d",
                                        "the diameter of the ledger's fixings",
                                        pointer.child("diameter")))),
                number(
                        "ledger sheathing",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The thickness of sheathing between ledger and band joist; 0 for none.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.sheathing(),
                                        "t",
                                        "the thickness of sheathing between ledger and band joist, 0 for none",
                                        pointer.child("sheathing")))),
                number(
                        "ledger gap",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The width of the air gap that washers or spacers keep between ledger and sheathing; 0 for none.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.gap(),
                                        "g",
                                        "the gap that washers or spacers keep behind the ledger, 0 for none",
                                        pointer.child("gap")))),
                number(
                        "ledger top edge distance",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The distance from the upper row of fixings to the ledger's upper edge; the distance to either edge where that alone is given.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.topEdgeDistance().or(fixings::edgeDistance),
                                        "e_t",
                                        "the distance from the upper row of fixings to the ledger's upper edge",
                                        pointer.child("topEdgeDistance")))),
                number(
                        "ledger bottom edge distance",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The distance from the lower row of fixings to the ledger's lower edge; the distance to either edge where that alone is given.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.bottomEdgeDistance().or(fixings::edgeDistance),
                                        "e_b",
                                        "the distance from the lower row of fixings to the ledger's lower edge",
                                        pointer.child("bottomEdgeDistance")))),
                number(
                        "ledger end distance",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The distance from the last fixing to the ledger's end.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.endDistance(),
                                        "e_e",
                                        "the distance from the last fixing to the ledger's end",
                                        pointer.child("endDistance")))),
                number(
                        "ledger row distance",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The distance between the two rows of fixings of the ledger.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.rowDistance(),
                                        "r",
                                        "the distance between the two rows of the ledger's fixings",
                                        pointer.child("rowDistance")))),
                number(
                        "flashing up the wall",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "How far the ledger's flashing runs up the wall.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.flashing().flatMap(LedgerFlashing::upWall),
                                        "u",
                                        "how far the ledger's flashing runs up the wall",
                                        pointer.child("flashing").child("upWall")))),
                number(
                        "flashing past the ledger's face",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "How far the ledger's flashing reaches past the ledger's face; 0 where it ends there.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.flashing().flatMap(LedgerFlashing::pastFace),
                                        "o",
                                        "how far the ledger's flashing reaches past the ledger's face",
                                        pointer.child("flashing").child("pastFace")))),
                number(
                        "flashing down the ledger's face",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "How far the ledger's flashing is turned down over the ledger's face; 0 for not at all.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.flashing().flatMap(LedgerFlashing::downFace),
                                        "w",
                                        "how far the ledger's flashing is turned down over the ledger's face",
                                        pointer.child("flashing").child("downFace")))),
                number(
                        "water barrier over flashing",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "How far the wall's water barrier laps over the ledger's flashing.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.flashing().flatMap(LedgerFlashing::barrierLap),
                                        "b",
                                        "how far the wall's water barrier laps over the ledger's flashing",
                                        pointer.child("flashing").child("barrierLap")))),
                flag(
                        "ledger fixings staggered",
                        LedgerLine.class,
                        LEDGERS,
                        "Whether the fixings of the ledger alternate between two rows.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.flag(
                                        fixings.staggered(),
                                        pointer.child("staggered"),
                                        "whether the ledger's fixings alternate between two rows"))),
                flag(
                        "lag tip beyond band joist",
                        LedgerLine.class,
                        LEDGERS,
                        "Whether the points of lag screws pass through the band joist; bolts have none.",
                        LedgerConnection::tipBeyondBand),
                word(
                        "band joist kind",
                        BandJoistKind.values(),
                        LedgerLine.class,
                        LEDGERS,
                        "What the band joist behind the ledger is made of.",
                        (ledger, context) ->
                                ofBandJoist(ledger, context, (band, pointer) -> Observations.word(band.kind(), ""))),
                number(
                        "band joist thickness",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The thickness of the band joist behind the ledger, square to the wall.",
                        (ledger, context) -> ofBandJoist(
                                ledger,
                                context,
                                (band, pointer) -> Observations.number(
                                        "t_band",
                                        band.thickness().mm(),
                                        MeasureUnit.MILLIMETRE,
                                        "thickness of the band joist",
                                        "",
                                        pointer.child("thickness")))),
                number(
                        "band joist depth",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The depth of the band joist behind the ledger.",
                        (ledger, context) -> ofBandJoist(
                                ledger,
                                context,
                                (band, pointer) -> Observations.length(
                                        band.depth(),
                                        "d_band",
                                        "the depth of the band joist",
                                        pointer.child("depth")))),
                flag(
                        "band joist cantilevered",
                        LedgerLine.class,
                        LEDGERS,
                        "Whether the floor behind the ledger overhangs the wall below, as in a bay.",
                        (ledger, context) -> ofBandJoist(
                                ledger,
                                context,
                                (band, pointer) -> Observations.flag(
                                        band.cantilevered(),
                                        pointer.child("cantilevered"),
                                        "whether the floor behind the ledger overhangs the wall below it"))),
                number(
                        "lateral connections",
                        MeasureUnit.RATIO,
                        LedgerLine.class,
                        LEDGERS,
                        "The number of hold-downs from the deck into the building's floor that the design gives at the ledger.",
                        (ledger, context) -> Observations.number(
                                "n",
                                described(ledger, context).lateralConnections().size(),
                                MeasureUnit.RATIO,
                                "lateral connections",
                                "",
                                connections(ledger))),
                number(
                        "least lateral capacity",
                        MeasureUnit.NEWTON_,
                        LedgerLine.class,
                        LEDGERS,
                        "The smallest allowable force of the lateral connections.",
                        LedgerConnection::leastCapacity),
                number(
                        "lateral connection end distance",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The distance from an end of the ledger to the lateral connection nearest to it, of the end that has none nearer.",
                        LedgerConnection::endDistance));
    }

    private static Observation tipBeyondBand(LedgerLine ledger, ReviewContext context) {
        return ofFixings(
                ledger,
                context,
                (fixings, pointer) ->
                        fixings.kind().filter(LedgerFixingKind.BOLT::equals).isPresent()
                                ? Observations.notApplicable("bolts pass through the band joist with a nut behind it")
                                : Observations.flag(
                                        fixings.tipBeyondBand(),
                                        pointer.child("tipBeyondBand"),
                                        "whether the points of the lag screws pass through the band joist"));
    }

    private static Observation leastCapacity(LedgerLine ledger, ReviewContext context) {
        List<LateralConnection> given = described(ledger, context).lateralConnections();
        return given.isEmpty()
                ? noConnection()
                : Observations.number(
                        "F",
                        given.stream()
                                .mapToDouble(c -> c.capacity().in(MeasureUnit.NEWTON_))
                                .min()
                                .getAsDouble(),
                        MeasureUnit.NEWTON_,
                        "smallest allowable force of the lateral connections",
                        "",
                        connections(ledger));
    }

    private static Observation endDistance(LedgerLine ledger, ReviewContext context) {
        List<LateralConnection> given = described(ledger, context).lateralConnections();
        if (given.isEmpty()) {
            return noConnection();
        }
        double first = given.stream().mapToDouble(c -> c.at().mm()).min().getAsDouble();
        double last = given.stream().mapToDouble(c -> c.at().mm()).max().getAsDouble();
        return Observations.number(
                "e",
                Math.max(first, ledger.lengthMm() - last),
                MeasureUnit.MILLIMETRE,
                "distance from the end of the ledger to the nearest lateral connection",
                "",
                connections(ledger));
    }

    private static Observation noConnection() {
        return Observations.notApplicable("the design gives no lateral connection");
    }

    private static Pointer connections(LedgerLine ledger) {
        return ledger.pointer().child("lateralConnections");
    }

    private static Ledger described(LedgerLine ledger, ReviewContext context) {
        return context.layout().platformOf(ledger).platform().ledger().orElseThrow();
    }

    private static Observation ofBandJoist(
            LedgerLine ledger, ReviewContext context, BiFunction<BandJoist, Pointer, Observation> observing) {
        Pointer pointer = ledger.pointer().child("bandJoist");
        return described(ledger, context)
                .bandJoist()
                .map(band -> observing.apply(band, pointer))
                .orElseGet(() -> Observations.missing(
                        pointer, "the band joist behind the ledger: solid-sawn or lvl, its thickness and depth"));
    }
}
