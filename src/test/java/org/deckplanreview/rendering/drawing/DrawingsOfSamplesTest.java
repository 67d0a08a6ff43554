package org.deckplanreview.rendering.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.DocumentLoader;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.deckplanreview.rendering.ReviewedDecks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What holds for every drawing of every sample. */
class DrawingsOfSamplesTest {

    /** WCAG 2.2, success criterion 1.4.3. */
    private static final double LEAST_CONTRAST = 4.5;

    /** Capitals of 2.5 mm, ISO 3098-1, where they are 0.716 of the font's size (published metrics of Arial). */
    private static final double LEAST_SIZE_MM = 2.5 / 0.716;

    /** What SVG 1.1 calls static: nothing runs, loads or embeds. */
    private static final Set<String> ELEMENTS =
            new TreeSet<>(List.of("svg", "g", "path", "circle", "rect", "text", "title", "desc"));

    private static List<String> samples() {
        return ReviewedDecks.names();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void no_text_covers_another_and_none_is_left_out(String sample) {
        for (Drawing drawing : ReviewedDecks.drawings(ReviewedDecks.sample(sample))) {
            ReadSvg svg = ReadSvg.of(drawing);
            assertThat(svg.overlaps()).as(drawing.name()).isEmpty();
            assertThat(svg.lettered()).as(drawing.name()).noneMatch(t -> t.contains("lack of room"));
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void all_text_is_large_enough_and_on_the_sheet(String sample) {
        for (Drawing drawing : ReviewedDecks.drawings(ReviewedDecks.sample(sample))) {
            ReadSvg svg = ReadSvg.of(drawing);
            String[] view = svg.root().getAttribute("viewBox").split(" ");
            Box sheet = Box.upright(0, 0, Double.parseDouble(view[2]), Double.parseDouble(view[3]));
            assertThat(svg.boxes()).isNotEmpty().allMatch(b -> b.within(sheet));
            assertThat(svg.all("text")).allMatch(t -> ReadSvg.number(t, "font-size") >= LEAST_SIZE_MM);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void drawings_are_static_accessible_and_can_stand_in_one_page(String sample) {
        List<String> ids = new ArrayList<>();
        for (Drawing drawing : ReviewedDecks.drawings(ReviewedDecks.sample(sample))) {
            ReadSvg svg = ReadSvg.of(drawing);
            assertThat(svg.everything()).extracting(Element::getLocalName).allMatch(ELEMENTS::contains);
            assertThat(svg.everything())
                    .allMatch(e -> !e.hasAttribute("href") && !e.hasAttribute("style") && !e.hasAttribute("onload"));
            assertThat(svg.root().getAttribute("role")).isEqualTo("img");
            for (String id : svg.root().getAttribute("aria-labelledby").split(" ")) {
                assertThat(svg.everything())
                        .filteredOn(e -> e.getAttribute("id").equals(id))
                        .singleElement()
                        .satisfies(e -> assertThat(e.getTextContent()).isNotBlank());
            }
            svg.everything().stream()
                    .map(e -> e.getAttribute("id"))
                    .filter(i -> !i.isEmpty())
                    .forEach(ids::add);
        }
        assertThat(ids).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void text_stands_out_from_what_it_stands_on(String sample) {
        for (Drawing drawing : ReviewedDecks.drawings(ReviewedDecks.sample(sample))) {
            for (Element text : ReadSvg.of(drawing).all("text")) {
                String ink = text.hasAttribute("fill") ? text.getAttribute("fill") : Colour.INK;
                boolean onDark = ink.equals(Colour.PAPER);
                assertThat(contrast(ink, onDark ? Colour.FAILING : Colour.SHADE))
                        .as(text.getTextContent())
                        .isGreaterThanOrEqualTo(LEAST_CONTRAST);
            }
        }
    }

    /** WCAG 2.2, relative luminance and contrast ratio. */
    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        double[] rgb = new double[3];
        for (int i = 0; i < rgb.length; i++) {
            double c = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            rgb[i] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_same_deck_gives_the_same_bytes(String sample) {
        assertThat(ReviewedDecks.drawings(ReviewedDecks.sample(sample)))
                .isEqualTo(ReviewedDecks.drawings(ReviewedDecks.of(ReviewedDecks.bytes(sample))));
    }

    /** The renderer that turns the drawings into parts of a PDF. */
    @ParameterizedTest
    @MethodSource("samples")
    void another_renderer_draws_them_too(String sample) throws IOException {
        for (Drawing drawing : ReviewedDecks.drawings(ReviewedDecks.sample(sample))) {
            UserAgentAdapter agent = new UserAgentAdapter();
            BridgeContext context = new BridgeContext(agent, new DocumentLoader(agent));
            var document =
                    new SAXSVGDocumentFactory(null).createDocument("urn:drawing", new StringReader(drawing.svg()));
            assertThat(new GVTBuilder().build(context, document).getBounds().getWidth())
                    .isGreaterThan(200);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_title_block_tells_where_the_drawing_comes_from_and_what_it_is_not(String sample) {
        DrawnDeck deck = ReviewedDecks.sample(sample);
        String digest = deck.report().digest();
        for (Drawing drawing : ReviewedDecks.drawings(deck)) {
            List<String> block = ReadSvg.of(drawing).lettered("title-block");
            assertThat(block)
                    .contains(
                            "Reference: " + deck.report().reference(),
                            "Report: " + digest.substring(0, "sha256:".length() + 12),
                            "Outcome: " + deck.report().outcome().word(),
                            Sheet.CAPTION)
                    .anyMatch(t -> t.startsWith("Edition: ")
                            && t.endsWith(" " + deck.report().edition().edition()));
        }
    }
}
