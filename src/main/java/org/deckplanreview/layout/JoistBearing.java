package org.deckplanreview.layout;

/**
 * A joist that sits on a beam.
 *
 * @param joist index in the platform's joists
 * @param joistSupport index in that joist's supports
 * @param atMm along the beam
 */
public record JoistBearing(int joist, int joistSupport, double atMm) {}
