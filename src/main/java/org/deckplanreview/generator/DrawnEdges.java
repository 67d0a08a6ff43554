package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.generator.Area.Side;

/** What stands at the edges of one platform: guards and stairs. */
final class DrawnEdges {

    private static final double STAIR_WIDTH_MM = 1000;
    /** On either side of a stair's head, for the guard. */
    private static final double LEAST_BESIDE_STAIR_MM = 200;

    /** A drop counts this far beyond the edge. */
    private static final double BESIDE_EDGE_MM = 914.4;

    private static final double LEVER_ARM_MM = 150;
    private static final double FIXING_TO_EDGE_MM = 15;
    private static final double LANDING_MM = 1200;
    private static final int MOST_RISERS = 16;
    private static final int MOST_STAIRS = 2;

    /** @param startMm of the stair's head along its side */
    private record Flight(Side side, double startMm, int risers, double riseMm, double headMm) {
        double x(double alongMm) {
            return side.x1() + alongMm * Math.signum(side.x2() - side.x1());
        }

        double y(double alongMm) {
            return side.y1() + alongMm * Math.signum(side.y2() - side.y1());
        }
    }

    private final Area area;
    private final double leverArm;
    private final Practice practice;
    private final Ground ground;
    private final Hand hand;
    private final Chance chance;
    private final Sheet sheet;

    DrawnEdges(Area area, Stock stock, Ground ground, Hand hand) {
        this.area = area;
        this.leverArm = Math.min(LEVER_ARM_MM, stock.joistDepthMm() - 2 * FIXING_TO_EDGE_MM);
        this.practice = hand.practice();
        this.ground = ground;
        this.hand = hand;
        this.chance = hand.chance();
        this.sheet = hand.sheet();
    }

    /** Adds edges, guards and stairs. */
    void addTo(ObjectNode platform) {
        boolean guarded = isGuarded();
        List<Flight> flights = flights();
        ArrayNode edges = platform.putArray("edges");
        area.sides().forEach(side -> edges(edges, side, flights, guarded));
        if (guarded) {
            double taller = chance.in(0.2) ? 100.0 * chance.whole(1, 3) : 0;
            ArrayNode guards = platform.putArray("guards");
            guards.add(guard("G1", practice.guardHeightMm() + taller));
            guards.add(guard("G2", practice.handrailMm()));
        }
        if (!flights.isEmpty()) {
            ArrayNode stairs = platform.putArray("stairs");
            flights.forEach(flight -> stairs.add(stair("S" + (stairs.size() + 1), flight, guarded)));
        }
    }

    private boolean isGuarded() {
        double highest = Math.max(
                heightMm(area.startMm()), area.levelAt(area.endMm()) - ground.levelMm(area.endMm() + BESIDE_EDGE_MM));
        return highest > practice.guardFromDropMm() ? !hand.slips() : chance.in(0.2);
    }

    private double heightMm(double yMm) {
        return area.levelAt(yMm) - ground.levelMm(yMm);
    }

    private List<Flight> flights() {
        List<Flight> flights = new ArrayList<>();
        for (Side side : area.sides()) {
            boolean crosses =
                    isInner(side) && flights.stream().map(Flight::side).anyMatch(this::isInner);
            if (side.kind().equals("open") && !crosses && flights.size() < MOST_STAIRS && chance.in(0.3)) {
                flight(side).ifPresent(flights::add);
            }
        }
        return flights;
    }

    /** Flights from both sides of an inner corner would cross. */
    private boolean isInner(Side side) {
        return area.cornerX() < area.widthMm()
                && (side.outX() > 0 && side.x1() == area.cornerX() || side.outY() > 0 && side.y1() == area.cornerY());
    }

    /** From the middle of a side down to the ground, if there is room for it and its landing. */
    private Optional<Flight> flight(Side side) {
        double start = Math.rint((side.lengthMm() - STAIR_WIDTH_MM) / 2);
        if (start < LEAST_BESIDE_STAIR_MM || side.inwardMm() < STAIR_WIDTH_MM) {
            return Optional.empty();
        }
        double y = new Flight(side, start, 0, 0, 0).y(start + STAIR_WIDTH_MM / 2);
        for (int risers = 2; risers <= MOST_RISERS; risers++) {
            double foot = y + side.outY() * (risers - 1) * practice.goingMm();
            double rise = sheet.writtenMm((area.levelAt(y) - ground.levelMm(foot)) / risers);
            if (rise >= practice.leastRiseMm() && rise <= practice.largestRiseMm()) {
                return Optional.of(new Flight(side, start, risers, rise, area.levelAt(y)));
            }
        }
        return Optional.empty();
    }

    /** A side in one stretch, or in three where a stair leaves it. */
    private void edges(ArrayNode edges, Side side, List<Flight> flights, boolean guarded) {
        boolean fenced = guarded && side.kind().equals("open");
        Optional<Flight> stair =
                flights.stream().filter(f -> f.side().equals(side)).findFirst();
        if (stair.isEmpty()) {
            edge(edges, sheet.line(side.x1(), side.y1(), side.x2(), side.y2()), side.kind(), fenced);
            return;
        }
        Flight f = stair.get();
        List<Double> ends = List.of(0.0, f.startMm(), f.startMm() + STAIR_WIDTH_MM, side.lengthMm());
        for (int i = 0; i < 3; i++) {
            double from = ends.get(i);
            double to = ends.get(i + 1);
            ObjectNode line = sheet.line(f.x(from), f.y(from), f.x(to), f.y(to));
            edge(edges, line, "open", i == 1 ? guarded && hand.slips() : fenced && !hand.slips());
        }
    }

    private static void edge(ArrayNode edges, ObjectNode line, String kind, boolean guarded) {
        ObjectNode edge = edges.addObject();
        edge.set("line", line);
        edge.put("kind", kind);
        if (guarded) {
            edge.put("guard", "G1");
        }
    }

    private ObjectNode guard(String id, double heightMm) {
        ObjectNode guard = sheet.object().put("id", id);
        guard.set("height", sheet.length(hand.choice(heightMm, heightMm - 150)));
        guard.put("infill", hand.choice("balusters", "horizontal-rails"));
        if (!hand.omits()) {
            guard.set("largestOpening", sheet.length(hand.choice(practice.guardOpeningMm(), 125.0)));
            guard.put("climbable", hand.slips());
        }
        ObjectNode posts = guard.putObject("posts").put("timber", "guard-post");
        posts.set("spacing", sheet.length(hand.choice(800, 2000)));
        if (!hand.omits()) {
            posts.set("leverArm", sheet.length(leverArm));
            posts.put("fixingResistance", hand.printed("16 kN", "4000 lbf"));
            guard.put("rail", "rail").put("infillTimber", "baluster");
        }
        if (!hand.omits()) {
            boolean notched = hand.slips();
            guard.put("postsNotched", notched);
            if (notched) {
                guard.set("postNotchDepth", sheet.length(38.1));
            }
        }
        if (!hand.omits()) {
            guard.set("standingSurface", sheet.length(hand.choice(0, 450)));
            guard.put("blocked", !hand.slips());
        }
        return guard;
    }

    private ObjectNode stair(String id, Flight flight, boolean guarded) {
        ObjectNode stair = sheet.object().put("id", id);
        double end = flight.startMm() + STAIR_WIDTH_MM;
        stair.set(
                "line",
                sheet.line(flight.x(flight.startMm()), flight.y(flight.startMm()), flight.x(end), flight.y(end)));
        stair.put("risers", hand.slips() ? flight.risers() - 1 : flight.risers());
        stair.set("rise", sheet.length(flight.riseMm()));
        stair.set("going", sheet.length(hand.choice(practice.goingMm(), 200.0)));
        stair.set("footLevel", sheet.length(flight.headMm() - flight.risers() * flight.riseMm()));
        if (!hand.omits()) {
            boolean open = hand.slips();
            stair.put("openRisers", open);
            if (open) {
                stair.set("riserOpening", sheet.length(120));
            }
            stair.set("treadOverlap", sheet.length(25.4));
            stair.set("nosing", sheet.length(hand.choice(25.4, 5.0)));
            stair.put("contrastingNosings", !hand.slips());
            stair.put("slipResistantTreads", !hand.slips());
            stair.set("largestRiseDifference", sheet.length(hand.choice(2, 15)));
            stair.set("headroom", sheet.length(hand.choice(2400, 1800)));
        }
        if (!hand.omits()) {
            ObjectNode handrails = stair.putObject("handrails");
            handrails.put("sides", hand.choice("both", "none"));
            handrails.set("height", sheet.length(practice.handrailMm()));
            handrails.set("extension", sheet.length(hand.choice(300.0, 100.0)));
            handrails.set("grip", sheet.length(hand.choice(40.0, 90.0)));
            handrails.set("clearWidth", sheet.length(STAIR_WIDTH_MM - hand.choice(120.0, 300.0)));
            stair.set(
                    "topLanding",
                    sheet.length(Math.min(LANDING_MM, flight.side().inwardMm())));
            stair.set("bottomLanding", sheet.length(hand.choice(LANDING_MM, 500.0)));
        }
        ObjectNode strings = stair.putObject("strings").put("timber", "string").put("count", 3);
        if (!hand.omits()) {
            strings.set(
                    "throatDepth", sheet.length(hand.choice(practice.string().depthMm(), 90.0)));
            strings.put("headResistance", hand.choice(hand.printed("8 kN", "1800 lbf"), "0.5 kN"));
            stair.put("treadTimber", "tread");
        }
        if (guarded) {
            stair.put("guard", "G2");
            if (!hand.omits()) {
                stair.put("guardedSides", hand.choice("both", "one"));
                stair.set("guardTriangle", sheet.length(practice.guardTriangleMm()));
                stair.set("guardEdge", sheet.length(hand.choice(45.0, 80.0)));
            }
        }
        return stair;
    }
}
