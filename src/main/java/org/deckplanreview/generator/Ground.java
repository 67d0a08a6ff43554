package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * The ground under a deck whose boards lie at the level 0: level, or falling away along the deck.
 *
 * @param heightMm of the boards above the ground at the deck's first edge
 * @param slope fall of the ground for each mm along the deck, 0 for level ground
 * @param frostMm how deep it freezes
 */
record Ground(double heightMm, double slope, double widthMm, double depthMm, double frostMm) {

    private static final double MARGIN_MM = 8000;
    private static final double HIGHEST_MM = 3000;

    /** @param leastMm height that boards, joists and beams need above the ground */
    static Ground of(Chance chance, double widthMm, double depthMm, double leastMm, double frostMm) {
        double height = Math.rint(chance.evenlyByRatio(leastMm, 2800));
        double steepest = Math.min(0.2, Math.max(0, (HIGHEST_MM - height) / depthMm));
        return new Ground(height, chance.in(0.5) ? 0 : chance.between(0, steepest), widthMm, depthMm, frostMm);
    }

    double levelMm(double yMm) {
        return Math.rint(-heightMm - slope * yMm);
    }

    ArrayNode json(Sheet sheet) {
        ArrayNode levels = sheet.array();
        if (slope == 0) {
            point(levels, sheet, 0, 0);
            return levels;
        }
        for (double y : List.of(-MARGIN_MM, depthMm + MARGIN_MM)) {
            point(levels, sheet, -MARGIN_MM, y);
            point(levels, sheet, widthMm + MARGIN_MM, y);
        }
        return levels;
    }

    private void point(ArrayNode levels, Sheet sheet, double xMm, double yMm) {
        levels.addObject()
                .<ObjectNode>set("x", sheet.length(xMm))
                .<ObjectNode>set("y", sheet.length(yMm))
                .set("z", sheet.length(levelMm(yMm)));
    }
}
