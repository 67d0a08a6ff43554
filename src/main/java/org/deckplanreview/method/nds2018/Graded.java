package org.deckplanreview.method.nds2018;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.Parameters;

/** Gathers what every check of lumber needs, or says what is missing. */
final class Graded {
    private Graded() {}

    /** Lumber that the ruleset has no values for is out of scope, whatever else is missing. */
    static <L> Evaluation gather(
            Timber timber,
            Pointer pointer,
            Derived<L> loads,
            Parameters parameters,
            BiFunction<L, Adjustments, Evaluation> check) {
        Optional<Lumber> lumber = Lumber.find(parameters, timber);
        if (lumber.isEmpty() && timber.species().isPresent() && timber.grade().isPresent()) {
            return new Evaluation.OutOfScope(
                    "The tables have no design values for "
                            + timber.stiffnessName().orElseThrow() + " of "
                            + inches(Section.of(timber, 1).breadthIn()) + " by "
                            + inches(Section.of(timber, 1).depthIn()),
                    parameters.source(Lumber.DESIGN_VALUES.name()));
        }
        List<Need> needs = new ArrayList<>(loads.needs());
        if (lumber.isEmpty() && needs.stream().noneMatch(n -> isOf(pointer, n))) {
            needs.add(
                    timber.species().isEmpty()
                            ? new Need(
                                    pointer.child("species"),
                                    "the species and grade of " + timber.displayLabel()
                                            + ", for example southern-pine no.2")
                            : new Need(
                                    pointer.child("grade"),
                                    "the grade of " + timber.displayLabel() + ", for example no.2"));
        }
        return needs.isEmpty()
                ? check.apply(loads.get(), Adjustments.of(lumber.orElseThrow(), timber, pointer, parameters))
                : new Evaluation.Missing(needs.stream().distinct().sorted().toList());
    }

    private static boolean isOf(Pointer timber, Need need) {
        return need.pointer().value().startsWith(timber.value() + "/");
    }

    private static String inches(double in) {
        return Numbers.plain(in) + " in";
    }
}
