package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * The decking.
 *
 * @param timber their stock; of manufactured boards only its section counts
 * @param direction along the boards
 * @param gap between boards, side by side
 * @param manufactured of boards that are not of sawn timber
 */
public record Boards(
        String timber,
        Direction direction,
        Optional<Length> gap,
        Optional<BoardProfile> profile,
        Optional<ManufacturedBoards> manufactured) {}
