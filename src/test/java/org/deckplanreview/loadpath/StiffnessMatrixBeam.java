package org.deckplanreview.loadpath;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.deckplanreview.loadpath.BeamLoad.Distributed;
import org.deckplanreview.loadpath.BeamLoad.Point;

/**
 * A second way to the same answers: many nodes, each with a deflection and a rotation, the full stiffness matrix of a
 * general library, supports by leaving out their rows. Element matrix and fixed-end forces with shear deformation after
 * Przemieniecki, Theory of Matrix Structural Analysis (1968), 5.6 and its table of fixed-end forces, from memory.
 */
final class StiffnessMatrixBeam {

    final double[] nodes;
    final double[] deflection;
    final double[] moment;
    final double[] reaction;

    StiffnessMatrixBeam(double length, double[] supports, double ei, double flexibility, List<BeamLoad> loads) {
        TreeSet<Double> places = new TreeSet<>(List.of(0.0, length));
        for (double s : supports) {
            places.add(s);
        }
        loads.forEach(l -> {
            places.add(l.fromMm());
            places.add(l.toMm());
        });
        TreeSet<Double> halves = new TreeSet<>(places);
        Double last = null;
        for (double p : places) {
            if (last != null) {
                halves.add((last + p) / 2);
            }
            last = p;
        }
        nodes = halves.stream().mapToDouble(Double::doubleValue).toArray();
        int n = nodes.length;
        RealMatrix k = new Array2DRowRealMatrix(2 * n, 2 * n);
        RealVector f = new ArrayRealVector(2 * n);
        double[][][] element = new double[n - 1][][];
        double[][] fixed = new double[n - 1][];
        for (int e = 0; e < n - 1; e++) {
            double h = nodes[e + 1] - nodes[e];
            double phi = 12 * ei * flexibility / (h * h);
            element[e] = elementMatrix(ei, h, phi);
            double atStart = 0;
            double atEnd = 0;
            for (BeamLoad l : loads) {
                if (l instanceof Distributed d && d.fromMm() <= nodes[e] && nodes[e + 1] <= d.toMm()) {
                    atStart += d.at(nodes[e]);
                    atEnd += d.at(nodes[e + 1]);
                }
            }
            fixed[e] = nodalForces(atStart, atEnd, h, phi);
            for (int i = 0; i < 4; i++) {
                f.addToEntry(2 * e + i, fixed[e][i]);
                for (int j = 0; j < 4; j++) {
                    k.addToEntry(2 * e + i, 2 * e + j, element[e][i][j]);
                }
            }
        }
        for (BeamLoad l : loads) {
            if (l instanceof Point p) {
                f.addToEntry(2 * index(p.atMm()), p.forceN());
            }
        }
        RealMatrix held = k.copy();
        RealVector load = f.copy();
        for (double s : supports) {
            int row = 2 * index(s);
            for (int j = 0; j < 2 * n; j++) {
                held.setEntry(row, j, 0);
                held.setEntry(j, row, 0);
            }
            held.setEntry(row, row, k.getEntry(row, row));
            load.setEntry(row, 0);
        }
        RealVector u = new LUDecomposition(held, 0).getSolver().solve(load);
        RealVector residual = f.subtract(k.operate(u));
        deflection = new double[n];
        moment = new double[n];
        for (int i = 0; i < n; i++) {
            deflection[i] = u.getEntry(2 * i);
        }
        for (int e = 0; e < n - 1; e++) {
            for (int end = 0; end < 2; end++) {
                double m = -fixed[e][1 + 2 * end];
                for (int j = 0; j < 4; j++) {
                    m += element[e][1 + 2 * end][j] * u.getEntry(2 * e + j);
                }
                moment[e + end] = end == 0 ? m : -m;
            }
        }
        reaction = new double[supports.length];
        for (int i = 0; i < supports.length; i++) {
            reaction[i] = residual.getEntry(2 * index(supports[i]));
        }
    }

    private int index(double place) {
        return Arrays.binarySearch(nodes, place);
    }

    /** Deflection downwards and rotation positive with it. */
    private static double[][] elementMatrix(double ei, double h, double phi) {
        double c = ei / (h * h * h * (1 + phi));
        return new double[][] {
            {12 * c, 6 * h * c, -12 * c, 6 * h * c},
            {6 * h * c, (4 + phi) * h * h * c, -6 * h * c, (2 - phi) * h * h * c},
            {-12 * c, -6 * h * c, 12 * c, -6 * h * c},
            {6 * h * c, (2 - phi) * h * h * c, -6 * h * c, (4 + phi) * h * h * c},
        };
    }

    /** A uniform load and a triangular one that rises to the end. */
    private static double[] nodalForces(double atStart, double atEnd, double h, double phi) {
        double rise = atEnd - atStart;
        double c = 1 / (1 + phi);
        return new double[] {
            atStart * h / 2 + rise * h * (9 + 10 * phi) * c / 60,
            atStart * h * h / 12 + rise * h * h * (4 + 5 * phi) * c / 120,
            atStart * h / 2 + rise * h * (21 + 20 * phi) * c / 60,
            -atStart * h * h / 12 - rise * h * h * (6 + 5 * phi) * c / 120,
        };
    }
}
