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

    private final String reference;
    private final Practice practice;
    private final Care care;
    private final Chance chance;
    private final Sheet sheet;

    DrawnDeck(String reference, Practice practice, Care care, Chance chance) {
        this.reference = reference;
        this.practice = practice;
        this.care = care;
        this.chance = chance;
        this.sheet = new Sheet(practice.units());
    }

    ObjectNode json() {
        Practice.Place place = chance.oneOf(practice.rulesets());
        double area = chance.evenlyByRatio(LEAST_AREA_M2, LARGEST_AREA_M2);
        double width = grid(StrictMath.sqrt(area * chance.between(0.6, 2)) * MM_IN_A_METRE);
        double depth = grid(area * MM_IN_A_METRE * MM_IN_A_METRE / width);
        Ground ground = Ground.of(chance, width, depth);
        boolean attached = chance.in(0.6);
        ObjectNode deck = sheet.object();
        deck.put("reference", reference);
        deck.put(
                "title",
                "Invented deck of about " + Math.max(1, Math.round(area)) + " m2, drawing "
                        + care.name().toLowerCase(Locale.ROOT));
        deck.put("units", practice.units());
        deck.put("reviewOn", day(place.firstYear()));
        ObjectNode ruleset = deck.putObject("ruleset").put("region", place.region());
        if (!place.edition().isEmpty()) {
            ruleset.put("edition", place.edition());
        }
        deck.set("use", use(width, depth));
        deck.set("site", site(ground, attached, width));
        Stock stock = new Stock(practice, care, chance, sheet);
        deck.set("timbers", stock.json());
        ArrayNode platforms = deck.putArray("platforms");
        for (DrawnPlatform platform : platforms(stock, ground, attached, width, depth)) {
            platforms.add(platform.json());
        }
        deck.set("protection", protection());
        return deck;
    }

    private List<DrawnPlatform> platforms(Stock stock, Ground ground, boolean attached, double width, double depth) {
        boolean stepped = depth >= 5000 && chance.in(0.4);
        if (!stepped) {
            return List.of(platform("upper", 0, width, depth, 0, attached, true, stock, ground));
        }
        double first = grid(depth * chance.between(0.4, 0.6));
        double step = -Math.min(grid(chance.between(100, 400)), ground.heightMm() / 2);
        return List.of(
                platform("upper", 0, width, first, 0, attached, false, stock, ground),
                platform("lower", first, width, depth - first, step, false, true, stock, ground));
    }

    private DrawnPlatform platform(
            String id,
            double startMm,
            double width,
            double depth,
            double level,
            boolean attached,
            boolean last,
            Stock stock,
            Ground ground) {
        return new DrawnPlatform(
                new DrawnPlatform.Area(id, startMm, width, depth, level, attached, last),
                practice,
                stock,
                ground,
                care,
                chance,
                sheet);
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
        if (!care.omits(chance)) {
            use.put("youngChildren", chance.in(0.5));
        }
        if (practice.isAmerican() && !care.omits(chance)) {
            use.put("roofOver", care.slips(chance));
        }
        if (width >= ROOM_FOR_A_BATH_MM && depth >= ROOM_FOR_A_BATH_MM && chance.in(0.1)) {
            ObjectNode item = use.putArray("heavyItems").addObject();
            boolean bath = chance.in(0.5);
            item.put("id", bath ? "bath" : "planter");
            item.set(
                    "outline",
                    sheet.array()
                            .add(sheet.point(500, 500))
                            .add(sheet.point(bath ? 2500 : 1500, 500))
                            .add(sheet.point(bath ? 2500 : 1500, bath ? 2500 : 1000))
                            .add(sheet.point(500, bath ? 2500 : 1000)));
            item.put("weight", bath ? "18 kN" : "4 kN").put("nature", "permanent");
            item.put("kind", bath ? "spa-bath" : "planter");
        }
        return use;
    }

    private ObjectNode site(Ground ground, boolean attached, double width) {
        ObjectNode site = sheet.object();
        if (!care.omits(chance)) {
            site.set("groundLevels", ground.json(sheet));
        }
        if (!care.omits(chance)) {
            site.set("soil", soil());
        }
        if (practice.isAmerican() || chance.in(0.5)) {
            site.set("frostDepth", sheet.length(practice.isAmerican() ? 304.8 * chance.whole(1, 4) : 450));
        }
        if (practice.isAmerican() && !care.omits(chance)) {
            site.put(
                    "groundSnowLoad", chance.oneOf(List.of("0 psf", "20 psf", "30 psf", "50 psf", "70 psf", "90 psf")));
        } else if (chance.in(0.4)) {
            site.put("snowLoad", chance.oneOf(List.of("0.4 kN/m2", "0.6 kN/m2", "1.2 kN/m2")));
        }
        if (!care.omits(chance)) {
            site.put("coastDistance", chance.whole(1, 80) + " km");
        }
        if (attached) {
            ObjectNode wall = site.putArray("walls").addObject().put("id", "house");
            wall.set("line", sheet.line(-1000, 0, width + 1000, 0));
        }
        if (!practice.isAmerican() && !care.omits(chance)) {
            ObjectNode planning = site.putObject("planning").put("building", "house");
            planning.put("listed", false).put("protectedArea", false).put("beyondPrincipalElevation", false);
            planning.put("gardenCovered", chance.whole(5, 60) + " %");
            planning.set("boundaryDistance", sheet.length(chance.whole(500, 9000)));
        }
        if (chance.in(0.3)) {
            site.put("windPressure", "0.6 kN/m2");
        }
        return site;
    }

    private ObjectNode soil() {
        ObjectNode soil = sheet.object();
        if (practice.isAmerican()) {
            return soil.put("bearingResistance", chance.oneOf(List.of("1500 psf", "2000 psf", "3000 psf")));
        }
        soil.put(
                "soilClass",
                chance.oneOf(List.of("dense-gravel", "medium-dense-sand", "stiff-clay", "firm-clay", "soft-clay")));
        soil.put("volumeChange", chance.oneOf(List.of("none", "low", "medium")));
        soil.put("treesNearby", care.slips(chance));
        return soil;
    }

    private ObjectNode protection() {
        ObjectNode protection = sheet.object();
        if (!care.omits(chance)) {
            protection.put("cutEndsTreated", !care.slips(chance));
        }
        ArrayNode fixings = protection.putArray("fixings");
        for (String kind : List.of("screw", "nail", "bolt", "plate")) {
            ObjectNode fixing = fixings.addObject().put("id", kind).put("kind", kind);
            if (kind.equals("plate")) {
                fixing.set("thickness", sheet.length(2));
            } else {
                fixing.set("diameter", sheet.length(kind.equals("bolt") ? 12.7 : 4.7625));
            }
            if (!care.omits(chance)) {
                fixing.put("finish", care.slips(chance) ? "none" : kind.equals("bolt") ? "hot-dip" : "stainless-A2");
            }
        }
        protection.put("weedControl", care.slips(chance) ? "none" : "membrane-and-gravel");
        if (!care.omits(chance)) {
            protection.put("crossVentilated", !care.slips(chance));
        }
        return protection;
    }
}
