package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;

/** One deck: its use and site, its stock of timber and one or two platforms. */
final class DrawnDeck {

    private static final double LEAST_AREA_M2 = 1.2;
    private static final double LARGEST_AREA_M2 = 200;
    private static final double GRID_MM = 100;

    /** So much that a bath stands whole on the smallest part of any platform. */
    private static final double ROOM_FOR_A_BATH_MM = 6500;

    private static final double MM_IN_A_METRE = 1000;
    private static final double FOOT_MM = 304.8;
    private static final double LOWEST_MM = 250;
    private static final double LEAST_STEP_MM = 100;
    /** Below this height rain splashes from the ground to the boards. */
    private static final double NEAR_GROUND_MM = 900;

    private final String reference;
    private final Hand hand;
    private final Practice practice;
    private final Chance chance;
    private final Sheet sheet;

    DrawnDeck(String reference, Hand hand) {
        this.reference = reference;
        this.hand = hand;
        this.practice = hand.practice();
        this.chance = hand.chance();
        this.sheet = hand.sheet();
    }

    ObjectNode json() {
        Practice.Place place = chance.oneOf(practice.rulesets());
        double area = chance.evenlyByRatio(LEAST_AREA_M2, LARGEST_AREA_M2);
        double width = grid(StrictMath.sqrt(area * chance.between(0.6, 2)) * MM_IN_A_METRE);
        double depth = grid(area * MM_IN_A_METRE * MM_IN_A_METRE / width);
        Stock stock = new Stock(hand);
        double frost = practice.isAmerican() ? FOOT_MM * chance.whole(1, 4) : 450;
        Ground ground = Ground.of(chance, width, depth, hand.choice(stock.stackMm(), LOWEST_MM), frost);
        boolean attached = chance.in(0.6);
        ObjectNode deck = sheet.object();
        deck.put("reference", reference);
        deck.put(
                "title",
                "Invented deck of about " + Math.max(1, Math.round(area)) + " m2, drawing "
                        + hand.care().name().toLowerCase(Locale.ROOT));
        deck.put("units", practice.units());
        deck.put("reviewOn", day(place.firstYear()));
        ObjectNode ruleset = deck.putObject("ruleset").put("region", place.region());
        if (!place.edition().isEmpty()) {
            ruleset.put("edition", place.edition());
        }
        deck.set("use", use(width, depth));
        deck.set("site", site(ground, attached, width));
        deck.set("timbers", stock.json(ground.heightMm() < NEAR_GROUND_MM));
        ArrayNode platforms = deck.putArray("platforms");
        for (Area drawn : areas(stock, ground, attached, width, depth)) {
            platforms.add(new DrawnPlatform(drawn, stock, ground, hand).json());
        }
        if (platforms.get(0).has("stairs")) {
            // What is heavy might stand on the landing at their head.
            ((ObjectNode) deck.get("use")).remove("heavyItems");
        }
        deck.set("protection", protection());
        return deck;
    }

    private List<Area> areas(Stock stock, Ground ground, boolean attached, double width, double depth) {
        double room = ground.heightMm() - stock.stackMm();
        if (depth < 5000 || room < LEAST_STEP_MM || !chance.in(0.4)) {
            return List.of(Area.of("upper", 0, width, depth, 0, attached, true, hand));
        }
        double first = grid(depth * chance.between(0.4, 0.6));
        double step = Math.min(Math.rint(chance.between(LEAST_STEP_MM, hand.choice(170, 900))), room);
        Area upper = Area.of("upper", 0, width, first, 0, attached, false, hand);
        double level = sheet.writtenMm(upper.levelAt(first) - step);
        return List.of(upper, Area.of("lower", first, width, depth - first, level, false, true, hand));
    }

    private static double grid(double mm) {
        return Math.max(1000, Math.rint(mm / GRID_MM) * GRID_MM);
    }

    private String day(int firstYear) {
        return String.format(
                Locale.ROOT, "%04d-%02d-%02d", chance.whole(firstYear, 2026), chance.whole(1, 12), chance.whole(1, 28));
    }

    private ObjectNode use(double width, double depth) {
        ObjectNode use = sheet.object();
        double kind = chance.between(0, 1);
        use.put("occupancy", kind < 0.85 ? "single-dwelling" : kind < 0.95 ? "shared-residential" : "public");
        if (!hand.omits()) {
            use.put("youngChildren", chance.in(0.5));
        }
        if (!hand.omits()) {
            use.put("roofOver", hand.slips());
        }
        if (hand.slips()) {
            use.put("imposedLoad", hand.printed("3 kN/m2", "60 psf"));
            use.put("concentratedLoad", hand.printed("3 kN", "600 lbf"));
        }
        if (width >= ROOM_FOR_A_BATH_MM && depth >= ROOM_FOR_A_BATH_MM && chance.in(0.1)) {
            use.putArray("heavyItems").add(heavyItem(chance.in(0.5)));
        }
        return use;
    }

    private ObjectNode heavyItem(boolean bath) {
        ObjectNode item = sheet.object().put("id", bath ? "bath" : "planter");
        double x = bath ? 2500 : 1500;
        double y = bath ? 2500 : 1000;
        item.set(
                "outline",
                sheet.array()
                        .add(sheet.point(500, 500))
                        .add(sheet.point(x, 500))
                        .add(sheet.point(x, y))
                        .add(sheet.point(500, y)));
        item.put("weight", bath ? "24 kN" : "4 kN").put("nature", "permanent");
        return item.put("kind", bath ? "spa-bath" : "planter");
    }

    private ObjectNode site(Ground ground, boolean attached, double width) {
        ObjectNode site = sheet.object();
        if (!hand.omits()) {
            site.set("groundLevels", ground.json(sheet));
        }
        if (!hand.omits()) {
            site.set("soil", soil());
        }
        if (practice.isAmerican() || chance.in(0.5)) {
            site.set("frostDepth", sheet.length(ground.frostMm()));
        }
        snow(site);
        if (!hand.omits()) {
            site.put("coastDistance", chance.whole(4, 80) + " km");
        }
        if (attached) {
            site.putArray("walls").add(wall(width));
        }
        if (!practice.isAmerican() && !hand.omits()) {
            ObjectNode planning = site.putObject("planning").put("building", "house");
            planning.put("listed", false).put("protectedArea", false).put("beyondPrincipalElevation", false);
            planning.put("gardenCovered", chance.whole(5, 60) + " %");
            planning.set("boundaryDistance", sheet.length(chance.whole(500, 9000)));
        }
        if (!hand.omits()) {
            site.put("windPressure", hand.choice(hand.printed("0.6 kN/m2", "15 psf"), "1.2 kN/m2"));
        }
        return site;
    }

    private void snow(ObjectNode site) {
        if (practice.isAmerican()) {
            if (!hand.omits()) {
                List<String> loads = List.of("0 psf", "20 psf", "30 psf", "50 psf", "70 psf", "90 psf");
                site.put("groundSnowLoad", chance.oneOf(hand.slips() ? loads : loads.subList(0, 3)));
            }
        } else if (!hand.omits()) {
            site.put("snowLoad", chance.oneOf(List.of("0.4 kN/m2", "0.6 kN/m2", "1.2 kN/m2")));
        }
    }

    private ObjectNode wall(double width) {
        ObjectNode wall = sheet.object().put("id", "house").put("label", "rear wall of the house");
        wall.set("line", sheet.line(-1000, 0, width + 1000, 0));
        if (!hand.omits()) {
            wall.set("topLevel", sheet.length(hand.choice(2400, -600)));
            wall.set("dampProofCourseLevel", sheet.length(hand.choice(150, -50)));
            wall.set("foundationDepth", sheet.length(hand.choice(1000, 300)));
        }
        return wall;
    }

    private ObjectNode soil() {
        ObjectNode soil = sheet.object();
        if (practice.isAmerican()) {
            return soil.put("bearingResistance", chance.oneOf(List.of("1500 psf", "2000 psf")));
        }
        List<String> soils =
                List.of("dense-gravel", "medium-dense-sand", "stiff-clay", "firm-clay", "soft-clay", "made-ground");
        String kind = chance.oneOf(hand.slips() ? soils : soils.subList(0, 4));
        soil.put("soilClass", kind);
        soil.put("volumeChange", kind.endsWith("clay") ? chance.oneOf(List.of("low", "medium")) : "none");
        soil.put("treesNearby", hand.slips());
        return soil;
    }

    private ObjectNode protection() {
        ObjectNode protection = sheet.object();
        if (!hand.omits()) {
            protection.put("cutEndsTreated", !hand.slips());
        }
        ArrayNode fixings = protection.putArray("fixings");
        for (String kind : List.of("screw", "nail", "bolt", "plate")) {
            ObjectNode fixing = fixings.addObject().put("id", kind).put("kind", kind);
            if (kind.equals("plate")) {
                fixing.set("thickness", sheet.length(2));
            } else {
                fixing.set("diameter", sheet.length(kind.equals("bolt") ? 12.7 : 4.7625));
            }
            if (!hand.omits()) {
                fixing.put("finish", hand.choice(kind.equals("bolt") ? "hot-dip" : "stainless-A2", "none"));
            }
        }
        protection.put("weedControl", hand.choice("membrane-and-gravel", "none"));
        if (!hand.omits()) {
            protection.put("crossVentilated", !hand.slips());
        }
        return protection;
    }
}
