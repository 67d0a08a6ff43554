package org.deckplanreview.loadpath;

/**
 * One effect at one place, for each action: as it is for actions that lie as they lie, largest and smallest over the
 * arrangements for the others. Largest is at least 0 and smallest at most 0, since no imposed load need be there, and the
 * weight of stairs and guards is left out where it relieves.
 */
record Extremes(
        double permanent,
        double attachedLargest,
        double attachedSmallest,
        double imposedLargest,
        double imposedSmallest,
        double concentratedLargest,
        double concentratedSmallest,
        double snow) {

    /** The largest of a combination; snow that relieves is left out. */
    double largest(ActionFactors f) {
        return f.permanent() * (permanent + attachedLargest)
                + f.imposed() * imposedLargest
                + f.concentrated() * concentratedLargest
                + f.snow() * Math.max(0, snow);
    }

    /** The smallest of a combination; snow that relieves is left out. */
    double smallest(ActionFactors f) {
        return f.permanent() * (permanent + attachedSmallest)
                + f.imposed() * imposedSmallest
                + f.concentrated() * concentratedSmallest
                + f.snow() * Math.min(0, snow);
    }

    /** The largest of the effect with its sign, or with the opposite sign. */
    double worst(ActionFactors f, int sign) {
        return sign > 0 ? largest(f) : -smallest(f);
    }

    Extremes times(double share) {
        return new Extremes(
                permanent * share,
                attachedLargest * share,
                attachedSmallest * share,
                imposedLargest * share,
                imposedSmallest * share,
                concentratedLargest * share,
                concentratedSmallest * share,
                snow * share);
    }

    /** With another smallest effect of the concentrated load. */
    Extremes liftedAtMost(double concentrated) {
        return new Extremes(
                permanent,
                attachedLargest,
                attachedSmallest,
                imposedLargest,
                imposedSmallest,
                concentratedLargest,
                concentrated,
                snow);
    }

    /** Also with the concentrated load just beside the place. */
    Extremes orConcentrated(double effect) {
        return new Extremes(
                permanent,
                attachedLargest,
                attachedSmallest,
                imposedLargest,
                imposedSmallest,
                Math.max(concentratedLargest, effect),
                Math.min(concentratedSmallest, effect),
                snow);
    }
}
