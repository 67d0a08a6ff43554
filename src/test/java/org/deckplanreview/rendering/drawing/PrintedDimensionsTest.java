package org.deckplanreview.rendering.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is printed on a drawing is what the layout has. */
class PrintedDimensionsTest {

    private static List<String> samples() {
        return DrawnDecks.samples();
    }

    /** To a tenth, as the drawings print it. */
    private static String mm(double value) {
        BigDecimal n = new BigDecimal(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return n.signum() == 0 ? "0" : n.toPlainString();
    }

    private static ReadSvg plan(DrawnDeck deck) {
        return ReadSvg.of(Drawings.plan(deck).get(0));
    }

    /** By hand: posts at 300, 2400 and 4500 of 4800; the beam at 600 of 3600. */
    @Test
    void a_rectangle_has_chains_of_its_posts_and_its_sides() {
        assertThat(plan(DrawnDecks.of(SampleDeck.complete().bytes())).lettered("dimension-number"))
                .containsExactlyInAnyOrder("300", "2100", "2100", "300", "4800", "600", "3000", "3600");
    }

    @Test
    void an_angled_side_is_dimensioned_along_itself() {
        SampleDeck deck = SampleDeck.complete()
                .without("/platforms/0/ledger")
                .without("/platforms/0/edges/3")
                .without("/platforms/0/edges/2")
                .with("/platforms/0/outline", SampleDeck.points(0, 0, 4800, 0, 4800, 3600, 800, 3600, 0, 3000));
        assertThat(plan(DrawnDecks.of(deck.bytes())).lettered("dimension-number"))
                .contains("1000", "4000", "3000", "4800", "3600");
    }

    /** 1 in = 25.4 mm: 5 ft 6 1/2 in and 10 ft. */
    @Test
    void inches_are_written_as_feet_and_inches() {
        assertThat(ShownUnits.of(LengthUnit.INCH).length(66.5 * 25.4)).isEqualTo("5'-6 1/2\"");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_plan_prints_the_whole_deck_and_every_drop(String sample) {
        DrawnDeck deck = DrawnDecks.sample(sample);
        ReadSvg plan = plan(deck);
        assertThat(plan.lettered("dimension-number"))
                .contains(mm(extent(deck, PlanPoint::xMm)), mm(extent(deck, PlanPoint::yMm)));
        List<String> drops = new ArrayList<>();
        for (PlatformLayout p : deck.layout().platforms()) {
            for (EdgeRun e : p.edges()) {
                if (e.edgeKind().filter(k -> k != EdgeKind.OPEN).isEmpty()) {
                    drops.add(e.drop().isKnown() ? "drop " + mm(e.drop().get().largestMm()) : "drop not known");
                }
            }
        }
        assertThat(plan.lettered("label").stream()
                        .filter(t -> t.startsWith("drop "))
                        .toList())
                .containsAll(drops);
    }

    private static double extent(DrawnDeck deck, ToDoubleFunction<PlanPoint> coordinate) {
        List<PlanPoint> all = deck.layout().platforms().stream()
                .flatMap(p -> p.platform().outline().stream())
                .toList();
        return all.stream().mapToDouble(coordinate).max().orElseThrow()
                - all.stream().mapToDouble(coordinate).min().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_section_prints_the_lengths_of_its_posts_and_its_levels(String sample) {
        DrawnDeck deck = DrawnDecks.sample(sample);
        List<Drawing> sections = Drawings.section(deck);
        for (PlatformLayout p : deck.layout().platforms()) {
            ReadSvg section = ReadSvg.of(sections.get(p.platformIndex()));
            if (p.platform().level().isEmpty()) {
                assertThat(section.lettered("note")).anyMatch(t -> t.contains("/platforms/0/level"));
                continue;
            }
            List<String> drawn = section.groups("post").stream()
                    .map(g -> ReadSvg.within(g, "title").get(0).getTextContent())
                    .toList();
            List<String> lengths = p.posts().stream()
                    .filter(q -> drawn.contains(q.label()))
                    .map(PrintedDimensionsTest::length)
                    .toList();
            assertThat(lengths).as("posts in sight").isNotEmpty();
            assertThat(section.lettered("dimension-number")).containsAll(lengths);
        }
    }

    private static String length(PostPlace q) {
        return mm(q.topLevelMm().get() - q.bottomLevelMm().get());
    }

    /** By hand, as above: joists from the front over the beam to the ledger, the beam over its posts. */
    @Test
    void the_members_sheet_prints_the_spans_of_the_layout() {
        DrawnDeck deck = DrawnDecks.of(SampleDeck.complete().bytes());
        ReadSvg sheet = ReadSvg.of(Drawings.members(deck).get(0));
        assertThat(sheet.lettered("dimension-number")).contains("600", "3000", "300", "2100", "2100", "300");
    }
}
