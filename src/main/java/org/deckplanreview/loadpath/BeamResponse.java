package org.deckplanreview.loadpath;

/**
 * Moment, shear and deflection of a beam under one set of loads, as polynomials between the places where loads or
 * supports change. Signs as in {@link ContinuousBeam}.
 */
final class BeamResponse {

    private final Piece[] pieces;
    private final double[] startsMm;
    private final double lengthMm;
    private final double bendingStiffnessNMm2;
    private final double shearFlexibilityPerN;
    private final double[] reactionsN;
    private final double[] shearBeforeN;
    private final double[] shearBehindN;

    BeamResponse(
            Piece[] pieces,
            double lengthMm,
            double bendingStiffnessNMm2,
            double shearFlexibilityPerN,
            double[] reactionsN,
            double[] shearBeforeN,
            double[] shearBehindN) {
        this.pieces = pieces;
        this.startsMm = new double[pieces.length];
        for (int i = 0; i < pieces.length; i++) {
            startsMm[i] = pieces[i].fromMm;
        }
        this.lengthMm = lengthMm;
        this.bendingStiffnessNMm2 = bendingStiffnessNMm2;
        this.shearFlexibilityPerN = shearFlexibilityPerN;
        this.reactionsN = reactionsN;
        this.shearBeforeN = shearBeforeN;
        this.shearBehindN = shearBehindN;
    }

    double momentNMm(double xMm) {
        Piece p = pieceBehind(xMm);
        return p.momentAfter(xMm - p.fromMm);
    }

    /** Shear just behind a place. */
    double shearN(double xMm) {
        Piece p = pieceBehind(xMm);
        return p.shearAfter(xMm - p.fromMm);
    }

    double deflectionMm(double xMm) {
        Piece p = pieceBehind(xMm);
        return p.deflectionAfter(xMm - p.fromMm, bendingStiffnessNMm2, shearFlexibilityPerN);
    }

    /** Slope of the deflected axis just behind a place: rotation of the section and shear angle. */
    double slope(double xMm) {
        Piece p = pieceBehind(xMm);
        return p.slopeAfter(xMm - p.fromMm, bendingStiffnessNMm2, shearFlexibilityPerN);
    }

    double reactionN(int support) {
        return reactionsN[support];
    }

    /** Shear just before a support. */
    double shearBeforeN(int support) {
        return shearBeforeN[support];
    }

    /** Shear just behind a support. */
    double shearBehindN(int support) {
        return shearBehindN[support];
    }

    /** The one piece between two places without a change of load between them, as it is from the first on. */
    Piece between(double fromMm, double toMm) {
        Piece p = pieceBehind((fromMm + toMm) / 2);
        double t = fromMm - p.fromMm;
        return new Piece(
                fromMm,
                p.loadNPerMm + t * p.loadSlope,
                p.loadSlope,
                p.shearAfter(t),
                p.momentAfter(t),
                p.rotationAfter(t, bendingStiffnessNMm2),
                p.deflectionAfter(t, bendingStiffnessNMm2, shearFlexibilityPerN));
    }

    private Piece pieceBehind(double xMm) {
        if (!(xMm >= 0 && xMm <= lengthMm)) {
            throw new IllegalArgumentException(xMm + " mm is not on the beam of " + lengthMm + " mm");
        }
        int low = 0;
        int high = pieces.length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (startsMm[middle] <= xMm) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return pieces[low];
    }

    /**
     * A piece of the beam under a load whose intensity varies linearly, with what holds at its start.
     *
     * @param loadNPerMm intensity at its start
     * @param loadSlope change of intensity, N/mm per mm
     * @param rotation of the section; without shear deformation the slope of the axis
     */
    record Piece(
            double fromMm,
            double loadNPerMm,
            double loadSlope,
            double shearN,
            double momentNMm,
            double rotation,
            double deflectionMm) {

        double shearAfter(double t) {
            return shearN - t * (loadNPerMm + t * loadSlope / 2);
        }

        double momentAfter(double t) {
            return momentNMm + t * (shearN - t * (loadNPerMm / 2 + t * loadSlope / 6));
        }

        double rotationAfter(double t, double ei) {
            return rotation - t * (momentNMm + t * (shearN / 2 - t * (loadNPerMm / 6 + t * loadSlope / 24))) / ei;
        }

        /** Slope of the deflected axis: rotation of the section and shear angle. */
        double slopeAfter(double t, double ei, double shearFlexibility) {
            return rotationAfter(t, ei) + shearAfter(t) * shearFlexibility;
        }

        double deflectionAfter(double t, double ei, double shearFlexibility) {
            double bending = t * t * (momentNMm / 2 + t * (shearN / 6 - t * (loadNPerMm / 24 + t * loadSlope / 120)));
            return deflectionMm + t * rotation - bending / ei + (momentAfter(t) - momentNMm) * shearFlexibility;
        }
    }
}
