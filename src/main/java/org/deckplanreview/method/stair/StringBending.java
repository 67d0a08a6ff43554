package org.deckplanreview.method.stair;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.Timber;

/** Bending of the string that carries most: a simple beam over the stair's going in plan. */
final class StringBending extends StringMethod {

    private static final List<String> ASSUMPTIONS = Stream.concat(
                    Stream.of("Treads hold the strings of a stair against buckling sideways."),
                    StringActions.ASSUMPTIONS.stream())
            .toList();

    StringBending() {
        super(StringActions.bendingOf(
                "stair.stringBending",
                "bending stress of the strings",
                "Largest bending stress of a string as a simple beam over the flight's going, under the load on each area or on one"
                        + " place, whichever is worse, with its part of the width, against the design bending strength: equation"
                        + " (6.11) for one axis."));
    }

    @Override
    Evaluation check(StringActions actions, ReviewContext context) {
        Timber timber = context.submission().timber(actions.strings().timber());
        Optional<Evaluation> outOfScope = SingleTimber.outOfScope(timber, actions.parameters());
        if (outOfScope.isPresent()) {
            return outOfScope.get();
        }
        Derived<Evaluation> result = SingleTimber.of(
                        timber, context.submission().timberPointer(timber.id()), actions.parameters())
                .with(throatMm(actions, timber), (whole, throat) -> left(whole, actions, timber, throat))
                .map(left -> StringActions.bending(left, actions::string, "a string", ASSUMPTIONS));
        return result.isKnown() ? result.get() : new Evaluation.Missing(result.needs());
    }

    /** What is left of the string's depth square to its slope; no more than the timber is deep. */
    private static Derived<Double> throatMm(StringActions actions, Timber timber) {
        return Derived.of(
                        actions.strings().throatDepth(),
                        actions.stringsMember("throatDepth"),
                        "what is left of the strings' depth square to their slope where they are cut to the steps, a"
                                + " length; the whole depth where they are not cut")
                .map(t -> Math.min(t.mm(), timber.depth().mm()));
    }

    private static SingleTimber left(SingleTimber whole, StringActions actions, Timber timber, double throatMm) {
        double cut = timber.depth().mm() - throatMm;
        return cut > 0 ? whole.notched(cut, actions.stringsMember("throatDepth")) : whole;
    }
}
