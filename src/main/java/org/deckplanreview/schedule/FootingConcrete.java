package org.deckplanreview.schedule;

import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FootingPlace;

/** @param volumeM3 of a footing's concrete, less the embedded part of the post; nothing of a block, which is precast */
public record FootingConcrete(Pointer pointer, String label, Derived<Double> volumeM3) {

    private static final double MM3_IN_M3 = 1e9;

    static FootingConcrete of(FootingPlace footing) {
        return new FootingConcrete(
                footing.pointer(),
                footing.label(),
                footing.isBlock()
                        ? Derived.known(0.0)
                        : footing.concreteVolumeMm3().map(v -> v / MM3_IN_M3));
    }
}
