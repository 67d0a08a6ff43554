package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.deckplanreview.loadpath.BeamLoad.Distributed;
import org.deckplanreview.loadpath.BeamLoad.Point;

/**
 * A straight beam of one section on two or more unyielding simple supports, with or without cantilevers, by the
 * stiffness method. The unknowns are the rotations of the section over the supports, so that the equations are
 * tridiagonal; within a span everything follows from the moments at its ends by integration, without interpolation.
 *
 * <p>Shear deformation after Timoshenko. With {@code phi = 12 EI / (GA/kappa L^2)} a span's stiffness against rotation
 * of one end is {@code EI/L (4 + phi)/(1 + phi)} at that end and {@code EI/L (2 - phi)/(1 + phi)} at the other
 * (Przemieniecki, Theory of Matrix Structural Analysis, 5.6, from memory). Without it phi is 0.
 *
 * <p>Signs: loads and deflections downwards positive, reactions upwards positive, moments that put the underside in
 * tension positive, shear the sum of the upward forces to the left.
 */
final class ContinuousBeam {

    /** A point load no further than this from a support goes straight into it and bends nothing. */
    private static final double OVER_SUPPORT_MM = 1e-6;

    private final double lengthMm;
    private final double[] supportsMm;
    private final double bendingStiffnessNMm2;
    private final double shearFlexibilityPerN;

    private final double[] nearStiffness;
    private final double[] farStiffness;
    private final double[] pivots;

    /**
     * @param supportsMm places of the supports, rising
     * @param bendingStiffnessNMm2 EI
     * @param shearFlexibilityPerN kappa / GA; 0 to leave shear deformation out
     * @throws IllegalArgumentException if the beam cannot stand: fewer than two supports, or not rising within its length
     */
    ContinuousBeam(double lengthMm, double[] supportsMm, double bendingStiffnessNMm2, double shearFlexibilityPerN) {
        if (supportsMm.length < 2) {
            throw new IllegalArgumentException("A beam on " + supportsMm.length + " support is a mechanism");
        }
        for (int i = 0; i < supportsMm.length; i++) {
            double least = i == 0 ? 0 : Math.nextUp(supportsMm[i - 1]);
            if (!(supportsMm[i] >= least && supportsMm[i] <= lengthMm)) {
                throw new IllegalArgumentException("Supports at " + Arrays.toString(supportsMm)
                        + " mm do not rise within the length of " + lengthMm + " mm");
            }
        }
        this.lengthMm = lengthMm;
        this.supportsMm = supportsMm.clone();
        this.bendingStiffnessNMm2 = bendingStiffnessNMm2;
        this.shearFlexibilityPerN = shearFlexibilityPerN;
        int spans = supportsMm.length - 1;
        nearStiffness = new double[spans];
        farStiffness = new double[spans];
        for (int k = 0; k < spans; k++) {
            double length = supportsMm[k + 1] - supportsMm[k];
            double phi = 12 * bendingStiffnessNMm2 * shearFlexibilityPerN / (length * length);
            nearStiffness[k] = bendingStiffnessNMm2 / length * (4 + phi) / (1 + phi);
            farStiffness[k] = bendingStiffnessNMm2 / length * (2 - phi) / (1 + phi);
        }
        pivots = new double[spans + 1];
        for (int i = 0; i <= spans; i++) {
            pivots[i] = (i > 0 ? nearStiffness[i - 1] : 0) + (i < spans ? nearStiffness[i] : 0);
            if (i > 0) {
                pivots[i] -= farStiffness[i - 1] * farStiffness[i - 1] / pivots[i - 1];
            }
        }
    }

    /**
     * The exact response.
     *
     * @throws IllegalArgumentException if a load reaches beyond the beam
     */
    BeamResponse under(List<BeamLoad> loads) {
        int n = supportsMm.length;
        List<Distributed> distributed = new ArrayList<>();
        List<Point> points = new ArrayList<>();
        double[] direct = new double[n];
        for (BeamLoad load : loads) {
            if (!(load.fromMm() >= 0 && load.toMm() <= lengthMm)) {
                throw new IllegalArgumentException(load + " reaches beyond the beam of " + lengthMm + " mm");
            }
            if (load instanceof Distributed d) {
                distributed.add(d);
            } else if (load instanceof Point p) {
                int over = supportUnder(p);
                if (over < 0) {
                    points.add(p);
                } else {
                    direct[over] += p.forceN();
                }
            }
        }

        Stretch left = new Stretch(0, supportsMm[0], distributed, points);
        Stretch right = new Stretch(supportsMm[n - 1], lengthMm, distributed, points);
        Between[] spans = new Between[n - 1];
        for (int k = 0; k < n - 1; k++) {
            spans[k] = between(supportsMm[k], supportsMm[k + 1], distributed, points);
        }

        left.march(0, 0);
        double firstMoment = left.endMoment;
        double lastMoment = -right.momentOfLoadsAboutStart();
        double[] moments = supportMoments(spans, firstMoment, lastMoment);

        double[] reactions = direct;
        double[] shearBefore = new double[n];
        double[] shearBehind = new double[n];
        shearBefore[0] = left.endShear;
        for (int k = 0; k < n - 1; k++) {
            spans[k].marchBetween(moments[k], moments[k + 1]);
            shearBehind[k] = spans[k].startShear();
            shearBefore[k + 1] = spans[k].endShear();
        }
        left.hangOn(spans[0].startRotation());
        shearBehind[n - 1] = right.loadN();
        right.march(lastMoment, shearBehind[n - 1]);
        right.turn(spans[n - 2].endRotation(), 0);
        for (int i = 0; i < n; i++) {
            reactions[i] += shearBehind[i] - shearBefore[i];
        }

        List<BeamResponse.Piece> pieces = new ArrayList<>();
        left.addPieces(pieces);
        for (Between span : spans) {
            span.addPieces(pieces);
        }
        right.addPieces(pieces);
        return new BeamResponse(
                pieces.toArray(BeamResponse.Piece[]::new),
                lengthMm,
                bendingStiffnessNMm2,
                shearFlexibilityPerN,
                reactions,
                shearBefore,
                shearBehind);
    }

    private int supportUnder(Point p) {
        for (int i = 0; i < supportsMm.length; i++) {
            if (Math.abs(p.atMm() - supportsMm[i]) <= OVER_SUPPORT_MM) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Moments over the supports: equilibrium of moments at each support, solved for the rotations by elimination, then
     * put back into the spans' stiffness. A span's fixed-end moments are its stiffness times the rotations that its
     * ends would have on hinges.
     */
    private double[] supportMoments(Between[] spans, double firstMoment, double lastMoment) {
        int n = supportsMm.length;
        double[] rotations = new double[n];
        rotations[0] = firstMoment;
        rotations[n - 1] = -lastMoment;
        for (int k = 0; k < n - 1; k++) {
            spans[k].marchBetween(0, 0);
            double start = spans[k].startRotation();
            double end = spans[k].endRotation();
            rotations[k] += nearStiffness[k] * start + farStiffness[k] * end;
            rotations[k + 1] += farStiffness[k] * start + nearStiffness[k] * end;
        }
        for (int i = 1; i < n; i++) {
            rotations[i] -= farStiffness[i - 1] / pivots[i - 1] * rotations[i - 1];
        }
        for (int i = n - 1; i >= 0; i--) {
            double next = i < n - 1 ? farStiffness[i] * rotations[i + 1] : 0;
            rotations[i] = (rotations[i] - next) / pivots[i];
        }
        double[] moments = new double[n];
        for (int k = 1; k < n - 1; k++) {
            moments[k] = nearStiffness[k] * (rotations[k] - spans[k].startRotation())
                    + farStiffness[k] * (rotations[k + 1] - spans[k].endRotation());
        }
        moments[0] = firstMoment;
        moments[n - 1] = lastMoment;
        return moments;
    }

    private Between between(double fromMm, double toMm, List<Distributed> distributed, List<Point> points) {
        return isLoaded(fromMm, toMm, distributed, points)
                ? new Stretch(fromMm, toMm, distributed, points)
                : new UnloadedSpan(fromMm, toMm);
    }

    private boolean isLoaded(double fromMm, double toMm, List<Distributed> distributed, List<Point> points) {
        for (Point p : points) {
            if (isWithin(p, fromMm, toMm)) {
                return true;
            }
        }
        for (Distributed d : distributed) {
            if (laps(d, fromMm, toMm)) {
                return true;
            }
        }
        return false;
    }

    private boolean isWithin(Point p, double fromMm, double toMm) {
        return p.atMm() >= fromMm && (p.atMm() < toMm || p.atMm() == toMm && toMm == lengthMm);
    }

    private static boolean laps(Distributed d, double fromMm, double toMm) {
        return d.fromMm() < toMm && d.toMm() > fromMm;
    }

    private static double[] sortedDistinct(double[] values, int count) {
        Arrays.sort(values, 0, count);
        int kept = 1;
        for (int i = 1; i < count; i++) {
            if (values[i] != values[kept - 1]) {
                values[kept++] = values[i];
            }
        }
        return Arrays.copyOf(values, kept);
    }

    /** A span between two supports. */
    private interface Between {

        /** With these moments at its ends and no deflection there. */
        void marchBetween(double momentAtStart, double momentAtEnd);

        double startShear();

        double endShear();

        double startRotation();

        double endRotation();

        void addPieces(List<BeamResponse.Piece> pieces);
    }

    /** A span that is bent by its end moments alone. */
    private final class UnloadedSpan implements Between {
        private final double fromMm;
        private final double lengthMm;
        private BeamResponse.Piece piece;

        UnloadedSpan(double fromMm, double toMm) {
            this.fromMm = fromMm;
            this.lengthMm = toMm - fromMm;
            marchBetween(0, 0);
        }

        @Override
        public void marchBetween(double momentAtStart, double momentAtEnd) {
            double shear = (momentAtEnd - momentAtStart) / lengthMm;
            BeamResponse.Piece level = new BeamResponse.Piece(fromMm, 0, 0, shear, momentAtStart, 0, 0);
            double away = level.deflectionAfter(lengthMm, bendingStiffnessNMm2, shearFlexibilityPerN);
            piece = new BeamResponse.Piece(fromMm, 0, 0, shear, momentAtStart, -away / lengthMm, 0);
        }

        @Override
        public double startShear() {
            return piece.shearN();
        }

        @Override
        public double endShear() {
            return piece.shearN();
        }

        @Override
        public double startRotation() {
            return piece.rotation();
        }

        @Override
        public double endRotation() {
            return piece.rotationAfter(lengthMm, bendingStiffnessNMm2);
        }

        @Override
        public void addPieces(List<BeamResponse.Piece> pieces) {
            pieces.add(piece);
        }
    }

    /** A span or a cantilever, cut where its loads change. */
    private final class Stretch implements Between {
        private final double[] cuts;
        private final double[] intensity;
        private final double[] slope;
        private final double[] pointAtCut;

        private final double[] shear;
        private final double[] moment;
        private final double[] rotation;
        private final double[] deflection;

        private double startShear;
        private double endShear;
        private double endMoment;
        private double startRotation;
        private double endRotation;
        private double endDeflection;

        Stretch(double fromMm, double toMm, List<Distributed> distributed, List<Point> points) {
            List<Point> inside = new ArrayList<>();
            for (Point p : points) {
                if (isWithin(p, fromMm, toMm)) {
                    inside.add(p);
                }
            }
            List<Distributed> lapping = new ArrayList<>();
            for (Distributed d : distributed) {
                if (laps(d, fromMm, toMm)) {
                    lapping.add(d);
                }
            }
            cuts = cuts(fromMm, toMm, lapping, inside);
            int n = cuts.length - 1;
            intensity = new double[n];
            slope = new double[n];
            pointAtCut = new double[n + 1];
            shear = new double[n];
            moment = new double[n];
            rotation = new double[n];
            deflection = new double[n];
            for (Distributed d : lapping) {
                for (int i = 0; i < n; i++) {
                    if (d.fromMm() <= cuts[i] && cuts[i + 1] <= d.toMm()) {
                        intensity[i] += d.at(cuts[i]);
                        slope[i] += d.slope();
                    }
                }
            }
            for (Point p : inside) {
                pointAtCut[Arrays.binarySearch(cuts, p.atMm())] += p.forceN();
            }
        }

        private static double[] cuts(double fromMm, double toMm, List<Distributed> distributed, List<Point> points) {
            double[] cuts = new double[2 + points.size() + 2 * distributed.size()];
            int count = 0;
            cuts[count++] = fromMm;
            cuts[count++] = toMm;
            for (Point p : points) {
                cuts[count++] = p.atMm();
            }
            for (Distributed d : distributed) {
                cuts[count++] = Math.max(fromMm, d.fromMm());
                cuts[count++] = Math.min(toMm, d.toMm());
            }
            return sortedDistinct(cuts, count);
        }

        private double lengthMm() {
            return cuts[cuts.length - 1] - cuts[0];
        }

        double loadN() {
            double sum = 0;
            for (int i = 0; i < shear.length; i++) {
                double h = cuts[i + 1] - cuts[i];
                sum += intensity[i] * h + slope[i] * h * h / 2;
            }
            for (double p : pointAtCut) {
                sum += p;
            }
            return sum;
        }

        double momentOfLoadsAboutStart() {
            double sum = 0;
            for (int i = 0; i < shear.length; i++) {
                double h = cuts[i + 1] - cuts[i];
                double arm = cuts[i] - cuts[0];
                sum += intensity[i] * h * (arm + h / 2) + slope[i] * h * h / 2 * (arm + h * 2 / 3);
            }
            for (int i = 0; i < cuts.length; i++) {
                sum += pointAtCut[i] * (cuts[i] - cuts[0]);
            }
            return sum;
        }

        @Override
        public void marchBetween(double momentAtStart, double momentAtEnd) {
            double length = lengthMm();
            double hinged = loadN() - momentOfLoadsAboutStart() / length;
            march(momentAtStart, hinged + (momentAtEnd - momentAtStart) / length);
            turn(-endDeflection / length, 0);
        }

        /** A cantilever at the beam's start, already marched, whose end has this rotation and no deflection. */
        void hangOn(double rotationAtEnd) {
            double turned = rotationAtEnd - endRotation;
            turn(turned, -endDeflection - turned * lengthMm());
        }

        /** Integrates from the start, where the section neither turns nor deflects. */
        void march(double momentAtStart, double shearAtStart) {
            double v = shearAtStart;
            double m = momentAtStart;
            double r = 0;
            double w = 0;
            for (int i = 0; i < shear.length; i++) {
                v -= pointAtCut[i];
                shear[i] = v;
                moment[i] = m;
                rotation[i] = r;
                deflection[i] = w;
                BeamResponse.Piece p = piece(i);
                double h = cuts[i + 1] - cuts[i];
                v = p.shearAfter(h);
                m = p.momentAfter(h);
                r = p.rotationAfter(h, bendingStiffnessNMm2);
                w = p.deflectionAfter(h, bendingStiffnessNMm2, shearFlexibilityPerN);
            }
            startShear = shearAtStart;
            endShear = v - pointAtCut[shear.length];
            endMoment = m;
            startRotation = 0;
            endRotation = r;
            endDeflection = w;
        }

        /** Adds a rigid movement. */
        void turn(double angle, double shift) {
            for (int i = 0; i < rotation.length; i++) {
                rotation[i] += angle;
                deflection[i] += shift + angle * (cuts[i] - cuts[0]);
            }
            startRotation += angle;
            endRotation += angle;
            endDeflection += shift + angle * lengthMm();
        }

        @Override
        public double startShear() {
            return startShear;
        }

        @Override
        public double endShear() {
            return endShear;
        }

        @Override
        public double startRotation() {
            return startRotation;
        }

        @Override
        public double endRotation() {
            return endRotation;
        }

        private BeamResponse.Piece piece(int i) {
            return new BeamResponse.Piece(
                    cuts[i], intensity[i], slope[i], shear[i], moment[i], rotation[i], deflection[i]);
        }

        @Override
        public void addPieces(List<BeamResponse.Piece> pieces) {
            for (int i = 0; i < shear.length; i++) {
                pieces.add(piece(i));
            }
        }
    }
}
