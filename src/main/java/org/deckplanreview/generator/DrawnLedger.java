package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** The ledger along the house, with what fixes it. */
final class DrawnLedger {

    private static final double LATERAL_CONNECTION_INSET_MM = 300;

    private final Area area;
    private final Hand hand;
    private final Sheet sheet;

    DrawnLedger(Area area, Hand hand) {
        this.area = area;
        this.hand = hand;
        this.sheet = hand.sheet();
    }

    ObjectNode json() {
        ObjectNode ledger = sheet.object().put("timber", "ledger").put("wall", "house");
        ledger.set("line", sheet.line(0, 0, area.widthMm(), 0));
        ledger.put("joists", "hangers");
        ledger.set("bearingLength", sheet.length(50));
        if (hand.omits()) {
            return ledger;
        }
        boolean american = hand.practice().isAmerican();
        ObjectNode fixings = ledger.putObject("fixings");
        fixings.put("base", hand.choice(american ? "timber-frame" : "masonry", "brick-veneer"));
        fixings.set("diameter", sheet.length(12.7));
        fixings.set("spacing", sheet.length(hand.choice(american ? 203.2 : 200.0, 900.0)));
        fixings.set("edgeDistance", sheet.length(60));
        fixings.set("endDistance", sheet.length(hand.choice(american ? 76.2 : 100.0, 30.0)));
        fixings.put("weathering", hand.choice("flashing", "none"));
        if (!hand.omits()) {
            fixings.put("tensionResistance", hand.printed("5 kN", "1000 lbf"));
        }
        if (american) {
            american(ledger, fixings);
        } else if (!hand.omits()) {
            fixings.put("resistance", "6 kN");
        }
        return ledger;
    }

    private void american(ObjectNode ledger, ObjectNode fixings) {
        fixings.put("kind", hand.chance().oneOf(List.of("lag-screw", "bolt")));
        fixings.set("sheathing", sheet.length(12.7));
        fixings.set("gap", sheet.length(0));
        fixings.set("topEdgeDistance", sheet.length(50.8));
        fixings.set("bottomEdgeDistance", sheet.length(25.4));
        fixings.set("rowDistance", sheet.length(50.8));
        fixings.put("staggered", !hand.slips()).put("tipBeyondBand", !hand.slips());
        if (!hand.omits()) {
            ObjectNode flashing = fixings.putObject("flashing");
            flashing.set("upWall", sheet.length(hand.choice(101.6, 25.4)));
            flashing.set("pastFace", sheet.length(0));
            flashing.set("downFace", sheet.length(hand.choice(19.05, 0.0)));
            flashing.set("barrierLap", sheet.length(hand.choice(76.2, 25.4)));
        }
        if (!hand.omits()) {
            ObjectNode band = ledger.putObject("bandJoist").put("kind", "solid-sawn");
            band.set("thickness", sheet.length(38.1));
            band.set("depth", sheet.length(285.75));
            band.put("cantilevered", hand.slips());
        }
        if (!hand.omits()) {
            ArrayNode connections = ledger.putArray("lateralConnections");
            for (double at : List.of(LATERAL_CONNECTION_INSET_MM, area.widthMm() - LATERAL_CONNECTION_INSET_MM)) {
                ObjectNode connection = connections.addObject();
                connection.set("at", sheet.length(at));
                connection.put("capacity", hand.choice("1500 lbf", "750 lbf"));
            }
        }
    }
}
