package org.deckplanreview.rendering.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.ruleset.Obligation;
import org.deckplanreview.submission.SubjectKind;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** What does not comply is told by hatch, line weight and number, and so without colour too. */
class MarkedFindingsTest {

    private static final DrawnDeck FAULTY = ReviewedDecks.sample("many-faults");
    private static final ReadSvg PLAN = ReadSvg.of(Drawings.plan(FAULTY).get(0));

    /** Groups of that class without those of callouts, which have it too. */
    private static List<Element> parts(ReadSvg svg, String cssClass) {
        return svg.groups(cssClass).stream()
                .filter(g -> !g.getAttribute("class").startsWith("callout"))
                .toList();
    }

    private static Set<String> titles(ReadSvg svg, String cssClass) {
        Set<String> titles = new TreeSet<>();
        parts(svg, cssClass)
                .forEach(g -> titles.add(ReadSvg.within(g, "title").get(0).getTextContent()));
        return titles;
    }

    private static Set<String> failing(DrawnDeck deck, Set<SubjectKind> kinds) {
        Set<String> labels = new TreeSet<>();
        for (ReportedFinding f : deck.report().findings()) {
            if (f.determination() == Determination.DOES_NOT_COMPLY
                    && f.obligation() == Obligation.SHALL
                    && kinds.contains(f.subject().kind())) {
                labels.add(f.subject().label());
                f.subject().also().forEach(a -> labels.add(a.label()));
            }
        }
        return labels;
    }

    @Test
    void exactly_the_members_that_do_not_comply_are_marked() {
        Set<SubjectKind> kinds = new TreeSet<>(List.of(
                SubjectKind.BOARDS,
                SubjectKind.JOISTS,
                SubjectKind.BEAMS,
                SubjectKind.LEDGERS,
                SubjectKind.POSTS,
                SubjectKind.FOOTINGS,
                SubjectKind.EDGES,
                SubjectKind.STAIRS,
                SubjectKind.GUARDS,
                SubjectKind.BRACES));
        assertThat(titles(PLAN, "does-not-comply")).isNotEmpty().isEqualTo(failing(FAULTY, kinds));
    }

    @Test
    void they_are_hatched_and_have_wider_lines_than_the_others() {
        double usual = Pen.NARROW.widthMm();
        for (Element g : parts(PLAN, "does-not-comply")) {
            List<Double> widths = ReadSvg.within(g, "path").stream()
                    .map(p -> p.getAttribute("stroke-width"))
                    .filter(w -> !w.isEmpty())
                    .map(Double::valueOf)
                    .toList();
            long hatching = ReadSvg.within(g, "path").stream()
                    .filter(p -> p.getAttribute("stroke").equals(Colour.FAILING)
                            && ReadSvg.number(p, "stroke-width") == Pen.FAILING_HATCH.widthMm())
                    .count();
            assertThat(hatching).as(g.getTextContent()).isPositive();
            boolean isWide = widths.stream().anyMatch(w -> w > 2 * usual)
                    || ReadSvg.within(g, "circle").stream()
                            .anyMatch(c -> ReadSvg.number(c, "stroke-width") > 2 * usual);
            assertThat(isWide).isTrue();
        }
    }

    @Test
    void a_number_is_the_place_in_the_reports_list() {
        for (String callout : PLAN.lettered("callout")) {
            Matcher numbers = Pattern.compile("(?<!\\+)\\b\\d+").matcher(callout);
            while (numbers.find()) {
                int number = Integer.parseInt(numbers.group());
                assertThat(FAULTY.report().findings().get(number - 1).determination())
                        .isEqualTo(Determination.DOES_NOT_COMPLY);
            }
        }
        assertThat(FAULTY.report().findings().get(0).subject().kind()).isEqualTo(SubjectKind.JOISTS);
        assertThat(PLAN.lettered("does-not-comply").stream().filter(t -> t.startsWith("1, ")))
                .isNotEmpty();
    }

    @Test
    void the_key_beside_the_drawing_names_them() {
        assertThat(PLAN.lettered("callout-key")).startsWith("1", "2", "3");
        String first = FAULTY.report().findings().get(0).title();
        assertThat(String.join(" ", PLAN.lettered("keys"))).contains(first);
    }

    @Test
    void what_is_only_recommended_has_a_ring_and_no_wide_line() {
        DrawnDeck deck = ReviewedDecks.sample("sloping-garden-deck");
        ReadSvg plan = ReadSvg.of(Drawings.plan(deck).get(0));
        assertThat(plan.groups("does-not-comply")).isEmpty();
        assertThat(titles(plan, "joist")).hasSameSizeAs(titles(plan, "not-as-recommended"));
        assertThat(plan.lettered("keys")).contains("Not as recommended").doesNotContain("Does not comply");
    }

    @Test
    void a_member_in_bending_carries_its_numbers_and_its_peaks() {
        ReadSvg members = ReadSvg.of(Drawings.members(FAULTY).get(0));
        assertThat(members.groups("callout")).isNotEmpty();
        assertThat(members.lettered("label")).anyMatch(t -> t.endsWith("kN·m")).anyMatch(t -> t.endsWith(" kN"));
        assertThat(members.groups("moment-diagram")).hasSize(2);
        assertThat(members.groups("deflection-diagram")).hasSize(2);
    }
}
