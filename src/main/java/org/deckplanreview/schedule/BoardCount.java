package org.deckplanreview.schedule;

import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.PlatformLayout;

/**
 * The boards of a platform.
 *
 * @param areaM2 of the outline
 */
public record BoardCount(Pointer pointer, String label, double areaM2, Derived<Laid> laid) {

    /**
     * Boards row by row.
     *
     * @param pieces boards from edge to edge of the outline
     * @param lengthMm of all pieces
     * @param crossings of a board with a joist
     * @param fixings of boards on joists
     */
    public record Laid(int rows, int pieces, double lengthMm, int crossings, int fixings) {}

    private static final double MM2_IN_M2 = 1e6;

    static BoardCount of(BoardField boards, PlatformLayout platform, Derived<BoardPieces> cut, SitePractice practice) {
        return new BoardCount(boards.pointer(), boards.label(), platform.areaMm2() / MM2_IN_M2, cut.map(p -> {
            int crossings = p.crossings(boards, platform.joists());
            return new Laid(
                    p.rows().size(),
                    p.pieces().size(),
                    p.pieces().stream().mapToDouble(BoardPieces.Piece::lengthMm).sum(),
                    crossings,
                    crossings * practice.fixingsPerCrossing());
        }));
    }
}
