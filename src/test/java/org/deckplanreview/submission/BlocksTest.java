package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Blocks under joists: each fault once, and at its limit none. */
class BlocksTest {

    private static String block(String id, String at) {
        return "{\"id\": \"" + id + "\", \"kind\": \"block\", \"shape\": \"rectangular\", \"breadth\": 280" + at + "}";
    }

    private static SampleDeck deck(String... blocks) {
        SampleDeck deck = SampleDeck.complete();
        for (String block : blocks) {
            deck.withJson("/platforms/0/footings/-", block);
        }
        return deck;
    }

    private static List<String> details(SampleDeck deck) {
        return SampleDeck.faults(deck.read()).stream().map(Fault::detail).toList();
    }

    @Test
    void a_block_has_a_place() {
        assertThat(details(deck(block("B1", "")))).containsExactly("The block has no place");
        assertThat(deck(block("B1", ", \"at\": [2000, 1800]")).read()).isInstanceOf(ReadResult.Read.class);
    }

    @Test
    void two_blocks_do_not_stand_in_each_other() {
        String one = block("B1", ", \"at\": [2000, 1800]");
        assertThat(details(deck(one, block("B2", ", \"at\": [2269, 1800]"))))
                .containsExactly("The block stands in the block 'B1'");
        assertThat(deck(one, block("B2", ", \"at\": [2280, 1800]")).read()).isInstanceOf(ReadResult.Read.class);
    }

    @Test
    void no_post_stands_on_a_block() {
        SampleDeck deck = deck(block("B1", ", \"at\": [2000, 1800]")).with("/platforms/0/posts/0/footing", "B1");
        assertThat(details(deck)).containsExactly("The post stands on a block, which carries joists");
    }

    @Test
    void a_block_does_not_stand_in_a_wall() {
        assertThat(details(deck(block("B1", ", \"at\": [2000, 3560]"))))
                .singleElement()
                .asString()
                .contains("passes through the block");
    }
}
