package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A beam of 4800 over posts of 100 at 100, 2400 and 4700, and joists of 47. */
class BeamPiecesTest {

    private static final double EXACT = 1e-9;

    private static Layout deck(double... joints) {
        Decks deck = Decks.rectangle(4800, 3000)
                .joists(0, 1, 400)
                .beam("a", 2, line(0, 200, 4800, 200), "p", "q", "r")
                .beam("c", 2, line(0, 2800, 4800, 2800))
                .post("p", 100, 200)
                .post("q", 2400, 200)
                .post("r", 4700, 200);
        return deck.joints("a", joints).layout();
    }

    private static List<BeamLine> pieces(Layout deck) {
        return deck.platforms().get(0).beams().stream()
                .filter(b -> b.id().equals("a"))
                .toList();
    }

    @Test
    void a_beam_without_joints_is_one_piece() {
        assertThat(pieces(deck()))
                .singleElement()
                .satisfies(b -> assertThat(b.supports()).hasSize(3));
    }

    @Test
    void pieces_that_meet_over_a_post_span_by_themselves_with_a_bearing_each() {
        List<BeamLine> pieces = pieces(deck(2400));
        assertThat(pieces).hasSize(2);
        assertThat(pieces).allSatisfy(b -> {
            assertThat(b.lengthMm()).isCloseTo(2400, within(EXACT));
            assertThat(b.supports()).hasSize(2);
            assertThat(b.spans().stream().filter(s -> !s.isCantilever())).singleElement();
        });
        assertThat(pieces.get(0).supports().get(1).contactLengthMm()).hasValueCloseTo(50.0, within(EXACT));
        assertThat(pieces.get(1).supports().get(0).contactLengthMm()).hasValueCloseTo(50.0, within(EXACT));
        assertThat(pieces.get(0).joists().size() + pieces.get(1).joists().size())
                .isEqualTo(13);
        assertThat(contact(deck(2400), 0)).isEmpty();
        assertThat(contact(deck(2400), 1)).isEmpty();
    }

    @Test
    void a_piece_that_ends_1_mm_short_of_the_post_has_one_post_alone() {
        assertThat(contact(deck(2351), 0)).isEmpty();
        assertThat(contact(deck(2350), 0))
                .hasValueSatisfying(m -> assertThat(m.kind()).isEqualTo(Miss.Kind.ALONE));
        assertThat(contact(deck(2349), 0))
                .hasValueSatisfying(m -> assertThat(m.kind()).isEqualTo(Miss.Kind.ALONE));
        assertThat(contact(deck(1200), 0))
                .hasValueSatisfying(m -> assertThat(m.label()).isEqualTo("post p"));
    }

    private static Optional<Miss> contact(Layout deck, int piece) {
        BeamLine line = pieces(deck).get(piece);
        return SupportContact.of(deck, line).ofBeam(line);
    }
}
