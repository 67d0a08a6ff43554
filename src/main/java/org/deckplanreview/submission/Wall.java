package org.deckplanreview.submission;

import java.util.Optional;

/**
 * A face of an existing building, in plan.
 */
public record Wall(String id, Optional<String> label, PlanLine line) {}
