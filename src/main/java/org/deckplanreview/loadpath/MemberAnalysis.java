package org.deckplanreview.loadpath;

import java.util.List;
import org.deckplanreview.layout.Member;

/** The statics of one joist or beam. Linear in the actions: effects of any combination follow from it. */
public interface MemberAnalysis {

    Member member();

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
