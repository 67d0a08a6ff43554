package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * The strings that carry a stair.
 *
 * @param throatDepth of what a cut string has left square to its slope
 * @param headResistance kN, design resistance of the fixing of one string at its head
 */
public record Strings(String timber, int count, Optional<Length> throatDepth, Optional<Measure> headResistance) {}
