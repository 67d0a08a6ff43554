package org.deckplanreview.loadpath;

/**
 * What presses a support down and what may lift what rests on it, characteristic, N, downwards positive. Snow is not among
 * them: it lies everywhere or, where it would hold down, not at all.
 *
 * @param permanentDownN the parts of the permanent action that press down, at least 0
 * @param permanentUpN the parts that lift, as those on an overhang do, at most 0
 * @param imposedN smallest over all arrangements of the uniform imposed load, at most 0
 * @param concentratedN smallest over all places of the concentrated load, at most 0
 */
public record LiftForces(double permanentDownN, double permanentUpN, double imposedN, double concentratedN) {
    public static final LiftForces NONE = new LiftForces(0, 0, 0, 0);

    /** Both at once; the concentrated load stands once, where it lifts most. */
    public LiftForces and(LiftForces other) {
        return new LiftForces(
                permanentDownN + other.permanentDownN,
                permanentUpN + other.permanentUpN,
                imposedN + other.imposedN,
                Math.min(concentratedN, other.concentratedN));
    }

    /** With a weight that always presses down. */
    public LiftForces withWeight(double weightN) {
        return new LiftForces(permanentDownN + weightN, permanentUpN, imposedN, concentratedN);
    }
}
