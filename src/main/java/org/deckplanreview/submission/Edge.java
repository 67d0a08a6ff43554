package org.deckplanreview.submission;

import java.util.Optional;

/**
 * A stretch of the outline, and what lies beside it.
 *
 * @param guard id of the guard along it
 */
public record Edge(Optional<String> label, PlanLine line, EdgeKind kind, Optional<String> guard) {}
