package org.deckplanreview.quantity.timber;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.risingWord;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.List;
import java.util.function.Function;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.TimberPiece;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Grade;
import org.deckplanreview.submission.Species;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/** What a timber is by its species, grade and section, as prescriptive tables are entered. */
public final class Lumber {

    private static final List<SubjectKind> TIMBERS =
            List.of(SubjectKind.BOARDS, SubjectKind.JOISTS, SubjectKind.BEAMS, SubjectKind.LEDGERS, SubjectKind.POSTS);

    private Lumber() {}

    public static List<Quantity> quantities() {
        return List.of(
                word(
                        "species",
                        Species.values(),
                        TimberPiece.class,
                        TIMBERS,
                        "The species or species combination of visually graded lumber.",
                        (piece, context) -> ofSawn(
                                piece,
                                timber -> Observations.word(
                                        timber.species(),
                                        pointer(piece, context).child("species"),
                                        "the species of " + timber.displayLabel() + ", for example southern-pine"))),
                risingWord(
                        "timber grade",
                        Grade.values(),
                        TimberPiece.class,
                        TIMBERS,
                        "The visual grade of the lumber, weakest first.",
                        (piece, context) -> ofSawn(
                                piece,
                                timber -> Observations.word(
                                        timber.grade(),
                                        pointer(piece, context).child("grade"),
                                        "the grade of " + timber.displayLabel() + ", for example no.2"))),
                flag(
                        "incised",
                        TimberPiece.class,
                        TIMBERS,
                        "Whether the timber's faces were cut to let preservative in.",
                        (piece, context) -> ofSawn(
                                piece,
                                timber -> Observations.flag(
                                        timber.incised(),
                                        pointer(piece, context).child("incised"),
                                        "whether " + timber.displayLabel() + " is incised"))),
                number(
                        "section breadth",
                        MeasureUnit.MILLIMETRE,
                        TimberPiece.class,
                        TIMBERS,
                        "The dressed breadth of the section, of one ply where there are several; the width of a board.",
                        (piece, context) -> side(
                                piece.timber().breadth(),
                                "b",
                                "breadth of the section",
                                pointer(piece, context).child("breadth"))),
                number(
                        "section depth",
                        MeasureUnit.MILLIMETRE,
                        TimberPiece.class,
                        TIMBERS,
                        "The dressed depth of the section along the load; the thickness of a board.",
                        (piece, context) -> side(
                                piece.timber().depth(),
                                "d",
                                "depth of the section",
                                pointer(piece, context).child("depth"))),
                number(
                        "plies",
                        MeasureUnit.RATIO,
                        BeamLine.class,
                        List.of(SubjectKind.BEAMS),
                        "The number of timbers side by side that make up the beam.",
                        (beam, context) -> Observations.number(
                                "n",
                                beam.plies(),
                                MeasureUnit.RATIO,
                                "plies of the beam",
                                "",
                                beam.pointer().child("plies"))));
    }

    private static Observation ofSawn(TimberPiece piece, Function<Timber, Observation> observing) {
        return piece.isSawn()
                ? observing.apply(piece.timber())
                : Observations.notApplicable(TimberAndMetal.MANUFACTURED);
    }

    private static Observation side(Length length, String symbol, String meaning, Pointer pointer) {
        return Observations.number(symbol, length.mm(), MeasureUnit.MILLIMETRE, meaning, "", pointer);
    }

    private static Pointer pointer(TimberPiece piece, ReviewContext context) {
        return context.submission().timberPointer(piece.timber().id());
    }
}
