package org.deckplanreview.loadpath;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Member;

/** The statics of one joist or beam. Linear in the actions: effects of any combination follow from it. */
public interface MemberAnalysis {

    Member member();

    /** The weight g_m, N/mm, with how it comes about. */
    Sheet weight();

    /** Weight of the stairs and guards that the member itself holds, N. */
    double attachedWeightN();

    /** Imposed load of the stairs that the member itself holds, N. */
    double attachedImposedN();

    /** Characteristic reactions of the joists that a beam carries, in their order along it; empty for a joist. */
    List<ActionForces> carried();

    /** The worst effects of the combination; the same factors give the same object's values, bit for bit. */
    Effects effects(ActionFactors factors);

    /** What presses one of the member's supports down, and what may lift the member off it. */
    LiftForces lift(int support);

    /**
     * Characteristic total of one action on the member, N, its own weight included; for IMPOSED with everything loaded,
     * for CONCENTRATED the load itself.
     */
    double totalN(Action action);

    /** Characteristic reaction at one of the member's supports, as it goes on to what is below. */
    ActionForces forces(int support);

    /**
     * What lies on the member, and how far moment, shear and deflection reach along it.
     *
     * @param alternatives combinations of which the farthest counts at each place; at least one
     */
    MemberDiagrams diagrams(List<ActionFactors> alternatives);
}
