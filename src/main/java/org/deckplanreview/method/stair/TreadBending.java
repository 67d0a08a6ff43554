package org.deckplanreview.method.stair;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.Timber;

/** Bending of one board of a tread between the strings that hold it. */
final class TreadBending extends StringMethod {

    private static final List<String> ASSUMPTIONS = List.of(
            "The strings of a stair stand evenly over its width, the outer ones at its sides.",
            "The depth of the treads' timber lies upright, and one board carries the whole load on one place.");

    TreadBending() {
        super(StringActions.bendingOf(
                "stair.treadBending",
                "bending stress of the treads",
                "Largest bending stress of one board of a tread as a simple beam from the middle of one string to the middle of the"
                        + " next, under the load on each area or the whole load on one place, whichever is worse, against the design"
                        + " bending strength: equation (6.11) for one axis."));
    }

    @Override
    Evaluation check(StringActions actions, ReviewContext context) {
        Optional<String> id = actions.stair().stair().treadTimber();
        if (id.isEmpty()) {
            return new Evaluation.Missing(List.of(new Need(
                    actions.stair().pointer().child("treadTimber"),
                    "the timber of the treads of " + actions.stair().label())));
        }
        Timber timber = context.submission().timber(id.get());
        Pointer pointer = context.submission().timberPointer(id.get());
        return SingleTimber.outOfScope(timber, actions.parameters()).orElseGet(() -> {
            Timber string = context.submission().timber(actions.strings().timber());
            Derived<Evaluation> result = SingleTimber.of(timber, pointer, actions.parameters())
                    .map(single -> StringActions.bending(
                            single,
                            load -> actions.tread(load, timber, pointer, string),
                            "one board of a tread",
                            ASSUMPTIONS));
            return result.isKnown() ? result.get() : new Evaluation.Missing(result.needs());
        });
    }
}
