package org.deckplanreview.loadpath;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import org.deckplanreview.submission.Derived;

/**
 * Characteristic loads and the stiffness and density of materials, as the ruleset gives them.
 *
 * @param platforms loads on each platform, in the submission's order
 * @param materials by {@link org.deckplanreview.submission.Timber#stiffnessName()}
 * @param concreteWeightKNPerM3 of footings
 * @param gravityMPerS2 to turn a density into a weight
 * @param shearDeformation whether deflections include the part from shear
 * @param shearAreaFactor kappa: shear area = area / kappa
 * @param concentratedShareOnJoist part of a concentrated load that one joist takes, the rest goes to its neighbours
 * @param leastDeadKNPerM2 the permanent load of finishes, boards and joists together is taken as at least this; empty
 *     where they count as they are
 */
public record LoadModel(
        List<PlatformLoads> platforms,
        SortedMap<String, Material> materials,
        double concreteWeightKNPerM3,
        double gravityMPerS2,
        boolean shearDeformation,
        double shearAreaFactor,
        double concentratedShareOnJoist,
        OptionalDouble leastDeadKNPerM2) {

    /**
     * Loads on one platform.
     *
     * @param uniformKNPerM2 imposed; missing where it depends on something that the submission leaves out
     * @param concentratedN imposed, missing likewise
     * @param finishesKNPerM2 permanent, beside boards, joists and beams
     * @param snowKNPerM2 on the deck, 0 for none
     */
    public record PlatformLoads(
            Derived<Double> uniformKNPerM2,
            Derived<Double> concentratedN,
            double finishesKNPerM2,
            double snowKNPerM2) {}

    /** Mean stiffness and density of a strength class, or of a species and grade. */
    public record Material(double e0MeanNPerMm2, double gMeanNPerMm2, double meanDensityKgPerM3) {}
}
