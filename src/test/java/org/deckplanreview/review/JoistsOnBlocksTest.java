package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.layout.CarriedArea;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.submission.Submission;
import org.junit.jupiter.api.Test;

/** A deck of 12 ft by 12 ft whose joists lie on blocks: statics, and what becomes of it where blocks are taken away. */
class JoistsOnBlocksTest {

    private static final double SQUARE_FOOT_MM2 = 304.8 * 304.8;
    private static final double POUND_N = 4.4482216152605;

    private static ObjectNode sample() {
        return (ObjectNode) BuiltIn.sample("us-block-deck.json");
    }

    private static Assessment assessment(JsonNode deck) {
        Submission submission = BuiltIn.submission(deck);
        return new Assessor(BuiltIn.CATALOGUE)
                .assess(submission, BuiltIn.RULESETS.edition("us-irc", "2021").orElseThrow());
    }

    private static ReportedFinding finding(Report report, String provision) {
        return report.findings().stream()
                .filter(f -> f.provision().equals(provision))
                .findFirst()
                .orElseThrow();
    }

    private static Report report(JsonNode deck) {
        return BuiltIn.report(BuiltIn.bytes(deck));
    }

    /** Equilibrium: all reactions together are 40 psf on 144 sq ft. */
    @Test
    void what_blocks_carry_adds_up_to_the_load_and_the_area() {
        Assessment assessed = assessment(sample());
        PlatformLayout platform = assessed.layout().platforms().get(0);
        double imposedN = 0;
        double areaMm2 = 0;
        for (FootingPlace block : platform.footings()) {
            ActionForces forces = assessed.loadPath().footing(block).get();
            imposedN += forces.imposedFullN();
            areaMm2 += new CarriedArea(platform).ofFootingMm2(block).get();
        }

        assertThat(imposedN).isCloseTo(40 * 144 * POUND_N, within(1e-3));
        assertThat(areaMm2).isCloseTo(144 * SQUARE_FOOT_MM2, within(1e-3));
    }

    @Test
    void each_joist_lies_on_its_three_blocks() {
        assertThat(assessment(sample()).layout().platforms().get(0).joists())
                .hasSize(10)
                .allSatisfy((JoistLine joist) -> assertThat(joist.supports()).hasSize(3));
    }

    /** Halfway along a joist of 12 ft on blocks at 6, 72 and 138 in: without the middle one it spans 11 ft. */
    @Test
    void without_its_middle_block_a_joist_spans_twice_as_far() {
        ObjectNode deck = sample();
        ((ArrayNode) deck.at("/platforms/0/footings")).remove(10);
        ReportedFinding span = finding(report(deck), "joist.span");

        assertThat(span.sentence()).contains("11'");
        assertThat(span.determination()).isEqualTo(Determination.COMPLIES);
    }

    @Test
    void a_joist_on_one_block_is_carried_by_nothing() {
        ObjectNode deck = sample();
        ArrayNode footings = (ArrayNode) deck.at("/platforms/0/footings");
        footings.remove(20);
        footings.remove(10);

        assertThat(finding(report(deck), "joist.contact").determination()).isEqualTo(Determination.DOES_NOT_COMPLY);
    }

    @Test
    void a_block_beside_the_joists_carries_nothing_and_is_asked_about() {
        ObjectNode deck = sample();
        ((ArrayNode) deck.at("/platforms/0/footings/11/at"))
                .removeAll()
                .add(24.75)
                .add(60);
        ReportedFinding pressure = report(deck).findings().stream()
                .filter(f -> f.provision().equals("footing.pressure"))
                .filter(f -> f.determination() == Determination.UNDETERMINED)
                .findFirst()
                .orElseThrow();

        assertThat(pressure.needs()).extracting(need -> need.pointer().value()).contains("/platforms/0/footings/11/at");
    }

    /** 8 in square on the largest load of a block, against 11 in: the pressure rises with the area lost, 121 / 64. */
    @Test
    void smaller_blocks_press_harder() {
        ObjectNode small = sample();
        small.at("/platforms/0/footings").forEach(block -> ((ObjectNode) block).put("breadth", 8));
        double before = finding(report(sample()), "footing.pressure")
                .utilisation()
                .orElseThrow()
                .doubleValue();
        double after = finding(report(small), "footing.pressure")
                .utilisation()
                .orElseThrow()
                .doubleValue();

        assertThat(after / before).isBetween(1.7, 121.0 / 64);
    }
}
