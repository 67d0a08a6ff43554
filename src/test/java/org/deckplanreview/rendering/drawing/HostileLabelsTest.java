package org.deckplanreview.rendering.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

/** Labels come from strangers. */
class HostileLabelsTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "]]></text><script/>",
                "&amp;&#x3c;b&#x3e;",
                "=cmd|' /C calc'!A0",
                "\u05e9\u05dc\u05d5\u05dd \u0645\u0631\u062d\u0628\u0627",
                "\ud83c\udf33 \ufdfd \u4e00\u4e8c\u4e09",
                "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW"
            })
    void appear_as_text_alone(String label) {
        SampleDeck deck = SampleDeck.complete()
                .with("/reference", label)
                .with("/title", label)
                .with("/platforms/0/label", label)
                .with("/platforms/0/posts/0/label", label)
                .with("/platforms/0/footings/0/label", label)
                .with("/platforms/0/beams/0/label", label)
                .with("/platforms/0/edges/0/label", label)
                .with("/platforms/0/guards/0/label", label)
                .with("/site/walls/0/label", label)
                .withHeavyItem(
                        "SPA", "spa-bath", "9 kN", SampleDeck.points(2000, 1000, 4000, 1000, 4000, 3000, 2000, 3000))
                .with("/use/heavyItems/0/label", label);
        for (Drawing drawing : ReviewedDecks.drawings(ReviewedDecks.of(deck.bytes()))) {
            ReadSvg svg = ReadSvg.of(drawing);
            assertThat(svg.overlaps()).isEmpty();
            assertThat(svg.everything()).extracting(Element::getLocalName).doesNotContain("script", "b");

            assertThat(svg.all("text"))
                    .filteredOn(t -> !TextWidths.isKnown(t.getTextContent()))
                    .allMatch(t -> t.hasAttribute("textLength"));
            String whole = Lettering.plain(label);
            assertThat(svg.all("title")).anyMatch(t -> t.getTextContent().contains(whole));
        }
    }
}
