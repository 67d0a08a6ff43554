package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * What the planning authority asks about the site.
 *
 * @param protectedArea conservation area, national park or the like
 * @param beyondPrincipalElevation whether the deck lies forward of the building's principal elevation
 * @param gardenCovered %, of the garden, by all additions with the deck
 * @param boundaryDistance to the nearest boundary
 */
public record Planning(
        Optional<BuildingKind> building,
        Optional<Boolean> listed,
        Optional<Boolean> protectedArea,
        Optional<Boolean> beyondPrincipalElevation,
        Optional<Measure> gardenCovered,
        Optional<Length> boundaryDistance) {}
