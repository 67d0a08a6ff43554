package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
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
        assertThat(s.timbers().get(0).treatment().orElseThrow().useClass()).contains(UseClass.UC3_2);
        Platform p = s.platforms().get(0);
        assertThat(p.outline()).element(2).isEqualTo(new PlanPoint(4800, 3600));
        assertThat(p.fall()).contains(new Fall(80, Optional.of(new Direction(0, -1))));
        assertThat(p.joists().orElseThrow().spacing()).isEqualTo(Length.ofMm(400));
        assertThat(p.beams().get(0).posts()).isEqualTo(List.of("P1", "P2", "P3"));
        assertThat(p.footings().get(2).topShedsWater()).contains(true);
        assertThat(p.edges().get(3).guard()).contains("G1");
        assertThat(s.protection().fixings().get(0).finish()).contains(FixingFinish.STAINLESS_A2);
    }

    /** The international inch is 25.4 mm exactly (ISO 80000-3:2006, annex; from memory). */
    @Test
    void inches_become_millimetres_as_they_are_written() {
        Submission s = SampleDeck.complete()
                .with("/units", "in")
                .with("/platforms/0/guards/0/height", 36)
                .with("/timbers/0/breadth", 1.85)
                .with("/site/frostDepth", 0.1)
                .submission();

        assertThat(s.platforms().get(0).guards().get(0).height()).contains(Length.ofMm(914.4));
        assertThat(s.timbers().get(0).breadth()).isEqualTo(Length.ofMm(46.99));
        assertThat(s.site().frostDepth()).contains(Length.ofMm(2.54));
        assertThat(s.platforms().get(0).outline()).element(2).isEqualTo(new PlanPoint(121_920, 91_440));
        assertThat(s.platforms().get(0).level().orElseThrow().z()).isEqualTo(Length.ofMm(22_860));
    }

    /** Lengths and coordinates of the whole document; what carries its own unit, or none, stays as it is. */
    @Test
    void a_document_in_inches_is_25_point_4_times_as_large_as_the_same_in_millimetres() {
        List<Double> mm = new ArrayList<>();
        List<Double> inches = new ArrayList<>();
        List<Object> others = new ArrayList<>();
        List<Object> othersInInches = new ArrayList<>();
        sort(SampleDeck.everyMember().submission(), mm, others);
        sort(SampleDeck.everyMember().with("/units", "in").submission(), inches, othersInInches);

        assertThat(mm).hasSizeGreaterThan(100);
        assertThat(inches).hasSameSizeAs(mm);
        for (int i = 0; i < mm.size(); i++) {
            assertThat(inches.get(i)).isCloseTo(mm.get(i) * 25.4, within(1e-6));
        }
        others.remove(LengthUnit.MILLIMETRE);
        othersInInches.remove(LengthUnit.INCH);
        assertThat(othersInInches).isEqualTo(others);
    }

    private static void sort(Object value, List<Double> lengths, List<Object> others) {
        if (value instanceof Length length) {
            lengths.add(length.mm());
        } else if (value instanceof PlanPoint point) {
            lengths.add(point.xMm());
            lengths.add(point.yMm());
        } else if (value instanceof List<?> list) {
            list.forEach(entry -> sort(entry, lengths, others));
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(inner -> sort(inner, lengths, others));
        } else if (value instanceof Record holder && !(value instanceof Measure)) {
            for (RecordComponent component : holder.getClass().getRecordComponents()) {
                sort(component(holder, component), lengths, others);
            }
        } else {
            others.add(value);
        }
    }

    private static Object component(Record holder, RecordComponent component) {
        try {
            return component.getAccessor().invoke(holder);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void measures_with_their_own_unit_are_read_by_it() {
        Submission s = SampleDeck.everyMember().submission();

        assertThat(s.site().planning().orElseThrow().gardenCovered()).contains(Measure.of(20, MeasureUnit.PERCENT_));
        assertThat(s.site().windPressure()).contains(Measure.of(0.8, MeasureUnit.KILONEWTON_PER_SQUARE_METRE));
        assertThat(s.platforms().get(0).beams().get(0).joint().orElseThrow().tensileStrength())
                .contains(Measure.of(400, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE));
        assertThat(s.platforms().get(0).braces().get(0).fixingResistance())
                .contains(Measure.of(4, MeasureUnit.KILONEWTON));
    }

    @Test
    void a_direction_has_no_unit() {
        Submission s = SampleDeck.complete()
                .with("/units", "in")
                .withJson("/platforms/0/boards/direction", "[3, 4]")
                .submission();

        assertThat(s.platforms().get(0).boards().orElseThrow().direction()).isEqualTo(new Direction(3, 4));
    }

    @Test
    void a_negative_zero_is_zero() {
        Submission s = SampleDeck.complete()
                .withJson("/platforms/0/outline/0", "[-0.0, -0]")
                .submission();

        assertThat(s.platforms().get(0).outline().get(0)).isEqualTo(new PlanPoint(0, 0));
    }

    @Test
    void the_tree_is_kept_as_it_was_written() {
        SampleDeck deck = SampleDeck.complete()
                .without("/site")
                .without("/platforms/0/ledger")
                .without("/platforms/0/edges/2");

        assertThat(((ReadResult.Read) deck.read()).tree())
                .hasToString(deck.node().toString());
    }
}
