package org.deckplanreview.review;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;

/**
 * Documents as large as the schema lets them be. Platforms stand side by side along x; joists run along y over many
 * beams. Outlines and beams lie askew, so that no two joists are alike.
 */
final class LargeDeck {

    private static final double SPACING = 400;
    private static final double SPAN = 900;

    private final ObjectMapper json = new ObjectMapper();
    private int platforms = 1;
    private int joists = 10;
    private int beams = 3;
    private int posts = 4;
    private int heavyItems;
    private int corners = 4;

    LargeDeck platforms(int count) {
        platforms = count;
        return this;
    }

    /** On each platform. */
    LargeDeck joists(int count) {
        joists = count;
        return this;
    }

    /** Under each platform, with their posts. */
    LargeDeck beams(int count, int postsEach) {
        beams = count;
        posts = postsEach;
        return this;
    }

    /** Each of many corners. */
    LargeDeck heavyItems(int count) {
        heavyItems = count;
        return this;
    }

    /** Of each outline. */
    LargeDeck corners(int count) {
        corners = count;
        return this;
    }

    byte[] bytes() {
        return document().toString().getBytes(StandardCharsets.UTF_8);
    }

    private double width() {
        return joists * SPACING;
    }

    private double length() {
        return (beams - 1) * SPAN;
    }

    private double left(int platform) {
        return platform * (width() + 1000);
    }

    private ObjectNode document() {
        ObjectNode root = json.createObjectNode();
        root.put("reference", "largest").put("units", "mm").put("reviewOn", "2026-03-31");
        root.putObject("ruleset").put("region", "uk-england");
        ObjectNode use = root.putObject("use").put("occupancy", "single-dwelling");
        ArrayNode items = use.putArray("heavyItems");
        for (int i = 0; i < heavyItems; i++) {
            items.add(heavyItem(i));
        }
        ObjectNode site = root.putObject("site");
        site.putArray("groundLevels").addObject().put("x", 0).put("y", 0).put("z", 0);
        site.put("snowLoad", "0.5 kN/m2");
        site.putObject("soil").put("soilClass", "stiff-clay");
        ArrayNode timbers = root.putArray("timbers");
        timber(timbers, "joist", 47, 195);
        timber(timbers, "beam", 47, 220);
        timber(timbers, "post", 100, 100);
        timber(timbers, "board", 145, 28);
        ArrayNode all = root.putArray("platforms");
        for (int p = 0; p < platforms; p++) {
            all.add(platform(p));
        }
        return root;
    }

    private static void timber(ArrayNode timbers, String id, double breadth, double depth) {
        ObjectNode timber = timbers.addObject();
        timber.put("id", id).put("breadth", breadth).put("depth", depth).put("strengthClass", "C24");
        timber.putObject("treatment").put("useClass", "UC4");
    }

    /** Round, and larger than a joist's bay. */
    private ObjectNode heavyItem(int i) {
        ObjectNode item = json.createObjectNode();
        item.put("id", "H" + i).put("weight", "8 kN").put("nature", i % 2 == 0 ? "variable" : "permanent");
        double x = left(i % platforms) + width() / 2;
        double y = length() * (i + 1) / (heavyItems + 1);
        ArrayNode outline = item.putArray("outline");
        for (int c = 0; c < corners; c++) {
            double angle = 2 * Math.PI * c / corners;
            point(outline, x + 0.4 * width() * Math.cos(angle), y + 400 * Math.sin(angle));
        }
        return item;
    }

    private ObjectNode platform(int p) {
        ObjectNode platform = json.createObjectNode().put("id", "P" + p);
        double left = left(p);
        ArrayNode outline = platform.putArray("outline");
        int along = corners / 2;
        for (int c = 0; c < along; c++) {
            double t = (double) c / (along - 1);
            point(outline, left + width() * t, -600 - 300 * t * t);
        }
        for (int c = 0; c < along; c++) {
            double t = 1 - (double) c / (along - 1);
            point(outline, left + width() * t, length() + 700 + 350 * t * t);
        }
        ObjectNode level = platform.putObject("level").put("z", 1000 + p);
        point(level, "at", left, 0);
        ObjectNode boards = platform.putObject("boards").put("timber", "board").put("gap", 5);
        point(boards, "direction", 1, 0);
        ObjectNode field = platform.putObject("joists").put("timber", "joist").put("spacing", SPACING);
        point(field, "direction", 0, 1);
        ArrayNode lines = platform.putArray("beams");
        ArrayNode under = platform.putArray("posts");
        ArrayNode footings = platform.putArray("footings");
        for (int b = 0; b < beams; b++) {
            beam(left, b, lines, under, footings);
        }
        return platform;
    }

    private void beam(double left, int b, ArrayNode lines, ArrayNode under, ArrayNode footings) {
        double y = b * SPAN;
        double rise = 5 + b;
        ObjectNode beam = lines.addObject();
        beam.put("id", "B" + b).put("timber", "beam").put("plies", 2);
        ObjectNode line = beam.putObject("line");
        point(line, "from", left, y);
        point(line, "to", left + width(), y + rise);
        beam.put("seating", "on-post").put("joists", "on-top");
        ArrayNode names = beam.putArray("posts");
        for (int i = 0; i < posts; i++) {
            double t = (i + 0.4) / posts;
            String name = b + "." + i;
            names.add(name);
            ObjectNode post =
                    under.addObject().put("id", name).put("timber", "post").put("footing", name);
            point(post, "at", left + width() * t, y + rise * t);
            footings.addObject()
                    .put("id", name)
                    .put("kind", "pad")
                    .put("shape", "rectangular")
                    .put("breadth", 600)
                    .put("depth", 900)
                    .put("thickness", 900)
                    .put("topAboveGround", 50);
        }
    }

    private static void point(ObjectNode of, String name, double x, double y) {
        of.putArray(name).add(x).add(y);
    }

    private static void point(ArrayNode list, double x, double y) {
        list.addArray().add(x).add(y);
    }
}
