package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.api.Test;

/** UK National Annex to EN 1991-1-1, Tables NA.2 and NA.3 (recalled): 2.5 kN/m2 on a deck from which people can fall. */
class LoadOfTheWholeDeckTest {

    private static List<String> imposed(double gapMm) {
        return BuiltIn.assess(SampleDeck.complete()
                        .with("/platforms/0/level/z", 500)
                        .without("/platforms/0/fall")
                        .without("/use/imposedLoad")
                        .withJson("/site/groundLevels", "[{\"x\": 0, \"y\": 0, \"z\": 0}]")
                        .withJson("/platforms/-", """
                                {"id": "high", "label": "the high part", "level": {"at": [9000, 0], "z": 601},
                                 "outline": [[%1$s, 0], [9000, 0], [9000, 3600], [%1$s, 3600]]}
                                """.formatted(4800 + gapMm))
                        .submission())
                .assumptions()
                .stream()
                .filter(a -> a.startsWith("Imposed load on"))
                .toList();
    }

    @Test
    void a_low_platform_beside_a_high_one_takes_the_load_of_the_high_one() {
        assertThat(imposed(0)).hasSize(2).allMatch(a -> a.contains(": 2.5 kN/m²"));
    }

    @Test
    void a_low_platform_apart_from_a_high_one_keeps_its_own_load() {
        assertThat(imposed(301)).anyMatch(a -> a.contains(": 2 kN/m²")).anyMatch(a -> a.contains(": 2.5 kN/m²"));
    }
}
