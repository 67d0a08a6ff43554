package org.deckplanreview.quantity.connection;

import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Fixing;
import org.deckplanreview.submission.FixingKind;
import org.deckplanreview.submission.Joint;
import org.deckplanreview.submission.JointKind;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.LedgerBase;
import org.deckplanreview.submission.LedgerFixings;
import org.deckplanreview.submission.LedgerWeathering;
import org.deckplanreview.submission.PlyFixing;
import org.deckplanreview.submission.PostCap;
import org.deckplanreview.submission.SubjectKind;

/** What joins timber to timber, and the deck to a wall. */
public final class Connections {

    private static final List<SubjectKind> BEAMS = List.of(SubjectKind.BEAMS);
    private static final List<SubjectKind> LEDGERS = List.of(SubjectKind.LEDGERS);

    private Connections() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "fasteners in joint",
                        MeasureUnit.RATIO,
                        BeamLine.class,
                        BEAMS,
                        "The number of bolts or screws that hold the beam at the sides of each of its posts.",
                        (beam, context) -> ofJoint(
                                beam,
                                context,
                                (joint, pointer) -> Observations.number(
                                        "n",
                                        joint.count(),
                                        MeasureUnit.RATIO,
                                        "fasteners at each post",
                                        "",
                                        pointer.child("count")))),
                number(
                        "washer diameter over bolt diameter",
                        MeasureUnit.RATIO,
                        BeamLine.class,
                        BEAMS,
                        "The diameter of the washers under head and nut over that of the bolt.",
                        (beam, context) -> ofFasteners(
                                beam,
                                context,
                                JointKind.BOLT,
                                (joint, pointer) -> overDiameter(
                                        joint,
                                        joint.washerDiameter(),
                                        "d_w",
                                        "the diameter of the bolts' washers",
                                        pointer,
                                        "washerDiameter"))),
                number(
                        "washer thickness over bolt diameter",
                        MeasureUnit.RATIO,
                        BeamLine.class,
                        BEAMS,
                        "The thickness of the washers under head and nut over the diameter of the bolt.",
                        (beam, context) -> ofFasteners(
                                beam,
                                context,
                                JointKind.BOLT,
                                (joint, pointer) -> overDiameter(
                                        joint,
                                        joint.washerThickness(),
                                        "t_w",
                                        "the thickness of the bolts' washers",
                                        pointer,
                                        "washerThickness"))),
                number(
                        "screw penetration over diameter",
                        MeasureUnit.RATIO,
                        BeamLine.class,
                        BEAMS,
                        "The length of a screw inside the post over the diameter of its thread.",
                        (beam, context) -> ofFasteners(
                                beam,
                                context,
                                JointKind.SCREW,
                                (joint, pointer) -> overDiameter(
                                        joint,
                                        joint.penetration(),
                                        "l_p",
                                        "the length of each screw that is inside the post",
                                        pointer,
                                        "penetration"))),
                word(
                        "ply fixing kind",
                        FixingKind.values(),
                        BeamLine.class,
                        BEAMS,
                        "What fixes touching plies of the beam to each other.",
                        (beam, context) -> ofPlies(beam, context, (fixing, pointer) -> kind(context, fixing, pointer))),
                number(
                        "ply fixing spacing",
                        MeasureUnit.MILLIMETRE,
                        BeamLine.class,
                        BEAMS,
                        "The spacing along the beam, in each row, of what fixes its touching plies to each other.",
                        (beam, context) -> ofPlies(
                                beam,
                                context,
                                (fixing, pointer) -> Observations.number(
                                        "s",
                                        fixing.spacing().mm(),
                                        MeasureUnit.MILLIMETRE,
                                        "spacing of the fixings of the plies",
                                        "",
                                        pointer.child("spacing")))),
                number(
                        "ply fixing rows",
                        MeasureUnit.RATIO,
                        BeamLine.class,
                        BEAMS,
                        "The number of rows of what fixes touching plies of the beam to each other.",
                        (beam, context) -> ofPlies(
                                beam,
                                context,
                                (fixing, pointer) -> Observations.number(
                                        "n",
                                        fixing.rows(),
                                        MeasureUnit.RATIO,
                                        "rows of fixings of the plies",
                                        "",
                                        pointer.child("rows")))),
                number(
                        "ply fixing diameter",
                        MeasureUnit.MILLIMETRE,
                        BeamLine.class,
                        BEAMS,
                        "The diameter of what fixes touching plies of the beam to each other.",
                        (beam, context) ->
                                ofPlies(beam, context, (fixing, pointer) -> diameter(context, fixing, pointer))),
                word(
                        "post cap",
                        PostCap.values(),
                        BeamLine.class,
                        BEAMS,
                        "What keeps a beam that rests on its posts from sliding or rolling off them.",
                        Connections::postCap),
                word(
                        "ledger base",
                        LedgerBase.values(),
                        LedgerLine.class,
                        LEDGERS,
                        "What the ledger's fixings hold in; a base that is not known is missing.",
                        (ledger, context) -> ofFixings(ledger, context, Connections::base)),
                number(
                        "ledger fixing spacing",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        LEDGERS,
                        "The spacing of the fixings along the ledger.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.length(
                                        fixings.spacing(),
                                        "s",
                                        "the spacing of the ledger's fixings",
                                        pointer.child("spacing")))),
                word(
                        "ledger weathering",
                        LedgerWeathering.values(),
                        LedgerLine.class,
                        LEDGERS,
                        "How water is kept from standing between ledger and wall.",
                        (ledger, context) -> ofFixings(
                                ledger,
                                context,
                                (fixings, pointer) -> Observations.word(
                                        fixings.weathering(),
                                        pointer.child("weathering"),
                                        "how water is kept from between ledger and wall: gap, flashing or none"))));
    }

    private static Observation overDiameter(
            Joint joint, Optional<Length> length, String symbol, String meaning, Pointer pointer, String member) {
        if (length.isEmpty()) {
            return Observations.missing(pointer.child(member), meaning + ", a length");
        }
        double d = joint.diameter().mm();
        double l = length.get().mm();
        Sheet w = Sheet.blank();
        w.given(symbol, l, MeasureUnit.MILLIMETRE, meaning, "", pointer.child(member));
        w.given("d", d, MeasureUnit.MILLIMETRE, "diameter of the fasteners", "", pointer.child("diameter"));
        w.calculate(Formula.of("r = " + symbol + " / d", MeasureUnit.RATIO, ""));
        return Observations.found(l / d, MeasureUnit.RATIO, w);
    }

    private static Observation postCap(BeamLine line, ReviewContext context) {
        Beam beam = beam(line, context);
        return beam.seating() == BeamSeating.ON_POST
                ? Observations.word(
                        beam.postCap(),
                        line.pointer().child("postCap"),
                        "what keeps " + line.label()
                                + " on the tops of its posts: connector, notched-post, nails-or-screws or none")
                : Observations.notApplicable("it is fixed to the sides of its posts");
    }

    private static Observation diameter(ReviewContext context, PlyFixing plyFixing, Pointer pointer) {
        List<Fixing> all = context.submission().protection().fixings();
        return IntStream.range(0, all.size())
                .filter(i -> all.get(i).id().equals(plyFixing.fixing()))
                .mapToObj(i -> Observations.length(
                        all.get(i).diameter(),
                        "d",
                        "the diameter of " + all.get(i).displayLabel(),
                        Pointer.of("/protection/fixings/" + i + "/diameter")))
                .findFirst()
                .orElseGet(() ->
                        Observations.missing(pointer.child("fixing"), "the id of fixings that protection describes"));
    }

    private static Observation kind(ReviewContext context, PlyFixing plyFixing, Pointer pointer) {
        return Observations.word(
                context.submission().protection().fixings().stream()
                        .filter(f -> f.id().equals(plyFixing.fixing()))
                        .findFirst()
                        .map(Fixing::kind),
                pointer.child("fixing"),
                "the id of fixings that protection describes");
    }

    private static Observation base(LedgerFixings fixings, Pointer pointer) {
        return Observations.word(
                Optional.of(fixings.base()).filter(b -> b != LedgerBase.UNKNOWN),
                pointer.child("base"),
                "what lies behind the face of the wall where the ledger is fixed: masonry, concrete, timber-frame, cladding,"
                        + " insulation or brick-veneer");
    }

    private static Beam beam(BeamLine line, ReviewContext context) {
        return context.layout().platformOf(line).platform().beams().stream()
                .filter(b -> b.id().equals(line.id()))
                .findFirst()
                .orElseThrow();
    }

    private static Observation ofJoint(
            BeamLine line, ReviewContext context, BiFunction<Joint, Pointer, Observation> observing) {
        Beam beam = beam(line, context);
        Pointer pointer = line.pointer().child("joint");
        return beam.seating() == BeamSeating.ON_POST
                ? Observations.notApplicable("it rests on its posts")
                : ofGiven(
                        beam.joint(),
                        pointer,
                        "the bolts or screws that fix " + line.label() + " to each of its posts",
                        j -> observing.apply(j, pointer));
    }

    private static Observation ofFasteners(
            BeamLine line, ReviewContext context, JointKind kind, BiFunction<Joint, Pointer, Observation> observing) {
        return ofJoint(
                line,
                context,
                (joint, pointer) -> joint.kind() == kind
                        ? observing.apply(joint, pointer)
                        : Observations.notApplicable("no " + kind.word() + " holds it at its posts"));
    }

    private static Observation ofPlies(
            BeamLine line, ReviewContext context, BiFunction<PlyFixing, Pointer, Observation> observing) {
        Beam beam = beam(line, context);
        Pointer pointer = line.pointer().child("plyFixing");
        int sides = beam.seating() == BeamSeating.BOTH_SIDES ? 2 : 1;
        return beam.plies() <= sides
                ? Observations.notApplicable("no two of its plies touch")
                : ofGiven(
                        beam.plyFixing(),
                        pointer,
                        "what fixes the plies of " + line.label()
                                + " to each other: the fixings, their spacing and rows",
                        f -> observing.apply(f, pointer));
    }

    /** Of the fixings of a ledger, with their pointer. */
    public static Observation ofFixings(
            LedgerLine line, ReviewContext context, BiFunction<LedgerFixings, Pointer, Observation> observing) {
        Pointer pointer = line.pointer().child("fixings");
        return ofGiven(
                context.layout().platformOf(line).platform().ledger().flatMap(Ledger::fixings),
                pointer,
                "how the ledger is fixed to its wall: what the fixings hold in, their spacing and resistance",
                f -> observing.apply(f, pointer));
    }

    private static <T> Observation ofGiven(
            Optional<T> given, Pointer pointer, String what, Function<T, Observation> observing) {
        return given.map(observing).orElseGet(() -> Observations.missing(pointer, what));
    }
}
