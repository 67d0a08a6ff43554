package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.LedgerFixings;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Edge and end distances of a ledger's fixings in its timber, loaded across the grain, 8.5.1.1(3), Table 8.4. */
final class LedgerFixingDistance implements Method {
    private static final ParameterDescription PLACE =
            ParameterDescription.word("place", "which distance: ledger-edge or ledger-end");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.ledgerFixingDistance",
            En1995.SOURCE,
            "distance of the ledger's fixings",
            MILLIMETRE,
            List.of(SubjectKind.LEDGERS),
            List.of(PLACE),
            "The distance of the fixings from the ledger's edges or its end, against Table 8.4 for a force across the grain:"
                    + " a4,t and a3,t.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        LedgerLine line = (LedgerLine) subject;
        Pointer pointer = line.pointer().child("fixings");
        boolean end = isEnd(parameters.word(PLACE.name()));
        return context.layout()
                .platformOf(line)
                .platform()
                .ledger()
                .flatMap(Ledger::fixings)
                .map(f -> evaluate(f, pointer, end))
                .orElseGet(() -> new Evaluation.Missing(List.of(
                        new Need(pointer, "the fixings of the ledger: diameter, edge distance and end distance"))));
    }

    private static boolean isEnd(String place) {
        return switch (place) {
            case "ledger-end" -> true;
            case "ledger-edge" -> false;
            default -> throw new IllegalArgumentException("place is ledger-edge or ledger-end, not '" + place + "'");
        };
    }

    private static Evaluation evaluate(LedgerFixings fixings, Pointer pointer, boolean end) {
        Optional<Length> distance = end ? fixings.endDistance() : fixings.edgeDistance();
        Pointer given = pointer.child(end ? "endDistance" : "edgeDistance");
        List<Need> needs = new ArrayList<>();
        if (fixings.diameter().isEmpty()) {
            needs.add(new Need(pointer.child("diameter"), "the diameter of the ledger's fixings, a length"));
        }
        if (distance.isEmpty()) {
            needs.add(new Need(
                    given,
                    end
                            ? "the distance from the last fixing to the ledger's end, a length"
                            : "the distance from the fixings to the nearer edge of the ledger, a length"));
        }
        if (!needs.isEmpty()) {
            return new Evaluation.Missing(needs.stream().sorted().toList());
        }
        Sheet w = Sheet.blank();
        w.given("a", distance.orElseThrow().mm(), MILLIMETRE, "as given", "", given);
        LeastDistance least = end ? LeastDistance.LOADED_END : LeastDistance.LOADED_EDGE;
        return least.compare(w, true, fixings.diameter().orElseThrow().mm(), pointer.child("diameter"), "", List.of());
    }
}
