package org.deckplanreview.loadpath;

/**
 * Characteristic vertical force of each action, N, downwards positive: the largest over all arrangements, and with
 * every span loaded.
 *
 * @param permanentN with the weight of stairs and guards, all of them there
 */
public record ActionForces(
        double permanentN, double imposedLargestN, double imposedFullN, double concentratedN, double snowN) {

    public static final ActionForces NONE = new ActionForces(0, 0, 0, 0, 0);

    /** The largest of one combination. */
    public double largestN(ActionFactors f) {
        return f.permanent() * permanentN
                + f.imposed() * imposedLargestN
                + f.concentrated() * concentratedN
                + f.snow() * snowN;
    }

    /** Of one combination, with every span loaded. */
    public double fullN(ActionFactors f) {
        return f.permanent() * permanentN + peopleN(f) + f.snow() * snowN;
    }

    /** What of {@link #fullN} are people. */
    public double peopleN(ActionFactors f) {
        return f.imposed() * imposedFullN + f.concentrated() * concentratedN;
    }

    public ActionForces withWeight(double weightN) {
        return new ActionForces(permanentN + weightN, imposedLargestN, imposedFullN, concentratedN, snowN);
    }

    /** Both together; the concentrated load stands once. */
    public ActionForces plus(ActionForces other) {
        return new ActionForces(
                permanentN + other.permanentN,
                imposedLargestN + other.imposedLargestN,
                imposedFullN + other.imposedFullN,
                Math.max(concentratedN, other.concentratedN),
                snowN + other.snowN);
    }
}
