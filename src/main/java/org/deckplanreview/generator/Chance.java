package org.deckplanreview.generator;

import java.util.List;
import java.util.Random;

/** Choices that follow from a seed: {@link Random}'s formula is part of the Java platform's specification. */
final class Chance {

    private final Random random;

    private Chance(Random random) {
        this.random = random;
    }

    /** Choices for one deck of a series; neighbouring numbers have nothing in common. */
    static Chance of(long seed, long number) {
        Random series = new Random(seed);
        return new Chance(new Random(series.nextLong() ^ new Random(number).nextLong()));
    }

    /** True in this part of all cases, 0 to 1. */
    boolean in(double part) {
        return random.nextDouble() < part;
    }

    double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** As likely in each decade: as many small ones as large ones. */
    double evenlyByRatio(double least, double most) {
        return StrictMath.exp(between(StrictMath.log(least), StrictMath.log(most)));
    }

    int whole(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    <T> T oneOf(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
