package org.deckplanreview.schedule;

import static org.deckplanreview.layout.Decks.line;

import org.deckplanreview.layout.Decks;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.Stating;

/** Decks for tests of the schedule. */
public final class ScheduledDecks {

    private ScheduledDecks() {}

    /** 900 above level ground; one post of 100 x 100 stands 600 deep in round concrete of 400, 900 deep, 50 above ground. */
    public static Decks withEmbeddedPost() {
        return Decks.rectangle(3000, 3000)
                .levelGround(0)
                .level(0, 0, 900)
                .noFall()
                .boards(1, 0)
                .joists(0, 1, 400)
                .post("A", 500, 500)
                .beam("B", 2, line(0, 500, 3000, 500), "A")
                .footing(Stating.a(Footing.class)
                        .with("id", "A")
                        .with("kind", FootingKind.EMBEDDED_POST)
                        .with("shape", FootingShape.ROUND)
                        .with("breadth", new Length(400))
                        .with("depth", new Length(900))
                        .with("embedment", new Length(600))
                        .with("topAboveGround", new Length(50))
                        .made());
    }
}
