package org.deckplanreview.method.en1995;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Gathers what every check of a timber under load needs, or says all that is missing at once. */
final class Inputs {
    /** What every check of a strength needs from the ruleset. */
    static final List<ParameterDescription> OF_STRENGTH = MemberBasis.parameters(
            Material.PARAMETERS, List.of(StrengthClass.TABLE, Combination.COMBINATIONS, Psi.TABLE, Loading.PARAMETER));

    private Inputs() {}

    /** A check that has all it needs. */
    @FunctionalInterface
    interface Check<L> {
        Evaluation evaluate(L loads, StrengthClass strengthClass, Psi psi);
    }

    /** A strength class that the ruleset lacks is out of scope, whatever else is missing. */
    static <L> Evaluation gather(
            Timber timber,
            Pointer timberPointer,
            Derived<L> loads,
            Derived<String> category,
            Parameters parameters,
            Check<L> check) {
        Derived<String> className = Derived.of(
                timber.strengthClass(),
                timberPointer.child("strengthClass"),
                "the strength class of " + timber.displayLabel() + ", for example C24");
        Optional<StrengthClass> strengthClass =
                className.optional().flatMap(name -> StrengthClass.find(parameters, name));
        if (className.isKnown() && strengthClass.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "Strength class " + className.get() + " is not in the table",
                    parameters.source(StrengthClass.TABLE.name()));
        }
        List<Need> needs = new ArrayList<>(className.needs());
        needs.addAll(loads.needs());
        needs.addAll(category.needs());
        if (!needs.isEmpty()) {
            return new Evaluation.Missing(needs.stream().distinct().sorted().toList());
        }
        Optional<Psi> psi = Psi.find(parameters, category.get());
        if (psi.isEmpty()) {
            return noFactors(category.get(), parameters);
        }
        return check.evaluate(loads.get(), strengthClass.orElseThrow(), psi.get());
    }

    static Evaluation noFactors(String category, Parameters parameters) {
        return new Evaluation.OutOfScope(
                "The table has no combination factors for imposed load of category " + category,
                parameters.source(Psi.TABLE.name()));
    }
}
