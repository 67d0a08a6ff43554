package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.junit.jupiter.api.Test;

class SubmissionReadingTest {

    @Test
    void a_complete_document_is_read_member_by_member() {
        Submission s = SampleDeck.complete().submission();

        assertThat(s.reference()).isEqualTo("Lark Cottage 7");
        assertThat(s.units()).isEqualTo(LengthUnit.MILLIMETRE);
        assertThat(s.reviewOn()).isEqualTo(LocalDate.of(2026, 3, 31));
        assertThat(s.ruleset()).isEqualTo(new RulesetChoice("uk-england", Optional.empty()));
        assertThat(s.use().occupancy()).isEqualTo(Occupancy.SINGLE_DWELLING);
        assertThat(s.site().soil().orElseThrow().bearingResistance())
                .contains(Measure.of(75, MeasureUnit.KILONEWTON_PER_SQUARE_METRE));
        assertThat(s.timbers()).extracting(Timber::id).containsExactly("J", "BM", "P", "BD");
        assertThat(s.timbers().get(0).treatment().orElseThrow().useClass()).isEqualTo(UseClass.UC3_2);
        Platform p = s.platforms().get(0);
        assertThat(p.outline()).element(2).isEqualTo(new PlanPoint(4800, 3600));
        assertThat(p.fall()).contains(new Fall(80, Optional.of(new Direction(0, -1))));
        assertThat(p.joists().orElseThrow().spacing()).isEqualTo(Length.ofMm(400));
        assertThat(p.beams().get(0).posts()).isEqualTo(List.of("P1", "P2", "P3"));
        assertThat(p.footings().get(2).topShedsWater()).contains(true);
        assertThat(p.edges().get(3).guard()).contains("G1");
        assertThat(s.protection().fixings().get(0).finish()).contains(FixingFinish.STAINLESS_A2);
    }
}
