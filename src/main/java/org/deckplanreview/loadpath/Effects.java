package org.deckplanreview.loadpath;

import java.util.List;

/**
 * The worst effects of one combination on a member, over all arrangements of imposed load.
 *
 * @param spans in the member's order
 * @param supports in the member's order
 */
public record Effects(List<SpanEffects> spans, List<SupportEffects> supports) {
    public Effects {
        spans = List.copyOf(spans);
        supports = List.copyOf(supports);
    }

    /** A worst value and where along the member, in mm, it is. */
    public record Peak(double value, double atMm) {}

    /**
     * @param sagging largest bending moment with tension below, N mm; at least 0
     * @param hogging largest bending moment with tension above, N mm, as a positive number; at least 0
     * @param down largest deflection downwards, mm; at least 0
     * @param up largest deflection upwards, mm, as a positive number; at least 0
     */
    public record SpanEffects(Peak sagging, Peak hogging, Peak down, Peak up) {}

    /**
     * @param shear largest shear force beside the support on either side, N, positive
     * @param largestReactionN upwards on the member
     * @param smallestReactionN negative where the member would lift
     */
    public record SupportEffects(Peak shear, double largestReactionN, double smallestReactionN) {}
}
