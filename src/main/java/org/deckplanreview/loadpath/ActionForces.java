package org.deckplanreview.loadpath;

/**
 * Characteristic vertical force of each action, N, downwards positive: the largest over all arrangements, and with
 * every span loaded.
 *
 * @param permanentN with the weight of stairs and guards, all of them there
 */
public record ActionForces(
        double permanentN, double imposedLargestN, double imposedFullN, double concentratedN, double snowN) {

    public double largestN(ActionFactors f) {
        return f.permanent() * permanentN
                + f.imposed() * imposedLargestN
                + f.concentrated() * concentratedN
                + f.snow() * snowN;
    }
}
