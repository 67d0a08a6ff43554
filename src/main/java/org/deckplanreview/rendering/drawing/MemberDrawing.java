package org.deckplanreview.rendering.drawing;

import java.util.List;

final class MemberDrawing {
    static List<Drawing> draw(DrawnDeck d) {
        return List.of();
    }
}
