package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Joists, beams along x, posts, footings and braces of one platform. */
final class DrawnFrame {

    private static final double INSET_MM = 200;
    private static final double SMALL_INSET_MM = 90;
    /** Beside another platform, so that the footings of both have room. */
    private static final double WIDER_INSET_MM = 450;

    /** Part of a length between overhangs. */
    private static final double MOST_OVERHANG = 0.15;

    private static final double MOST_POSTS = 200;
    private static final double BRACE_MM = 450;
    private static final double LONG_BRACE_MM = 700;
    private static final double TALL_POST_MM = 1300;
    private static final double LEAST_BRACED_POST_MM = 580;
    /** So that large decks keep to the braces that a submission may have. */
    private static final int POSTS_FOR_WIDER_BRACING = 60;

    private static final double SHORTEST_BAY_MM = 600;

    /**
     * A row of posts under a beam.
     *
     * @param hung whether joists end at the beam's faces
     */
    private record Row(double yMm, double widthMm, boolean hung) {}

    private final Area area;
    private final Practice practice;
    private final Stock stock;
    private final Ground ground;
    private final Hand hand;
    private final Chance chance;
    private final Sheet sheet;
    private final double joistSpan;
    private final double beamSpan;
    private final double overhang;
    private final boolean hangers;
    private final List<Row> rows;
    private final boolean embedded;
    private final boolean bolted;

    DrawnFrame(Area area, Stock stock, Ground ground, Hand hand) {
        this.area = area;
        this.practice = hand.practice();
        this.stock = stock;
        this.ground = ground;
        this.hand = hand;
        this.chance = hand.chance();
        this.sheet = hand.sheet();
        this.joistSpan = stock.joistSpanMm();
        this.overhang = chance.in(0.4) ? INSET_MM : SMALL_INSET_MM;
        this.hangers = chance.in(0.25);
        this.rows = rows();
        double closest = area.widthMm() * rows.size() / (MOST_POSTS - 2.0 * rows.size());
        this.beamSpan = Math.max(stock.beamSpanMm(), closest);
        this.embedded = chance.in(area.attached() ? 0.15 : 0.5);
        this.bolted = !practice.isAmerican()
                && !hangers
                && stock.postMm() >= 125
                && stock.beamDepthMm() >= 195
                && chance.in(0.15);
    }

    /** Adds joists, beams, posts, footings and braces. */
    void addTo(ObjectNode platform) {
        platform.set("joists", joists());
        ArrayNode beams = platform.putArray("beams");
        ArrayNode posts = platform.putArray("posts");
        ArrayNode footings = platform.putArray("footings");
        for (Row row : rows) {
            add(row, beams, posts, footings);
        }
        if (!area.attached() && !embedded && !hand.slips()) {
            braces(platform, beams);
        }
    }

    private ObjectNode joists() {
        ObjectNode joists = sheet.object().put("timber", "joist");
        joists.set("direction", sheet.direction(0, 1));
        joists.set(
                "spacing",
                sheet.length(
                        hand.slips()
                                ? chance.oneOf(practice.joistSpacingsMm())
                                : practice.joistSpacingsMm().get(0)));
        if (!hand.omits()) {
            joists.put("hangerResistance", hand.printed("12 kN", "2000 lbf"));
        }
        if (!hand.omits()) {
            joists.put("holdDownResistance", hand.choice(hand.printed("3 kN", "700 lbf"), "0.1 kN"));
        }
        if (!hand.omits()) {
            joists.put("blocked", !hand.slips());
        }
        if (chance.in(0.1) || hand.slips()) {
            joists.set("endNotch", notch(stock.joistDepthMm()));
        }
        return joists;
    }

    private ObjectNode notch(double depthMm) {
        ObjectNode notch = sheet.object();
        notch.set("depth", sheet.length(depthMm * (hand.slips() ? 0.4 : 0.06)));
        notch.set("supportDistance", sheet.length(hand.choice(30, 100)));
        notch.put("slope", hand.slips() ? 0 : chance.whole(0, 4));
        return notch.put("side", hand.slips() ? "opposite" : "support");
    }

    /** Rows of posts so close that no joist is drawn longer than the stock allows. */
    private List<Row> rows() {
        double first = area.attached() ? 0 : area.startMm() + inset(area.startMm() > 0);
        double turn = area.cornerY() - inset(!area.last());
        List<Row> drawn = new ArrayList<>();
        boolean turns = area.cornerX() < area.widthMm();
        rows(drawn, first, turn, area.widthMm(), !area.attached());
        if (turns) {
            rows(drawn, turn, area.endMm() - overhang, area.cornerX(), false);
        }
        return drawn;
    }

    private double inset(boolean besidePlatform) {
        double depth = area.cornerY() - area.startMm();
        double bay = depth / Math.ceil(depth / joistSpan);
        return Math.min(besidePlatform ? WIDER_INSET_MM : overhang, MOST_OVERHANG * bay);
    }

    private void rows(List<Row> drawn, double from, double to, double widthMm, boolean withFirst) {
        int bays = (int) Math.ceil((to - from) / joistSpan);
        bays = Math.max(1, Math.min(bays, (int) ((to - from) / SHORTEST_BAY_MM)));
        for (int i = withFirst ? 0 : 1; i <= bays; i++) {
            boolean outer = i == 0 || i == bays;
            boolean hung = hangers && (!outer || hand.slips());
            drawn.add(new Row(Math.rint(from + i * (to - from) / bays), widthMm, hung));
        }
    }

    private void add(Row row, ArrayNode beams, ArrayNode posts, ArrayNode footings) {
        ObjectNode beam = beams.addObject().put("id", "B" + beams.size()).put("timber", "beam");
        int spans = Math.max(1, (int) Math.ceil((row.widthMm() - 2 * INSET_MM) / beamSpan));
        double inset = Math.min(INSET_MM, MOST_OVERHANG * row.widthMm() / spans);
        List<Double> places = new ArrayList<>();
        for (int i = 0; i <= spans; i++) {
            places.add(Math.rint(inset + i * (row.widthMm() - 2 * inset) / spans));
        }
        beam.put("plies", bolted ? 2 : stock.pliesOnPost());
        beam.set("line", sheet.line(0, row.yMm(), row.widthMm(), row.yMm()));
        ArrayNode under = beam.putArray("posts");
        seat(beam, row, places);
        double carried = row.widthMm() / spans * joistSpan / 1e6;
        for (double x : places) {
            String number = String.valueOf(posts.size() + 1);
            under.add("P" + number);
            posts.add(post(number, x, row.yMm()));
            footings.add(footing("F" + number, carried, x, row.yMm()));
        }
    }

    private void seat(ObjectNode beam, Row row, List<Double> places) {
        if (bolted) {
            beam.put("seating", hand.choice("both-sides", "one-side"));
            if (!hand.omits()) {
                beam.set("joint", joint());
            }
        } else {
            beam.put("seating", hand.choice("on-post", "both-sides"));
            if (!hand.omits()) {
                beam.put("postCap", hand.slips() ? chance.oneOf(List.of("nails-or-screws", "none")) : "connector");
            }
        }
        beam.put("joists", row.hung() ? "hangers" : "on-top");
        if (!bolted && !hand.omits()) {
            ObjectNode plies = beam.putObject("plyFixing").put("fixing", practice.isAmerican() ? "nail" : "screw");
            plies.set("spacing", sheet.length(practice.isAmerican() ? 406.4 : row.hung() ? 60 : 100));
            plies.put("rows", 2);
        }
        if (!hand.omits()) {
            beam.put("holdDownResistance", hand.choice(hand.printed("8 kN", "2000 lbf"), "0.2 kN"));
        }
        if (places.size() > 2 && chance.in(0.2)) {
            double at = places.get(1) + (hand.slips() ? (places.get(2) - places.get(1)) / 2 : 0);
            beam.putArray("plyJoints").add(sheet.length(at));
        }
        if (!row.hung() && (chance.in(0.05) || hand.slips())) {
            beam.set("endNotch", notch(stock.beamDepthMm()));
        }
    }

    private ObjectNode joint() {
        boolean screwed = hand.slips();
        ObjectNode joint = sheet.object()
                .put("kind", screwed ? "screw" : "bolt")
                .put("count", 4)
                .put("rows", 2);
        if (screwed) {
            joint.set("penetration", sheet.length(60));
        }
        joint.set("diameter", sheet.length(12));
        joint.set("spacing", sheet.length(70));
        joint.set("rowSpacing", sheet.length(50));
        joint.set("endDistance", sheet.length(hand.choice(90, 40)));
        joint.set("edgeDistance", sheet.length(60));
        joint.put("tensileStrength", "400 N/mm2");
        joint.set("washerDiameter", sheet.length(36));
        joint.set("washerThickness", sheet.length(4));
        return joint;
    }

    private ObjectNode post(String number, double x, double y) {
        ObjectNode post = sheet.object().put("id", "P" + number).put("timber", "post");
        post.set("at", sheet.point(x, y));
        post.put("footing", "F" + number);
        post.put("groundEnd", embedded ? hand.choice("uncut", "cut-untreated") : "not-in-ground");
        post.put("top", bolted ? hand.choice("capped", "flat") : "covered");
        if (!hand.omits()) {
            post.put("base", hand.choice(embedded ? "embedded" : "connector", "none"));
        }
        if (!hand.omits()) {
            post.put("holdDownResistance", hand.choice(hand.printed("8 kN", "2000 lbf"), "0.2 kN"));
        }
        return post;
    }

    private ObjectNode footing(String id, double areaM2, double x, double y) {
        ObjectNode footing = sheet.object().put("id", id).put("kind", embedded ? "embedded-post" : "pad");
        boolean round = embedded || chance.in(0.3);
        double side = Math.ceil(practice.footingForSquareMetreMm() * Math.sqrt(Math.max(1, areaM2)) / 50) * 50;
        footing.put("shape", round ? "round" : "rectangular");
        footing.set("breadth", sheet.length(hand.choice(side, 250.0)));
        if (!round && chance.in(0.1)) {
            footing.set("length", sheet.length(side));
        }
        double depth = hand.choice(Math.max(practice.footingDepthMm(), ground.frostMm()) + (embedded ? 300 : 0), 250.0);
        double top = hand.choice(practice.footingTopMm(), -100.0);
        if (!hand.omits()) {
            footing.set("depth", sheet.length(depth));
            footing.set("topAboveGround", sheet.length(top));
            footing.set("thickness", sheet.length(sheet.writtenMm(depth) + sheet.writtenMm(top)));
            if (embedded) {
                footing.set("embedment", sheet.length(depth - 100));
            }
        }
        if (practice.isAmerican()) {
            footing.put("frostProtected", false);
        }
        if (chance.in(0.1) || hand.slips()) {
            footing.set("at", sheet.point(x + (hand.slips() ? side / 3 : 0), y));
        }
        return footing.put("topShedsWater", !hand.slips());
    }

    /** From the outer posts of each beam and some between, along it and across it. */
    private void braces(ObjectNode platform, ArrayNode beams) {
        ArrayNode braces = sheet.array();
        int posts = platform.path("posts").size();
        int step = Math.max(2, (int) Math.ceil(posts / (double) POSTS_FOR_WIDER_BRACING));
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double heightMm = area.levelAt(row.yMm())
                    - stock.beamUndersideMm(row.hung())
                    - ground.levelMm(row.yMm())
                    - practice.footingTopMm();
            if (heightMm < LEAST_BRACED_POST_MM) {
                continue;
            }
            ArrayNode under = (ArrayNode) beams.get(i).path("posts");
            double endMm = row.widthMm() > area.cornerX() ? area.cornerY() : area.endMm();
            double legMm = heightMm > TALL_POST_MM ? LONG_BRACE_MM : BRACE_MM;
            int inwardY = i < rows.size() / 2.0 && row.yMm() + legMm <= endMm ? 1 : -1;
            int last = under.size() - 1;
            for (int p = 0; p <= last; p++) {
                if (p == last || p % step == 0) {
                    brace(braces, under.get(p).asText(), p == last ? -1 : 1, 0, legMm);
                    brace(braces, under.get(p).asText(), 0, inwardY, legMm);
                }
            }
        }
        if (!braces.isEmpty()) {
            platform.set("braces", braces);
        }
    }

    private void brace(ArrayNode braces, String post, int dx, int dy, double legMm) {
        ObjectNode brace = braces.addObject().put("id", "K" + braces.size()).put("timber", "brace");
        brace.put("post", post);
        brace.set("direction", sheet.direction(dx, dy));
        brace.set("below", sheet.length(legMm));
        brace.set("reach", sheet.length(legMm));
        if (!hand.omits()) {
            brace.put("fixingResistance", hand.choice(hand.printed("12 kN", "2700 lbf"), "0.5 kN"));
        }
    }
}
