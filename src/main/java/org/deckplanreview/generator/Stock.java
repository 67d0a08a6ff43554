package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.deckplanreview.generator.Practice.Piece;

/** The timbers of one deck, one for each use. */
final class Stock {

    private static final Piece RAIL = new Piece(69.85, 69.85, 1000);
    private static final Piece BALUSTER = new Piece(50.8, 50.8, 1000);

    /** Beams and posts keep this much above the ground. */
    private static final double LEAST_ROOM_MM = 160;

    private final Hand hand;
    private final Piece board;
    private final Piece joist;
    private final Piece beam;
    private final Piece post;
    private final String wood;

    Stock(Hand hand) {
        Practice practice = hand.practice();
        Chance chance = hand.chance();
        this.hand = hand;
        this.board = chance.oneOf(practice.boards());
        this.joist = chance.oneOf(practice.joists());
        List<Piece> deepEnough = practice.beams().stream()
                .filter(b -> b.depthMm() >= joist.depthMm())
                .toList();
        this.beam = chance.oneOf(hand.slips() ? practice.beams() : deepEnough);
        this.post = chance.oneOf(practice.posts());
        this.wood = chance.oneOf(practice.woods());
    }

    /** What a joist is drawn to span: what it is trusted with, or too much of it. */
    double joistSpanMm() {
        return spanMm(joist);
    }

    double beamSpanMm() {
        return spanMm(beam);
    }

    double joistDepthMm() {
        return joist.depthMm();
    }

    double beamDepthMm() {
        return beam.depthMm();
    }

    /** As many as stand wholly on a post. */
    int pliesOnPost() {
        return Math.max(1, Math.min(3, (int) (post.breadthMm() / beam.breadthMm())));
    }

    double postMm() {
        return post.breadthMm();
    }

    /** Height of boards, joists and beams, one on the other, with room to the ground. */
    double stackMm() {
        return board.depthMm() + joist.depthMm() + beam.depthMm() + LEAST_ROOM_MM;
    }

    /** Level of the underside of a beam below the boards. */
    double beamUndersideMm(boolean hung) {
        return board.depthMm() + beam.depthMm() + (hung ? 0 : joist.depthMm());
    }

    private double spanMm(Piece piece) {
        Chance chance = hand.chance();
        return piece.spanMm() * (hand.slips() ? chance.between(1.1, 1.8) : chance.between(0.6, 0.9));
    }

    /** @param nearGround whether rain splashes from the ground to the boards */
    ArrayNode json(boolean nearGround) {
        Practice practice = hand.practice();
        ArrayNode timbers = hand.sheet().array();
        timbers.add(timber("board", board, nearGround));
        timbers.add(timber("joist", joist, true));
        timbers.add(timber("beam", beam, true));
        timbers.add(timber("post", post, true));
        timbers.add(timber("ledger", practice.ledgerFor(joist), true));
        timbers.add(timber("brace", practice.brace(), true));
        timbers.add(timber("guard-post", practice.posts().get(0), true));
        timbers.add(timber("rail", RAIL, nearGround));
        timbers.add(timber("baluster", BALUSTER, nearGround));
        timbers.add(timber("string", practice.string(), true));
        timbers.add(timber("tread", practice.tread(), nearGround));
        return timbers;
    }

    private ObjectNode timber(String id, Piece piece, boolean nearGround) {
        Sheet sheet = hand.sheet();
        ObjectNode timber = sheet.object().put("id", id);
        timber.set("breadth", sheet.length(piece.breadthMm()));
        timber.set("depth", sheet.length(piece.depthMm()));
        if (!hand.omits()) {
            grade(timber);
        }
        if (!hand.omits()) {
            protect(timber, nearGround && !hand.slips());
        }
        if (!hand.omits()) {
            timber.put("installedWet", hand.slips());
        }
        return timber;
    }

    private void protect(ObjectNode timber, boolean wetter) {
        boolean board = timber.path("id").asText().equals("board");
        boolean durable = !hand.practice().isAmerican() || wood.equals("western-cedars");
        if (board && !wetter && durable && hand.chance().in(0.2)) {
            timber.putObject("naturalDurability")
                    .put("heartwoodClass", hand.choice(2, 4))
                    .put("heartwoodOnly", !hand.slips());
            return;
        }
        ObjectNode treatment = timber.putObject("treatment");
        if (hand.practice().isAmerican()) {
            treatment.put("useCategory", wetter ? "UC4A" : "UC3B").put("standard", "AWPA U1");
        } else {
            treatment.put("useClass", wetter ? "UC4" : "UC3.2");
            treatment.put("serviceLifeYears", wetter ? 30 : 15).put("standard", "BS 8417:2024");
        }
    }

    private void grade(ObjectNode timber) {
        if (hand.practice().isAmerican()) {
            String kind = timber.path("id").asText().equals("ledger") ? "southern-pine" : wood;
            timber.put("species", kind).put("grade", hand.choice("no.2", "no.3"));
            timber.put("incised", !kind.equals("southern-pine") && !kind.equals("western-cedars"));
        } else {
            boolean board = timber.path("id").asText().equals("board");
            timber.put("strengthClass", hand.choice(board ? "C24" : wood, "C14"));
        }
    }
}
