package org.deckplanreview.method.equilibrium;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/**
 * A joint that may be lifted, under one combination.
 *
 * @param name of the joint, for the finding's sentence; may be empty
 * @param sheet ends with the utilisation
 */
record Joint(String name, Balance combination, Sheet sheet, double utilisation, List<String> assumed) implements Case {
    private static final Formula LEFT = Formula.of("R_d = F_stb,d - F_dst,d", NEWTON_, "");
    private static final Formula UTILISATION = Formula.of(
            "utilisation = 0 if F_dst,d <= 0 and F_stb,d + T_Rd <= 0; F_dst,d / (F_stb,d + T_Rd)", RATIO, "");
    private static final Formula LEFT_WHEN_PUSHED = Formula.of("R_d = F_stb,d - (F_dst,d + N_H,d)", NEWTON_, "");
    private static final Formula UTILISATION_WHEN_PUSHED = Formula.of(
            "utilisation = 0 if F_dst,d + N_H,d <= 0 and F_stb,d + T_Rd <= 0; (F_dst,d + N_H,d) / (F_stb,d + T_Rd)",
            RATIO,
            "");

    /** All combinations of one joint. */
    static List<Joint> of(String name, LiftForces forces, Hold hold, Parameters parameters, List<String> assumed) {
        return Balance.of(parameters).stream()
                .map(c -> of(name, c, c.of(forces, parameters), hold, LEFT, UTILISATION, assumed))
                .toList();
    }

    /**
     * One that is lifted by a push of the deck too.
     *
     * @param push on which stands what it lifts with, {@code N_H,d}
     */
    static Joint pushed(
            String name,
            LiftForces forces,
            Balance combination,
            Sheet push,
            Hold hold,
            Parameters parameters,
            List<String> assumed) {
        Sheet sheet = Sheet.on(combination.of(forces, parameters), push);
        return of(name, combination, sheet, hold, LEFT_WHEN_PUSHED, UTILISATION_WHEN_PUSHED, assumed);
    }

    private static Joint of(
            String name,
            Balance combination,
            Sheet sheet,
            Hold hold,
            Formula left,
            Formula utilisation,
            List<String> assumed) {
        sheet.calculate(left);
        hold.enter(sheet);
        return new Joint(name, combination, sheet, sheet.calculate(utilisation), assumed);
    }

    /** What is needed beside weight, N; 0 where weight alone holds the joint down. */
    double neededN() {
        return Math.max(0, -sheet.value("R_d"));
    }

    static double neededN(List<Joint> joints) {
        return joints.stream().mapToDouble(Joint::neededN).max().orElse(0);
    }

    boolean holds() {
        return Sense.AT_MOST.holds(utilisation(), 1);
    }

    /** The same under another name and what is assumed of it. */
    Joint named(String other, List<String> assumptions) {
        return new Joint(other, combination, sheet, utilisation, assumptions);
    }

    @Override
    public Evaluation.Measured measured() {
        return new Evaluation.Measured(
                sheet.measure("R_d"),
                Sense.AT_LEAST,
                Measure.of(0 - sheet.value("T_Rd"), NEWTON_),
                utilisation,
                (name.isEmpty() ? "" : name + ", ") + "combination " + combination.id(),
                sheet.steps(),
                assumed);
    }
}
