package org.deckplanreview.submission;

import java.util.Optional;

/**
 * Preservative treatment, by use class or use category; a submission that was read has at least one of them.
 *
 * @param useClass of EN 335
 * @param useCategory of AWPA U1
 */
public record Treatment(
        Optional<UseClass> useClass,
        Optional<UseCategory> useCategory,
        Optional<Integer> serviceLifeYears,
        Optional<String> standard) {}
