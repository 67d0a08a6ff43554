package org.deckplanreview.report;

import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;

/**
 * What was found.
 *
 * @param value empty where it could not be found
 * @param unit of a number
 */
public record Found(String quantity, Optional<ShownValue> value, Optional<MeasureUnit> unit) {}
