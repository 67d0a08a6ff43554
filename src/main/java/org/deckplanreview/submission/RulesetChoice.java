package org.deckplanreview.submission;

import java.util.Optional;

/**
 * The region whose rules apply, and the edition where the designer asks for one by name.
 */
public record RulesetChoice(String region, Optional<String> edition) {}
