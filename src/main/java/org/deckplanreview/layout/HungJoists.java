package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.deckplanreview.submission.Tolerances;

/**
 * Cuts joists where they hang. A joist in hangers ends at the face of its beam or ledger: one that is drawn across a beam
 * on which it hangs is a joist on each side, and one that begins at the wall begins at the ledger's face.
 */
final class HungJoists {

    private final double breadth;
    private final List<Carrier> hanging;

    private HungJoists(double breadth, List<Carrier> hanging) {
        this.breadth = breadth;
        this.hanging = hanging;
    }

    /** In the order of the joists, then along each; a rest shorter than a joist's breadth is no joist, and what it carries goes to its neighbour. */
    static List<JoistPiece> cut(List<JoistPiece> drawn, double breadthMm, List<Carrier> carriers) {
        HungJoists cutting = new HungJoists(
                breadthMm, carriers.stream().filter(Carrier::hangs).toList());
        return drawn.stream().flatMap(j -> cutting.cut(j).stream()).toList();
    }

    private List<JoistPiece> cut(JoistPiece drawn) {
        List<Carrier> met = hanging.stream()
                .filter(c -> c.takes(drawn.across(), breadth))
                .filter(c -> body(c, drawn).overlap(drawn.from(), drawn.to()) > Supports.ROUNDING_MM)
                .sorted(Comparator.comparingDouble(c -> body(c, drawn).from()))
                .toList();
        List<JoistPiece> pieces = new ArrayList<>();
        double from = drawn.from();
        double carriesFrom = drawn.from();
        for (Carrier carrier : met) {
            Carrier.Stretch body = body(carrier, drawn);
            double border = carrier.line().alongAt(drawn.across());
            if (isJoist(from, body.from(), carrier, drawn)) {
                pieces.add(new JoistPiece(drawn.across(), from, body.from(), carriesFrom, border));
                carriesFrom = border;
            }
            from = Math.max(from, body.to());
        }
        if (met.isEmpty() || isJoist(from, drawn.to(), met.get(met.size() - 1), drawn)) {
            pieces.add(new JoistPiece(drawn.across(), from, drawn.to(), carriesFrom, drawn.to()));
        } else if (!pieces.isEmpty()) {
            JoistPiece last = pieces.remove(pieces.size() - 1);
            pieces.add(new JoistPiece(last.across(), last.from(), last.to(), last.carriesFrom(), drawn.to()));
        }
        return pieces;
    }

    private static Carrier.Stretch body(Carrier carrier, JoistPiece drawn) {
        return carrier.body(drawn.across(), drawn.middle());
    }

    /** Behind a ledger is its wall, off which the ledger may be drawn by the tolerance. */
    private boolean isJoist(double from, double to, Carrier beside, JoistPiece drawn) {
        double length = to - from;
        boolean behind = beside.isLedger()
                && Math.abs((from + to) / 2 - drawn.middle())
                        > Math.abs(beside.line().alongAt(drawn.across()) - drawn.middle());
        return length >= (behind ? Math.max(breadth, Tolerances.LEDGER_MM / beside.sine()) : breadth);
    }
}
