package org.deckplanreview.loadpath;

import java.util.List;

/**
 * Loads on a member and how far their effects reach, along the member.
 *
 * @param permanent characteristic, downwards positive
 * @param imposed characteristic, with everything loaded
 * @param snow characteristic
 * @param concentratedN the load that may stand anywhere instead of the imposed one; 0 for none
 * @param places in order; two at each place where something changes: just before it and just behind it
 */
public record MemberDiagrams(
        List<BeamLoad> permanent,
        List<BeamLoad> imposed,
        List<BeamLoad> snow,
        double concentratedN,
        List<Place> places) {
    public MemberDiagrams {
        permanent = List.copyOf(permanent);
        imposed = List.copyOf(imposed);
        snow = List.copyOf(snow);
        places = List.copyOf(places);
    }

    /** The smallest and the largest value of an effect. */
    public record Reach(double smallest, double largest) {}

    /**
     * @param atMm along the member
     * @param momentNMm tension below positive
     * @param shearN sum of the upward forces before the place positive
     * @param deflectionMm downwards positive
     */
    public record Place(double atMm, Reach momentNMm, Reach shearN, Reach deflectionMm) {}
}
