package org.deckplanreview.generator;

import java.nio.charset.StandardCharsets;

/**
 * Submissions of invented decks, from a landing of one square metre to a terrace of two hundred, drawn with more or less
 * care. Each follows from the seed and its own number alone.
 */
public final class DeckGenerator {

    private final long seed;

    public DeckGenerator(long seed) {
        this.seed = seed;
    }

    /**
     * One submission as JSON on one line, without a line end, in UTF-8.
     *
     * @param number from 0
     */
    public byte[] deck(long number) {
        Chance chance = Chance.of(seed, number);
        Practice practice = chance.in(0.5) ? Practice.BRITISH : Practice.AMERICAN;
        Hand hand = new Hand(practice, chance.oneOf(Care.ALL), chance, new Sheet(practice.units()));
        return new DrawnDeck("G-" + number, hand).json().toString().getBytes(StandardCharsets.UTF_8);
    }
}
