package org.deckplanreview.report;

import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;

/**
 * What was found.
 *
 * @param value empty where it could not be found
 * @param unit of a number
 * @param text for people, where that is not the number with its unit: feet and inches
 */
public record Found(String quantity, Optional<ShownValue> value, Optional<MeasureUnit> unit, Optional<String> text) {}
