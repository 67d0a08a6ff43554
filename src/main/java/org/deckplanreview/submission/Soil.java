package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Measure;

/**
 * The ground that carries the footings.
 *
 * @param bearingResistance kN/m2, allowable under service loads, as an investigation states it
 * @param treesNearby whether trees stand, or stood, within their zone of influence
 */
public record Soil(
        Optional<SoilClass> soilClass,
        Optional<VolumeChange> volumeChange,
        Optional<Measure> bearingResistance,
        Optional<Boolean> treesNearby) {}
