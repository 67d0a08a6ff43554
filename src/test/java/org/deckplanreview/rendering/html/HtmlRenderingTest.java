package org.deckplanreview.rendering.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.report.FindingBuilder.finding;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.report.ReportBuilder;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.schedule.SiteSchedule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class HtmlRenderingTest {
    private static final int LONGEST = 80;

    static List<String> samples() {
        return ReviewedDecks.names();
    }

    private static String html(DrawnDeck deck) {
        return HtmlRendering.render(deck, Form.SCREEN);
    }

    /** The platform's own parser is the judge of what is well-formed. */
    private static Document parsed(String html) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private static List<Element> elements(Document page, String name) {
        NodeList found = page.getElementsByTagNameNS("*", name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static DrawnDeck invented(String reference) {
        DrawnDeck drawn = ReviewedDecks.sample("first-sketch");
        return new DrawnDeck(
                drawn.layout(),
                drawn.loadPath(),
                ReportBuilder.report(reference, finding("a").doesNotComply()));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_sample_is_well_formed_for_screen_and_paper(String sample) {
        DrawnDeck deck = ReviewedDecks.sample(sample);

        assertThat(parsed(html(deck)).getDocumentElement().getAttribute("lang")).isEqualTo("en-GB");
        assertThat(elements(parsed(HtmlRendering.render(deck, Form.PAPER)), "math"))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_finding_has_its_determination_sentence_and_source(String sample) {
        DrawnDeck deck = ReviewedDecks.sample(sample);
        String page = parsed(html(deck)).getDocumentElement().getTextContent();

        assertThat(deck.report().findings())
                .allSatisfy(f ->
                        assertThat(page).contains(f.title() + ": " + f.subject().label()));
        assertThat(shown(deck))
                .allSatisfy(f -> assertThat(page)
                        .contains(
                                f.determination().word(),
                                f.sentence(),
                                f.citation().source().title()));
    }

    private static Stream<ReportedFinding> shown(DrawnDeck deck) {
        return deck.report().findings().stream().filter(f -> f.determination() != Determination.NOT_APPLICABLE);
    }

    /** Numbers on drawings call findings by their place in the report. */
    @Test
    void a_finding_is_found_by_its_number() {
        DrawnDeck deck = ReviewedDecks.sample("many-faults");
        Document page = parsed(html(deck));

        List<String> ids = elements(page, "details").stream()
                .map(d -> d.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertThat(ids)
                .doesNotHaveDuplicates()
                .hasSize((int) shown(deck).count())
                .contains("finding-1");
        assertThat(elements(page, "details").get(0).getTextContent())
                .contains(deck.report().findings().get(0).title());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_page_stands_alone(String sample) {
        String html = html(ReviewedDecks.sample(sample));
        Document page = parsed(html);

        assertThat(elements(page, "script")).isEmpty();
        assertThat(elements(page, "link")).isEmpty();
        assertThat(elements(page, "a"))
                .isNotEmpty()
                .allSatisfy(a -> assertThat(a.getAttribute("href")).startsWith("#"));
        assertThat(html).doesNotContain(" src=", "url(http", "@import", "javascript:");
    }

    /** Headings, landmarks, captions and headers of tables as WCAG 2.2 techniques H42, ARIA11, H39 and H63 ask. */
    @ParameterizedTest
    @MethodSource("samples")
    void a_screen_reader_finds_its_way(String sample) {
        Document page = parsed(html(ReviewedDecks.sample(sample)));

        assertThat(elements(page, "h1")).hasSize(1);
        assertThat(elements(page, "main")).hasSize(1);
        assertThat(elements(page, "table"))
                .isNotEmpty()
                .allSatisfy(t -> assertThat(t.getElementsByTagName("caption").getLength())
                        .isEqualTo(1));
        assertThat(elements(page, "th"))
                .allSatisfy(th -> assertThat(th.getAttribute("scope")).isIn("col", "row"));
        assertThat(elements(page, "a"))
                .allSatisfy(a ->
                        assertThat(ids(page)).contains(a.getAttribute("href").substring(1)));
        assertThat(ids(page)).doesNotHaveDuplicates();
    }

    private static List<String> ids(Document page) {
        return elements(page, "*").stream()
                .map(e -> e.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"small-level-deck", "sloping-garden-deck", "l-shaped-deck"})
    void every_length_of_the_schedule_is_there_in_whole_mm(String sample) {
        DrawnDeck deck = ReviewedDecks.sample(sample);
        List<String> cells = elements(parsed(html(deck)), "td").stream()
                .map(Element::getTextContent)
                .toList();

        assertThat(lengthsMm(deck.report().schedule().orElseThrow()))
                .isNotEmpty()
                .allSatisfy(mm -> assertThat(cells).contains(whole(mm)));
    }

    private static List<Double> lengthsMm(SiteSchedule schedule) {
        List<Double> all = new ArrayList<>();
        schedule.platforms().forEach(p -> {
            p.posts().forEach(post -> {
                all.add(post.alongMm());
                all.add(post.offsetMm());
                Stream.of(post.lengthMm(), post.bottomLevelMm(), post.topLevelMm())
                        .map(Derived::get)
                        .forEach(all::add);
            });
            p.beamTops()
                    .forEach(b -> b.levels().forEach(at -> all.add(at.levelMm().get())));
        });
        schedule.timber().forEach(t -> {
            t.pieces().forEach(piece -> all.add(piece.lengthMm()));
            t.stock().forEach(s -> all.add(s.lengthMm()));
        });
        return all;
    }

    private static String whole(double mm) {
        return BigDecimal.valueOf(mm).setScale(0, RoundingMode.HALF_EVEN).toPlainString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "]]><img src=x onerror=alert(1)>",
                "\"quoted\" & 'apostrophe' &amp; &#60;",
                "=HYPERLINK(\"a\")",
                "{page.report} {#if true} {|",
                "--><style>*{display:none}</style>"
            })
    void a_hostile_label_is_only_text(String label) {
        DrawnDeck deck = ReviewedDecks.sample("many-faults", submission -> {
            submission.put("reference", label).put("title", label);
            ((ObjectNode) submission.at("/platforms/0")).put("label", label);
        });
        for (Form form : Form.values()) {
            Document page = parsed(HtmlRendering.render(deck, form));

            assertThat(elements(page, "script")).isEmpty();
            assertThat(elements(page, "img")).isEmpty();
            assertThat(elements(page, "style")).hasSize(1);
            assertThat(elements(page, "h1").get(0).getTextContent()).isEqualTo("Deck plan review: " + label);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u202e", "\u0000", "\u001b", "\ufffe", "\ud800", "\u200f"})
    void a_character_that_turns_or_breaks_the_page_is_shown_by_its_number(String hostile) {
        String number = String.format(Locale.ROOT, "[U+%04X]", (int) hostile.charAt(0));

        Document page = parsed(html(invented("a" + hostile + "b")));

        assertThat(elements(page, "h1").get(0).getTextContent()).isEqualTo("Deck plan review: a" + number + "b");
    }

    @Test
    void a_label_of_the_greatest_length_is_there_whole() {
        String label = "M".repeat(LONGEST);

        assertThat(html(ReviewedDecks.sample("small-level-deck", s -> s.put("title", label))))
                .contains("<p class=\"subtitle\">" + label + "</p>");
    }

    @Test
    void a_working_is_mathematics_that_opens_on_demand() {
        Document page = parsed(html(ReviewedDecks.sample("small-level-deck")));

        assertThat(elements(page, "summary"))
                .anySatisfy(s -> assertThat(s.getTextContent()).startsWith("Working of finding "));
        assertThat(elements(page, "mfrac")).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource(Form.class)
    void the_same_deck_gives_the_same_page_in_another_place(Form form) {
        DrawnDeck deck = ReviewedDecks.sample("small-level-deck");
        String here = HtmlRendering.render(deck, form);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));

            assertThat(HtmlRendering.render(deck, form)).isEqualTo(here);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
