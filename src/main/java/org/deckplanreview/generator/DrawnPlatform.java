package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** One platform: boards along x, joists along y, its frame, and what stands at its edges. */
final class DrawnPlatform {

    /** Share of platforms whose boards are not of sawn timber. */
    private static final double MANUFACTURED = 0.1;

    private final Area area;
    private final Stock stock;
    private final Ground ground;
    private final Hand hand;
    private final Sheet sheet;

    DrawnPlatform(Area area, Stock stock, Ground ground, Hand hand) {
        this.area = area;
        this.stock = stock;
        this.ground = ground;
        this.hand = hand;
        this.sheet = hand.sheet();
    }

    ObjectNode json() {
        ObjectNode platform = sheet.object().put("id", area.id());
        ArrayNode outline = platform.putArray("outline");
        area.sides().forEach(side -> outline.add(sheet.point(side.x1(), side.y1())));
        if (!hand.omits()) {
            ObjectNode level = platform.putObject("level");
            level.set("at", sheet.point(0, area.startMm()));
            level.set("z", sheet.length(area.levelMm()));
        }
        if (!hand.omits()) {
            ObjectNode fall = platform.putObject("fall");
            fall.put("gradient", area.fallRun() == 0 ? "level" : "1:" + area.fallRun());
            if (area.fallRun() != 0) {
                fall.set("direction", sheet.direction(0, 1));
            }
        }
        if (!hand.omits()) {
            platform.put("finishes", "0 kN/m2");
        }
        ObjectNode boards = platform.putObject("boards").put("timber", "board");
        boards.set("direction", sheet.direction(1, 0));
        if (!hand.omits()) {
            boards.set("gap", sheet.length(hand.choice(6, 1)));
            boards.put("profile", hand.choice("smooth", "grooved"));
        }
        if (hand.chance().in(MANUFACTURED)) {
            boards.set("manufactured", manufactured());
        }
        if (area.attached()) {
            platform.set("ledger", new DrawnLedger(area, hand).json());
        }
        new DrawnFrame(area, stock, ground, hand).addTo(platform);
        new DrawnEdges(area, stock, ground, hand).addTo(platform);
        platform.put("overRoom", hand.slips());
        if (!hand.omits()) {
            platform.put("coversVents", hand.slips());
        }
        return platform;
    }

    private ObjectNode manufactured() {
        ObjectNode made = sheet.object();
        made.set("joistSpacing", sheet.length(hand.choice(610, 300)));
        made.set("diagonalJoistSpacing", sheet.length(300));
        if (!hand.omits()) {
            made.put("load", hand.printed("5 kN/m2", "100 psf"));
            made.put("concentratedLoad", hand.printed("4 kN", "900 lbf"));
        }
        made.put("weight", hand.printed("0.25 kN/m2", "5 psf"));
        return made.put("labelledTo", hand.printed("EN-15534-4", "ASTM-D7032"));
    }
}
