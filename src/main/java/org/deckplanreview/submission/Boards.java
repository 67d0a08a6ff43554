package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * The decking.
 *
 * @param direction along the boards
 * @param gap between boards, side by side
 */
public record Boards(String timber, Direction direction, Optional<Length> gap, Optional<BoardProfile> profile) {}
