package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * Boards that are not of sawn timber, by what their maker states of them.
 *
 * @param joistSpacing the largest, centre to centre, under boards square to the joists
 * @param diagonalJoistSpacing likewise under boards at 45 degrees to the joists
 * @param load uniform load in use that they carry at these spacings, kN/m2
 * @param concentratedLoad likewise on one board, kN
 * @param weight of the decking, kN/m2
 * @param labelledTo the standard that the maker's label on them names
 */
public record ManufacturedBoards(
        Optional<Length> joistSpacing,
        Optional<Length> diagonalJoistSpacing,
        Optional<Measure> load,
        Optional<Measure> concentratedLoad,
        Optional<Measure> weight,
        Optional<BoardLabel> labelledTo) {}
