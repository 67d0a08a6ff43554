package org.deckplanreview.layout;

import java.util.Optional;

/**
 * Part of a joist's tributary area: between two places along the joist its width varies linearly.
 *
 * @param fromMm along the joist
 * @param toMm along the joist; equal to fromMm where area beyond the joist's end is carried at its end
 * @param widthFromMm tributary width at fromMm
 * @param widthToMm tributary width at toMm
 * @param areaMm2 area of the strip; where fromMm equals toMm this alone counts
 * @param heavyItem index of the heavy item that stands on it, or empty for the deck's own area
 */
public record AreaStrip(
        double fromMm, double toMm, double widthFromMm, double widthToMm, double areaMm2, Optional<Integer> heavyItem) {

    /** The part of its area between two places along the joist, the first of which still belongs to it. */
    double areaMm2(double from, double to) {
        double length = toMm - fromMm;
        if (length == 0) {
            return from <= fromMm && fromMm < to ? areaMm2 : 0;
        }
        double start = Math.max(from, fromMm);
        double end = Math.min(to, toMm);
        if (end <= start) {
            return 0;
        }
        double middle = ((start + end) / 2 - fromMm) / length;
        return (end - start) * (widthFromMm + middle * (widthToMm - widthFromMm));
    }
}
