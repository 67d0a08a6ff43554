package org.deckplanreview.generator;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a platform lies.
 *
 * @param startMm its first edge, in y
 * @param levelMm of its boards at that edge
 * @param attached whether its first edge lies at the house
 * @param last whether no other platform follows in y
 * @param cornerX of the corner that an L-shaped outline lacks; the width where the outline is a rectangle
 * @param cornerY of that corner; the last edge where the outline is a rectangle
 * @param fallRun run of the fall for a drop of 1; 0 where the boards are level
 */
record Area(
        String id,
        double startMm,
        double widthMm,
        double depthMm,
        double levelMm,
        boolean attached,
        boolean last,
        double cornerX,
        double cornerY,
        int fallRun) {

    private static final double SHORTEST_LEG_MM = 1500;

    /**
     * A stretch of the outline between two corners.
     *
     * @param outX away from the platform
     * @param inwardMm how far the platform reaches behind it
     */
    record Side(double x1, double y1, double x2, double y2, int outX, int outY, String kind, double inwardMm) {
        double lengthMm() {
            return Math.abs(x2 - x1) + Math.abs(y2 - y1);
        }
    }

    static Area of(
            String id,
            double startMm,
            double widthMm,
            double depthMm,
            double levelMm,
            boolean attached,
            boolean last,
            Hand hand) {
        Chance chance = hand.chance();
        int fallRun = hand.slips() ? 0 : chance.oneOf(List.of(60, 80, 100));
        boolean lShaped = last && widthMm > 2.5 * SHORTEST_LEG_MM && depthMm > 2.5 * SHORTEST_LEG_MM && chance.in(0.2);
        double endMm = startMm + depthMm;
        double cornerX = lShaped ? Math.rint(widthMm * chance.between(0.4, 0.6)) : widthMm;
        double cornerY = lShaped ? startMm + Math.rint(depthMm * chance.between(0.4, 0.6)) : endMm;
        return new Area(id, startMm, widthMm, depthMm, levelMm, attached, last, cornerX, cornerY, fallRun);
    }

    double endMm() {
        return startMm + depthMm;
    }

    /** Of the boards' upper face. */
    double levelAt(double yMm) {
        return fallRun == 0 ? levelMm : levelMm - (yMm - startMm) / fallRun;
    }

    /** All around, with the platform on the left hand. */
    List<Side> sides() {
        List<Side> sides = new ArrayList<>();
        sides.add(new Side(0, startMm, widthMm, startMm, 0, -1, kindAtStart(), cornerY - startMm));
        sides.add(new Side(widthMm, startMm, widthMm, cornerY, 1, 0, "open", widthMm));
        String atEnd = last ? "open" : "platform";
        if (cornerX < widthMm) {
            sides.add(new Side(widthMm, cornerY, cornerX, cornerY, 0, 1, "open", cornerY - startMm));
            sides.add(new Side(cornerX, cornerY, cornerX, endMm(), 1, 0, "open", cornerX));
        }
        sides.add(new Side(cornerX, endMm(), 0, endMm(), 0, 1, atEnd, depthMm));
        sides.add(new Side(0, endMm(), 0, startMm, -1, 0, "open", cornerX));
        return sides;
    }

    private String kindAtStart() {
        if (attached) {
            return "wall";
        }
        return startMm > 0 ? "platform" : "open";
    }
}
