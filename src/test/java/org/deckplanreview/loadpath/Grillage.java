package org.deckplanreview.loadpath;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * Joists side by side under boards that cross all of them, hinged to each: the stiffness method for a grillage, by a matrix
 * library. Every place along a joist is a support or the crossing of a board.
 */
final class Grillage {

    private final int joists;
    private final double[] placesMm;
    private final double joistEi;
    private final DecompositionSolver solver;

    /**
     * @param placesMm along the joists, rising
     * @param supported which of them are supports, that do not give way
     */
    Grillage(int joists, double[] placesMm, boolean[] supported, double joistEi, double boardEi, double spacingMm) {
        this.joists = joists;
        this.placesMm = placesMm.clone();
        this.joistEi = joistEi;
        int n = placesMm.length;
        int size = 3 * joists * n;
        Array2DRowRealMatrix k = new Array2DRowRealMatrix(size, size);
        for (int j = 0; j < joists; j++) {
            for (int i = 0; i + 1 < n; i++) {
                add(
                        k,
                        joistEi,
                        placesMm[i + 1] - placesMm[i],
                        sinks(j, i),
                        slope(j, i),
                        sinks(j, i + 1),
                        slope(j, i + 1));
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j + 1 < joists; j++) {
                add(k, boardEi, spacingMm, sinks(j, i), boardSlope(j, i), sinks(j + 1, i), boardSlope(j + 1, i));
            }
            for (int j = 0; j < joists && supported[i]; j++) {
                for (int c = 0; c < size; c++) {
                    k.setEntry(sinks(j, i), c, 0);
                    k.setEntry(c, sinks(j, i), 0);
                }
                k.setEntry(sinks(j, i), sinks(j, i), joistEi / 1e6);
            }
        }
        solver = new LUDecomposition(k, 1e-30).getSolver();
    }

    private int sinks(int joist, int place) {
        return 3 * (joist * placesMm.length + place);
    }

    private int slope(int joist, int place) {
        return sinks(joist, place) + 1;
    }

    private int boardSlope(int joist, int place) {
        return sinks(joist, place) + 2;
    }

    /** A straight piece without shear deformation. */
    private static void add(Array2DRowRealMatrix k, double ei, double l, int... unknowns) {
        double[][] piece = piece(ei, l);
        for (int r = 0; r < 4; r++) {
            for (int c = 0; c < 4; c++) {
                k.addToEntry(unknowns[r], unknowns[c], piece[r][c]);
            }
        }
    }

    private static double[][] piece(double ei, double l) {
        double f = ei / (l * l * l);
        return new double[][] {
            {12 * f, 6 * l * f, -12 * f, 6 * l * f},
            {6 * l * f, 4 * l * l * f, -6 * l * f, 2 * l * l * f},
            {-12 * f, -6 * l * f, 12 * f, -6 * l * f},
            {6 * l * f, 2 * l * l * f, -6 * l * f, 4 * l * l * f}
        };
    }

    /** The largest moment of either sign in a joist that a force stands on. */
    double largestMomentNmm(int joist, int place, double forceN) {
        ArrayRealVector load = new ArrayRealVector(3 * joists * placesMm.length);
        load.setEntry(sinks(joist, place), forceN);
        RealVector u = solver.solve(load);
        double largest = 0;
        for (int i = 0; i + 1 < placesMm.length; i++) {
            double[][] k = piece(joistEi, placesMm[i + 1] - placesMm[i]);
            int[] unknowns = {sinks(joist, i), slope(joist, i), sinks(joist, i + 1), slope(joist, i + 1)};
            double start = 0;
            double end = 0;
            for (int c = 0; c < 4; c++) {
                start += k[1][c] * u.getEntry(unknowns[c]);
                end += k[3][c] * u.getEntry(unknowns[c]);
            }
            largest = Math.max(largest, Math.max(Math.abs(start), Math.abs(end)));
        }
        return largest;
    }
}
