package org.deckplanreview.layout;

import org.deckplanreview.kernel.Derived;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.PlanPoint;

/** How joists and the blocks that they lie on meet in height. */
public final class GapOverBlock {

    private GapOverBlock() {}

    /**
     * The joists' underside above the top of the block, at its middle, mm; negative where the block reaches into them.
     * Missing where levels, ground or the block's height are not given.
     */
    public static Derived<Double> gapMm(Layout layout, FootingPlace block) {
        PlatformLayout platform = layout.platformOf(block);
        Derived<Plane> underside = DeckLevels.of(layout.submission(), platform.platform(), platform.pointer())
                .joistsUnderside();
        Derived<PlanPoint> at = Derived.of(
                block.footing().at(), block.pointer().child("at"), "the place of " + block.label() + " in plan");
        Derived<Double> top = Derived.of(
                        block.footing().topAboveGround(),
                        block.pointer().child("topAboveGround"),
                        "the height of the top of " + block.label() + " above the ground, a length")
                .map(Length::mm)
                .with(block.groundLevelMm(), Double::sum);
        return underside.with(at, Plane::levelMm).with(top, (joists, blockTop) -> joists - blockTop);
    }
}
