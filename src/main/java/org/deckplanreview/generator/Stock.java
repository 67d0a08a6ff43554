package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.deckplanreview.generator.Practice.Piece;

/** The timbers of one deck, one for each use. */
final class Stock {

    private static final Piece RAIL = new Piece(69.85, 69.85, 1000);
    private static final Piece BALUSTER = new Piece(50.8, 50.8, 1000);

    private final Practice practice;
    private final Care care;
    private final Chance chance;
    private final Sheet sheet;
    private final Piece board;
    private final Piece joist;
    private final Piece beam;
    private final Piece post;
    private final String species;

    Stock(Practice practice, Care care, Chance chance, Sheet sheet) {
        this.practice = practice;
        this.care = care;
        this.chance = chance;
        this.sheet = sheet;
        this.board = chance.oneOf(practice.boards());
        this.joist = chance.oneOf(practice.joists());
        this.beam = chance.oneOf(practice.beams());
        this.post = chance.oneOf(practice.posts());
        this.species = chance.oneOf(List.of("southern-pine", "douglas-fir-larch", "hem-fir", "western-cedars"));
    }

    /** What a joist is drawn to span: what it is trusted with, or too much of it. */
    double joistSpanMm() {
        return spanMm(joist);
    }

    double beamSpanMm() {
        return spanMm(beam);
    }

    Piece post() {
        return post;
    }

    private double spanMm(Piece piece) {
        return piece.spanMm() * (care.slips(chance) ? chance.between(1.1, 1.8) : chance.between(0.7, 1));
    }

    ArrayNode json() {
        ArrayNode timbers = sheet.array();
        timbers.add(timber("board", board, false));
        timbers.add(timber("joist", joist, true));
        timbers.add(timber("beam", beam, true));
        timbers.add(timber("post", post, true));
        timbers.add(timber("guard-post", practice.posts().get(0), true));
        timbers.add(timber("rail", RAIL, false));
        timbers.add(timber("baluster", BALUSTER, false));
        timbers.add(timber("string", practice.joists().get(practice.joists().size() - 1), true));
        return timbers;
    }

    private ObjectNode timber(String id, Piece piece, boolean frame) {
        ObjectNode timber = sheet.object().put("id", id);
        timber.set("breadth", sheet.length(piece.breadthMm()));
        timber.set("depth", sheet.length(piece.depthMm()));
        if (!care.omits(chance)) {
            grade(timber);
        }
        if (!care.omits(chance)) {
            ObjectNode treatment = timber.putObject("treatment");
            boolean light = care.slips(chance) || !frame;
            if (practice.isAmerican()) {
                treatment.put("useCategory", light ? "UC3B" : "UC4A");
            } else {
                treatment.put("useClass", light ? "UC3.2" : "UC4").put("serviceLifeYears", light ? 15 : 30);
            }
        }
        return timber;
    }

    private void grade(ObjectNode timber) {
        if (practice.isAmerican()) {
            timber.put("species", species).put("grade", "no.2");
            timber.put("incised", !species.equals("southern-pine") && !species.equals("western-cedars"));
        } else {
            timber.put("strengthClass", care.slips(chance) ? "C14" : chance.oneOf(List.of("C16", "C24")));
        }
    }
}
