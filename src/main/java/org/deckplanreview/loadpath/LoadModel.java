package org.deckplanreview.loadpath;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.submission.GuardInfill;

/**
 * Characteristic loads and the stiffness and density of materials, as the ruleset gives them.
 *
 * @param platforms loads on each platform, in the submission's order
 * @param materials by {@link org.deckplanreview.submission.Timber#stiffnessName()}
 * @param concreteWeightKNPerM3 of footings
 * @param gravityMPerS2 to turn a density into a weight
 * @param shearDeformation whether deflections include the part from shear
 * @param shearAreaFactor kappa: shear area = area / kappa
 * @param concentratedShareOnJoist least part of a concentrated load that bends one joist where boards spread it
 * @param leastDeadKNPerM2 the permanent load of finishes, boards and joists together is taken as at least this; empty
 *     where they count as they are
 * @param onEdges loads of stairs and guards
 */
public record LoadModel(
        List<PlatformLoads> platforms,
        SortedMap<String, Material> materials,
        double concreteWeightKNPerM3,
        double gravityMPerS2,
        boolean shearDeformation,
        double shearAreaFactor,
        double concentratedShareOnJoist,
        OptionalDouble leastDeadKNPerM2,
        OnEdges onEdges) {

    /**
     * Loads on one platform.
     *
     * @param uniformKNPerM2 imposed; missing where it depends on something that the submission leaves out
     * @param imposedSource where the imposed load comes from; blank where nothing tells
     * @param concentratedN imposed, missing likewise
     * @param finishesKNPerM2 permanent, beside boards, joists and beams
     * @param snowKNPerM2 on the deck, 0 for none
     */
    public record PlatformLoads(
            Derived<Double> uniformKNPerM2,
            String imposedSource,
            Derived<Double> concentratedN,
            double finishesKNPerM2,
            double snowKNPerM2) {}

    /**
     * Loads of stairs and guards.
     *
     * @param stairWeightKNPerM2 of the flight's area in plan
     * @param stairImposedKNPerM2 likewise; missing where the ruleset has none for the occupancy
     * @param stairConcentratedN on one place of the flight, missing likewise
     * @param guardKNPerM weight of a guard by what fills it
     */
    public record OnEdges(
            double stairWeightKNPerM2,
            Derived<Double> stairImposedKNPerM2,
            Derived<Double> stairConcentratedN,
            SortedMap<GuardInfill, Double> guardKNPerM) {

        /** Weight by what fills the guard; where that is not given, the largest. */
        public double guardKNPerM(Optional<GuardInfill> infill) {
            return infill.map(guardKNPerM::get)
                    .orElseGet(() -> guardKNPerM.values().stream()
                            .mapToDouble(Double::doubleValue)
                            .max()
                            .orElse(0));
        }
    }

    /** Mean stiffness and density of a strength class, or of a species and grade. */
    public record Material(double e0MeanNPerMm2, double gMeanNPerMm2, double meanDensityKgPerM3) {}
}
