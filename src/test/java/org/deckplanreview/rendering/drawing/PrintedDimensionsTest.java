package org.deckplanreview.rendering.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.api.Condition;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.rendering.ReviewedDecks;
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
        return ReviewedDecks.names();
    }

    /** What is printed, read back as mm: a number, or feet, inches and parts of an inch (1 in = 25.4 mm). */
    private static double readBack(String printed) {
        Matcher inches = Pattern.compile("(?:(\\d+)'-)?(\\d+(?= |\"))?(?: ?(\\d+)/(\\d+))?\"")
                .matcher(printed);
        if (!inches.matches()) {
            return Double.parseDouble(printed);
        }
        double parts =
                inches.group(3) == null ? 0 : Double.parseDouble(inches.group(3)) / Double.parseDouble(inches.group(4));
        return 25.4 * (12 * whole(inches.group(1)) + whole(inches.group(2)) + parts);
    }

    private static double whole(String digits) {
        return digits == null ? 0 : Double.parseDouble(digits);
    }

    /** To a tenth of a mm, or to a sixteenth of an inch, as drawings print it. */
    private static Condition<List<? extends String>> printing(double mm, DrawnDeck deck) {
        boolean metric = deck.layout().submission().units() == LengthUnit.MILLIMETRE;
        double off = (metric ? 0.05 : 25.4 / 32) + 1e-6;
        return new Condition<>(
                texts -> texts.stream().anyMatch(t -> !t.equals("not known") && Math.abs(readBack(t) - mm) <= off),
                mm + " mm");
    }

    private static ReadSvg plan(DrawnDeck deck) {
        return ReadSvg.of(Drawings.plan(deck).get(0));
    }

    /** By hand: posts at 300, 2400 and 4500 of 4800; the beam at 600 of 3600. */
    @Test
    void a_rectangle_has_chains_of_its_posts_and_its_sides() {
        assertThat(plan(ReviewedDecks.of(SampleDeck.complete().bytes())).lettered("dimension-number"))
                .containsExactlyInAnyOrder("300", "2100", "2100", "300", "4800", "600", "3000", "3600");
    }

    @Test
    void an_angled_side_is_dimensioned_along_itself() {
        SampleDeck deck = SampleDeck.complete()
                .without("/platforms/0/ledger")
                .without("/platforms/0/edges/3")
                .without("/platforms/0/edges/2")
                .with("/platforms/0/outline", SampleDeck.points(0, 0, 4800, 0, 4800, 3600, 800, 3600, 0, 3000));
        assertThat(plan(ReviewedDecks.of(deck.bytes())).lettered("dimension-number"))
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
        DrawnDeck deck = ReviewedDecks.sample(sample);
        ReadSvg plan = plan(deck);
        assertThat(plan.lettered("dimension-number"))
                .has(printing(extent(deck, PlanPoint::xMm), deck))
                .has(printing(extent(deck, PlanPoint::yMm), deck));
        List<String> drops = plan.lettered("label").stream()
                .filter(t -> t.startsWith("drop "))
                .map(t -> t.substring("drop ".length()))
                .toList();
        for (PlatformLayout p : deck.layout().platforms()) {
            for (EdgeRun e : p.edges()) {
                if (e.edgeKind().filter(k -> k != EdgeKind.OPEN).isEmpty()) {
                    if (e.drop().isKnown()) {
                        assertThat(drops).has(printing(e.drop().get().largestMm(), deck));
                    } else {
                        assertThat(drops).contains("not known");
                    }
                }
            }
        }
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
        DrawnDeck deck = ReviewedDecks.sample(sample);
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
            assertThat(drawn.isEmpty())
                    .as("no posts in sight")
                    .isEqualTo(p.posts().isEmpty());
            for (PostPlace q : p.posts()) {
                if (drawn.contains(q.label())) {
                    assertThat(section.lettered("dimension-number"))
                            .has(printing(
                                    q.topLevelMm().get() - q.bottomLevelMm().get(), deck));
                }
            }
        }
    }

    /** By hand, as above: joists from the front over the beam to the face of the ledger of 47 mm, the beam over its posts. */
    @Test
    void the_members_sheet_prints_the_spans_of_the_layout() {
        DrawnDeck deck = ReviewedDecks.of(SampleDeck.complete().bytes());
        ReadSvg sheet = ReadSvg.of(Drawings.members(deck).get(0));
        assertThat(sheet.lettered("dimension-number")).contains("600", "2953", "300", "2100", "2100", "300");
    }
}
