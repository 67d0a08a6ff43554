package org.deckplanreview.submission;

import java.util.Optional;

/**
 * Preservative treatment.
 */
public record Treatment(UseClass useClass, Optional<Integer> serviceLifeYears, Optional<String> standard) {}
