package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.layout.AreaStrip;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.loadpath.BeamLoad.Distributed;
import org.deckplanreview.loadpath.BeamLoad.Point;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.LoadNature;
import org.deckplanreview.submission.PlanPoint;

/** What lies on a joist. */
final class JoistActions {

    private JoistActions() {}

    /**
     * Loads on the deck's area.
     *
     * @param permanentNPerMm2 boards and finishes
     */
    record AreaLoads(double permanentNPerMm2, double imposedNPerMm2, double snowNPerMm2) {}

    /** Loads on one member that follow its line. */
    record OwnLoads(double selfWeightNPerMm, double concentratedN) {}

    static MemberActions of(
            JoistLine joist,
            AreaLoads area,
            OwnLoads own,
            List<HeavyItem> heavyItems,
            Attached attached,
            Sharing sharing) {
        List<BeamLoad> permanent = new ArrayList<>();
        List<BeamLoad> imposed = new ArrayList<>();
        List<BeamLoad> snow = new ArrayList<>();
        permanent.add(Distributed.uniform(0, joist.lengthMm(), own.selfWeightNPerMm()));
        for (AreaStrip strip : joist.strips()) {
            if (strip.heavyItem().isPresent()) {
                HeavyItem item = heavyItems.get(strip.heavyItem().get());
                List<BeamLoad> where = item.nature() == LoadNature.PERMANENT ? permanent : imposed;
                where.add(load(joist, strip, pressureNPerMm2(item)));
            } else {
                permanent.add(load(joist, strip, area.permanentNPerMm2()));
                imposed.add(load(joist, strip, area.imposedNPerMm2()));
                snow.add(load(joist, strip, area.snowNPerMm2()));
            }
        }
        List<List<BeamLoad>> parts = MemberActions.bySpan(joist, imposed);
        parts.addAll(attached.imposedParts(joist));
        imposed.addAll(attached.imposed());
        return new MemberActions(
                permanent,
                List.of(),
                attached.weight(),
                attached.weightParts(joist),
                imposed,
                parts,
                own.concentratedN(),
                sharing,
                attached.concentrated(),
                snow);
    }

    private static BeamLoad load(JoistLine joist, AreaStrip strip, double pressureNPerMm2) {
        double from = Frame.onMember(strip.fromMm(), joist);
        double to = Frame.onMember(strip.toMm(), joist);
        return to > from
                ? new Distributed(from, to, strip.widthFromMm() * pressureNPerMm2, strip.widthToMm() * pressureNPerMm2)
                : new Point(from, strip.areaMm2() * pressureNPerMm2);
    }

    private static double pressureNPerMm2(HeavyItem item) {
        return item.weight().in(MeasureUnit.NEWTON_) / areaMm2(item.outline());
    }

    /** The surveyor's (shoelace) formula. */
    private static double areaMm2(List<PlanPoint> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            PlanPoint a = outline.get(i);
            PlanPoint b = outline.get((i + 1) % outline.size());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        return Math.abs(twice) / 2;
    }
}
