package org.deckplanreview.rendering.drawing;

import java.util.List;

/** Drawings of a reviewed deck. The same deck gives the same bytes. */
public final class Drawings {

    private Drawings() {}

    /** All sheets of one kind, at least one. */
    public static List<Drawing> of(DrawingKind kind, DrawnDeck deck) {
        return switch (kind) {
            case PLAN -> plan(deck);
            case SECTION -> section(deck);
            case MEMBERS -> members(deck);
        };
    }

    /** One sheet with all platforms. */
    public static List<Drawing> plan(DrawnDeck deck) {
        return List.of(PlanDrawing.draw(deck));
    }

    /** One sheet for each platform. */
    public static List<Drawing> section(DrawnDeck deck) {
        return deck.layout().platforms().stream()
                .map(p -> SectionDrawing.draw(deck, p))
                .toList();
    }

    /** Two members in bending to a sheet: of joists that are alike the worst one, and each beam. */
    public static List<Drawing> members(DrawnDeck deck) {
        return MemberDrawing.draw(deck);
    }
}
