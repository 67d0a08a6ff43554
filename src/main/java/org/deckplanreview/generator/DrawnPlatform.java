package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** One platform: boards along x, joists along y, beams along x on posts, with edges, a guard and perhaps a stair. */
final class DrawnPlatform {

    private static final double SHORTEST_LEG_MM = 1500;
    private static final double INSET_MM = 200;
    private static final double STAIR_WIDTH_MM = 1000;
    private static final double MOST_POSTS = 200;

    /**
     * Where a platform lies.
     *
     * @param startMm its first edge, in y
     * @param levelMm of its boards
     * @param attached whether its first edge lies at the house
     * @param last whether no other platform follows in y
     */
    record Area(
            String id, double startMm, double widthMm, double depthMm, double levelMm, boolean attached, boolean last) {
        double endMm() {
            return startMm + depthMm;
        }
    }

    /** A row of posts under a beam. */
    private record Row(double yMm, double widthMm) {}

    private final Area area;
    private final Practice practice;
    private final Stock stock;
    private final Ground ground;
    private final Care care;
    private final Chance chance;
    private final Sheet sheet;
    /** Of the corner that an L-shaped outline lacks; its x is the width where the outline is a rectangle. */
    private final double cornerX;

    private final double cornerY;

    /** Run of the fall for a drop of 1; 0 where the boards are level. */
    private final int fallRun;

    DrawnPlatform(Area area, Practice practice, Stock stock, Ground ground, Care care, Chance chance, Sheet sheet) {
        this.area = area;
        this.practice = practice;
        this.stock = stock;
        this.ground = ground;
        this.care = care;
        this.chance = chance;
        this.sheet = sheet;
        this.fallRun = care.slips(chance) ? 0 : chance.oneOf(List.of(60, 80, 100));
        boolean lShaped = area.last()
                && area.widthMm() > 2.5 * SHORTEST_LEG_MM
                && area.depthMm() > 2.5 * SHORTEST_LEG_MM
                && chance.in(0.2);
        this.cornerX = lShaped ? Math.rint(area.widthMm() * chance.between(0.4, 0.6)) : area.widthMm();
        this.cornerY = lShaped ? area.startMm() + Math.rint(area.depthMm() * chance.between(0.4, 0.6)) : area.endMm();
    }

    ObjectNode json() {
        ObjectNode platform = sheet.object().put("id", area.id());
        platform.set("outline", outline());
        if (!care.omits(chance)) {
            ObjectNode level = platform.putObject("level");
            level.set("at", sheet.point(0, area.startMm()));
            level.set("z", sheet.length(area.levelMm()));
        }
        if (!care.omits(chance)) {
            ObjectNode fall = platform.putObject("fall");
            fall.put("gradient", fallRun == 0 ? "level" : "1:" + fallRun);
            if (fallRun != 0) {
                fall.set("direction", sheet.direction(0, 1));
            }
        }
        ObjectNode boards = platform.putObject("boards").put("timber", "board");
        boards.set("direction", sheet.direction(1, 0));
        if (!care.omits(chance)) {
            boards.set("gap", sheet.length(care.slips(chance) ? 1 : 6));
        }
        ObjectNode joists = platform.putObject("joists").put("timber", "joist");
        joists.set("direction", sheet.direction(0, 1));
        joists.set("spacing", sheet.length(spacingMm()));
        if (!care.omits(chance)) {
            joists.put("hangerResistance", "10 kN");
        }
        if (area.attached()) {
            platform.set("ledger", ledger());
        }
        frame(platform);
        boolean guarded = isGuarded();
        platform.set("edges", edges(guarded));
        if (guarded) {
            ArrayNode guards = platform.putArray("guards");
            guards.add(guard("G1", practice.guardHeightMm()));
            guards.add(guard("G2", practice.handrailMm()));
        }
        stair(platform, guarded);
        platform.put("overRoom", false);
        return platform;
    }

    private double spacingMm() {
        return care.slips(chance)
                ? chance.oneOf(practice.joistSpacingsMm())
                : practice.joistSpacingsMm().get(0);
    }

    private List<double[]> corners() {
        double y0 = area.startMm();
        double w = area.widthMm();
        List<double[]> corners = new ArrayList<>(List.of(new double[] {0, y0}, new double[] {w, y0}));
        corners.add(new double[] {w, cornerY});
        if (cornerX < w) {
            corners.add(new double[] {cornerX, cornerY});
            corners.add(new double[] {cornerX, area.endMm()});
        }
        corners.add(new double[] {0, area.endMm()});
        return corners;
    }

    private ArrayNode outline() {
        ArrayNode outline = sheet.array();
        corners().forEach(c -> outline.add(sheet.point(c[0], c[1])));
        return outline;
    }

    private ObjectNode ledger() {
        ObjectNode ledger = sheet.object().put("timber", "joist").put("wall", "house");
        ledger.set("line", sheet.line(0, 0, area.widthMm(), 0));
        ledger.put("joists", "hangers");
        ledger.set("bearingLength", sheet.length(50));
        if (care.omits(chance)) {
            return ledger;
        }
        ObjectNode fixings = ledger.putObject("fixings");
        fixings.put("base", care.slips(chance) ? "brick-veneer" : practice.isAmerican() ? "timber-frame" : "masonry");
        fixings.set("diameter", sheet.length(12.7));
        fixings.set("spacing", sheet.length(care.slips(chance) ? 900 : 300));
        fixings.set("edgeDistance", sheet.length(60));
        fixings.set("endDistance", sheet.length(100));
        fixings.put("weathering", care.slips(chance) ? "none" : "flashing");
        if (practice.isAmerican()) {
            fixings.put("kind", chance.oneOf(List.of("lag-screw", "bolt")));
            fixings.set("sheathing", sheet.length(12.7));
            fixings.set("topEdgeDistance", sheet.length(50.8));
            fixings.set("bottomEdgeDistance", sheet.length(25.4));
            fixings.set("rowDistance", sheet.length(50.8));
            fixings.put("staggered", !care.slips(chance)).put("tipBeyondBand", !care.slips(chance));
            if (!care.omits(chance)) {
                ObjectNode band = ledger.putObject("bandJoist").put("kind", "solid-sawn");
                band.set("thickness", sheet.length(38.1));
                band.set("depth", sheet.length(285.75));
            }
            if (!care.omits(chance)) {
                ArrayNode connections = ledger.putArray("lateralConnections");
                for (double at : List.of(300.0, area.widthMm() - 300)) {
                    ObjectNode connection = connections.addObject();
                    connection.set("at", sheet.length(at));
                    connection.put("capacity", care.slips(chance) ? "750 lbf" : "1500 lbf");
                }
            }
        } else if (!care.omits(chance)) {
            fixings.put("resistance", "4 kN");
        }
        return ledger;
    }

    /** Rows of posts so close that no joist is drawn longer than the stock allows. */
    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        double first = area.startMm() + (area.attached() ? 0 : INSET_MM);
        double turn = cornerY - INSET_MM;
        rows(rows, first, turn, area.widthMm(), !area.attached());
        if (cornerX < area.widthMm()) {
            rows(rows, turn, area.endMm() - INSET_MM, cornerX, false);
        }
        return rows;
    }

    private void rows(List<Row> rows, double from, double to, double widthMm, boolean withFirst) {
        int bays = Math.max(1, (int) Math.ceil((to - from) / stock.joistSpanMm()));
        for (int i = withFirst ? 0 : 1; i <= bays; i++) {
            rows.add(new Row(Math.rint(from + i * (to - from) / bays), widthMm));
        }
    }

    private void frame(ObjectNode platform) {
        ArrayNode beams = platform.putArray("beams");
        ArrayNode posts = platform.putArray("posts");
        ArrayNode footings = platform.putArray("footings");
        boolean beside = care.slips(chance);
        boolean embedded = !area.attached() || chance.in(0.2);
        List<Row> rows = rows();
        double closest = area.widthMm() * rows.size() / (MOST_POSTS - 2.0 * rows.size());
        double beamSpan = Math.max(stock.beamSpanMm(), closest);
        for (Row row : rows) {
            ObjectNode beam = beams.addObject().put("id", "B" + beams.size()).put("timber", "beam");
            beam.put("plies", 2);
            beam.set("line", sheet.line(0, row.yMm(), row.widthMm(), row.yMm()));
            ArrayNode under = beam.putArray("posts");
            beam.put("seating", beside ? "both-sides" : "on-post").put("joists", "on-top");
            if (!care.omits(chance)) {
                ObjectNode plies = beam.putObject("plyFixing").put("fixing", practice.isAmerican() ? "nail" : "screw");
                plies.set("spacing", sheet.length(practice.isAmerican() ? 406.4 : 300));
                plies.put("rows", 2);
            }
            int spans = Math.max(1, (int) Math.ceil((row.widthMm() - 2 * INSET_MM) / beamSpan));
            double area = row.widthMm() / spans * stock.joistSpanMm() / 1e6;
            for (int i = 0; i <= spans; i++) {
                String number = String.valueOf(posts.size() + 1);
                double x = Math.rint(INSET_MM + i * (row.widthMm() - 2 * INSET_MM) / spans);
                under.add("P" + number);
                ObjectNode post = posts.addObject().put("id", "P" + number).put("timber", "post");
                post.set("at", sheet.point(x, row.yMm()));
                post.put("footing", "F" + number);
                post.put("groundEnd", embedded ? "uncut" : "not-in-ground");
                post.put("top", "covered");
                if (practice.isAmerican() && !care.omits(chance)) {
                    post.put("base", embedded ? "embedded" : "connector");
                }
                footings.add(footing("F" + number, area, embedded));
            }
        }
    }

    private ObjectNode footing(String id, double areaM2, boolean embedded) {
        ObjectNode footing = sheet.object().put("id", id).put("kind", embedded ? "embedded-post" : "pad");
        boolean round = embedded || chance.in(0.3);
        double side = practice.footingForSquareMetreMm() * Math.sqrt(Math.max(1, areaM2));
        footing.put("shape", round ? "round" : "rectangular");
        footing.set("breadth", sheet.length(care.slips(chance) ? 250 : Math.ceil(side / 50) * 50));
        double depth = care.slips(chance) ? 250 : practice.footingDepthMm();
        if (!care.omits(chance)) {
            footing.set("depth", sheet.length(depth));
            footing.set("topAboveGround", sheet.length(50));
            footing.set(embedded ? "embedment" : "thickness", sheet.length(embedded ? depth - 100 : depth + 50));
        }
        if (practice.isAmerican()) {
            footing.put("frostProtected", false);
        }
        return footing.put("topShedsWater", !care.slips(chance));
    }

    /** Height of the boards above the ground at the last edge. */
    private double heightMm() {
        double fallen = fallRun == 0 ? 0 : area.depthMm() / fallRun;
        return area.levelMm() - fallen - ground.levelMm(area.endMm());
    }

    private boolean isGuarded() {
        double highest = Math.max(heightMm(), area.levelMm() - ground.levelMm(area.startMm()));
        return highest > practice.guardFromDropMm() ? !care.slips(chance) : chance.in(0.2);
    }

    private ArrayNode edges(boolean guarded) {
        ArrayNode edges = sheet.array();
        List<double[]> corners = corners();
        for (int i = 0; i < corners.size(); i++) {
            double[] from = corners.get(i);
            double[] to = corners.get((i + 1) % corners.size());
            boolean atStart = from[1] == area.startMm() && to[1] == area.startMm();
            boolean atEnd = from[1] == area.endMm() && to[1] == area.endMm();
            ObjectNode edge = edges.addObject();
            edge.set("line", sheet.line(from[0], from[1], to[0], to[1]));
            boolean shared = atStart && area.startMm() > 0 || atEnd && !area.last();
            String kind = atStart && area.attached() ? "wall" : shared ? "platform" : "open";
            edge.put("kind", kind);
            if (kind.equals("open") && guarded) {
                edge.put("guard", "G1");
            }
        }
        return edges;
    }

    private ObjectNode guard(String id, double heightMm) {
        ObjectNode guard = sheet.object().put("id", id);
        guard.set("height", sheet.length(care.slips(chance) ? heightMm - 150 : heightMm));
        guard.put("infill", "balusters");
        if (!care.omits(chance)) {
            guard.set("largestOpening", sheet.length(care.slips(chance) ? 125 : practice.guardOpeningMm()));
            guard.put("climbable", care.slips(chance));
        }
        ObjectNode posts = guard.putObject("posts").put("timber", "guard-post");
        posts.set("spacing", sheet.length(care.slips(chance) ? 2000 : 1000));
        if (!care.omits(chance)) {
            posts.set("leverArm", sheet.length(150));
            posts.put("fixingResistance", "16 kN");
            guard.put("rail", "rail").put("infillTimber", "baluster");
            if (practice.isAmerican()) {
                guard.put("postsNotched", care.slips(chance));
            }
        }
        return guard;
    }

    /** From the middle of the last edge down to the ground. */
    private void stair(ObjectNode platform, boolean guarded) {
        double height = heightMm();
        double width = Math.min(STAIR_WIDTH_MM, cornerX);
        int risers = (int) Math.ceil(height / practice.largestRiseMm());
        boolean fits = height / risers >= practice.leastRiseMm();
        if (!area.last() || risers < 2 || !fits || chance.in(0.4)) {
            return;
        }
        double start = Math.rint((cornerX - width) / 2);
        ObjectNode stair = platform.putArray("stairs").addObject().put("id", "S1");
        stair.set("line", sheet.line(start, area.endMm(), start + width, area.endMm()));
        stair.put("risers", care.slips(chance) ? risers - 1 : risers);
        stair.set("rise", sheet.length(height / risers));
        stair.set("going", sheet.length(care.slips(chance) ? 200 : practice.goingMm()));
        stair.set("footLevel", sheet.length(ground.levelMm(area.endMm())));
        if (!care.omits(chance)) {
            stair.put("openRisers", care.slips(chance));
            stair.set("largestRiseDifference", sheet.length(care.slips(chance) ? 15 : 2));
            ObjectNode handrails = stair.putObject("handrails");
            handrails.put("sides", care.slips(chance) ? "none" : "both");
            handrails.set("height", sheet.length(practice.handrailMm()));
            stair.set("topLanding", sheet.length(1200));
            stair.set("bottomLanding", sheet.length(1200));
        }
        stair.putObject("strings").put("timber", "string").put("count", 3);
        if (guarded) {
            stair.put("guard", "G2");
            if (practice.isAmerican() && !care.omits(chance)) {
                stair.set("guardTriangle", sheet.length(140));
            }
        }
    }
}
