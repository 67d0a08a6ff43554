package org.deckplanreview.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.ruleset.Provision;

/**
 * What calculations say where a provision does not reach: the worst of them. It decides nothing.
 *
 * @param by the provision that calculates it
 * @param determination of that provision
 * @param utilisation unrounded; empty where it is not known
 * @param sentence what is calculated and who must confirm it, for people
 */
public record Calculated(Provision by, Determination determination, OptionalDouble utilisation, String sentence) {

    /** A calculation and what it comes to. */
    record By(Provision provision, Result result) {
        private boolean is(Determination determination) {
            return result.determination() == determination;
        }

        private boolean isWorseThan(By other) {
            return Result.isMore(result.utilisation(), other.result.utilisation());
        }
    }

    /** The worst of several; one that fails governs, then one that cannot be told. Empty where none applies. */
    static Optional<Calculated> governing(List<By> all) {
        Optional<By> failing = worst(all, Determination.DOES_NOT_COMPLY);
        Optional<By> carrying = worst(all, Determination.COMPLIES);
        if (failing.isPresent()) {
            return failing.map(by -> of(by, "Calculated instead: " + told(by) + ", over 1: it would not pass."));
        }
        List<By> open =
                all.stream().filter(by -> by.is(Determination.UNDETERMINED)).toList();
        if (!open.isEmpty()) {
            By first = open.get(0);
            return Optional.of(new Calculated(
                    first.provision(),
                    Determination.UNDETERMINED,
                    OptionalDouble.empty(),
                    "The calculation does not tell either ("
                            + first.provision().title() + "): " + reason(first.result())
                            + carrying.map(by -> " What is calculated otherwise comes to " + told(by)
                                            + ", where 1 is the limit.")
                                    .orElse("")
                            + " An engineer must design it."));
        }
        return carrying.map(by ->
                of(by, "Calculated instead: " + told(by) + ", where 1 is the limit; an engineer must confirm it."));
    }

    boolean isWorseThan(Calculated other) {
        return determination == other.determination
                ? Result.isMore(utilisation, other.utilisation)
                : determination.compareTo(other.determination) < 0;
    }

    private static Calculated of(By by, String sentence) {
        return new Calculated(
                by.provision(), by.result().determination(), by.result().utilisation(), sentence);
    }

    private static Optional<By> worst(List<By> all, Determination determination) {
        return all.stream()
                .filter(by -> by.is(determination))
                .reduce((worst, by) -> by.isWorseThan(worst) ? by : worst);
    }

    private static String told(By by) {
        OptionalDouble utilisation = by.result().utilisation();
        String value = utilisation.isPresent() && Double.isFinite(utilisation.getAsDouble())
                ? Numbers.utilisation(utilisation.getAsDouble()).toPlainString()
                : by.is(Determination.COMPLIES) ? "under 1" : "more than can be counted";
        return value + " (" + by.provision().title() + ")";
    }

    private static String reason(Result result) {
        return result.needs().isEmpty()
                ? result.sentence()
                : "give " + result.needs().stream().map(Need::what).distinct().collect(Collectors.joining("; ")) + ".";
    }
}
