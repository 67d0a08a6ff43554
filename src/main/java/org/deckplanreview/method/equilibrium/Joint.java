package org.deckplanreview.method.equilibrium;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.function.Consumer;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
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
 */
record Joint(
        String name,
        LiftForces forces,
        Balance combination,
        Hold hold,
        Parameters parameters,
        List<String> assumed,
        Push push)
        implements Case {

    /**
     * What lifts the joint because the deck is pushed sideways.
     *
     * @param written shows it as {@code N_H,d}
     */
    record Push(double newtons, Consumer<Sheet> written) {
        static final Push NONE = new Push(0, w -> {});
    }

    /**
     * What holds the joint down beside the weight on it.
     *
     * @param source where the ruleset has the force from; empty where it does not come from there
     */
    record Hold(double newtons, String meaning, String source, List<Pointer> from) {}

    /** All combinations of one joint. */
    static List<Joint> of(String name, LiftForces forces, Hold hold, Parameters parameters, List<String> assumed) {
        return Balance.of(parameters).stream()
                .map(c -> new Joint(name, forces, c, hold, parameters, assumed, Push.NONE))
                .toList();
    }

    /** What is needed beside weight, N; 0 where weight alone holds the joint down. */
    double neededN() {
        return Math.max(0, -smallestN());
    }

    static double neededN(List<Joint> joints) {
        return joints.stream().mapToDouble(Joint::neededN).max().orElse(0);
    }

    boolean holds() {
        return Sense.AT_MOST.holds(utilisation(), 1);
    }

    private double smallestN() {
        return combination.downN(forces) - upN();
    }

    private double upN() {
        return combination.upN(forces) + push.newtons();
    }

    @Override
    public double utilisation() {
        double up = upN();
        return up == 0 ? 0 : up / (combination.downN(forces) + hold.newtons());
    }

    @Override
    public Evaluation.Measured measured() {
        return new Evaluation.Measured(
                Measure.of(smallestN(), NEWTON_),
                Sense.AT_LEAST,
                Measure.of(0 - hold.newtons(), NEWTON_),
                utilisation(),
                (name.isEmpty() ? "" : name + ", ") + "combination " + combination.id(),
                working(),
                assumed);
    }

    private List<WorkingStep> working() {
        Sheet w = Sheet.blank();
        combination.write(w, forces, parameters);
        String up = push.newtons() == 0 ? "F_dst,d" : "(F_dst,d + N_H,d)";
        push.written().accept(w);
        w.step("R_d", "F_stb,d - " + up, smallestN(), NEWTON_, "");
        w.given(
                "T_Rd",
                hold.newtons(),
                NEWTON_,
                hold.meaning(),
                hold.source(),
                hold.from().toArray(Pointer[]::new));
        w.step("utilisation", up + " / (F_stb,d + T_Rd)", utilisation(), RATIO, "");
        return w.steps();
    }
}
