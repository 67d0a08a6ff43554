package org.deckplanreview.schedule;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.submission.PlanPoint;

/**
 * A rectangle to be checked by its diagonals.
 *
 * @param corners labels in order around it
 * @param firstSideMm between the first two corners
 * @param secondSideMm between the second and the third
 * @param diagonalMm between the first and the third corner
 * @param otherDiagonalMm between the second and the fourth
 * @param triangle the largest for setting out a right angle that fits its sides; empty where none does
 */
public record SetOutRectangle(
        List<String> corners,
        double firstSideMm,
        double secondSideMm,
        double diagonalMm,
        double otherDiagonalMm,
        Optional<RightTriangle> triangle) {
    public SetOutRectangle {
        corners = List.copyOf(corners);
    }

    /** A triangle with sides of 3, 4 and 5 units, its longer leg along the rectangle's longer side. */
    public record RightTriangle(double shorterLegMm, double longerLegMm, double hypotenuseMm) {

        private static final double ROUNDING = 1e-6;

        static Optional<RightTriangle> largest(double sideMm, double otherSideMm, double stepMm) {
            double unit = Math.min(Math.min(sideMm, otherSideMm) / 3, Math.max(sideMm, otherSideMm) / 4);
            double steps = Math.floor(unit / stepMm + ROUNDING) * stepMm;
            return steps > 0 ? Optional.of(new RightTriangle(3 * steps, 4 * steps, 5 * steps)) : Optional.empty();
        }
    }

    record Corner(String label, PlanPoint at) {}

    /** Of four corners in order; empty where they form no rectangle. */
    static Optional<SetOutRectangle> of(List<Corner> corners, SitePractice practice) {
        double first = distance(corners, 0, 1);
        double second = distance(corners, 1, 2);
        double diagonal = distance(corners, 0, 2);
        double other = distance(corners, 1, 3);
        double tolerance = practice.rectangleToleranceMm();
        boolean isRectangle = Math.abs(first - distance(corners, 2, 3)) <= tolerance
                && Math.abs(second - distance(corners, 3, 0)) <= tolerance
                && Math.abs(diagonal - other) <= tolerance;
        return isRectangle
                ? Optional.of(new SetOutRectangle(
                        corners.stream().map(Corner::label).toList(),
                        first,
                        second,
                        diagonal,
                        other,
                        RightTriangle.largest(first, second, practice.triangleStepMm())))
                : Optional.empty();
    }

    private static double distance(List<Corner> corners, int a, int b) {
        return Baseline.distance(corners.get(a).at(), corners.get(b).at());
    }
}
