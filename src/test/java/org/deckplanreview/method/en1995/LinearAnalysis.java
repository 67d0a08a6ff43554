package org.deckplanreview.method.en1995;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Member;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.loadpath.Effects.Peak;
import org.deckplanreview.loadpath.Effects.SpanEffects;
import org.deckplanreview.loadpath.Effects.SupportEffects;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.loadpath.MemberDiagrams;
import org.deckplanreview.measure.MeasureUnit;

/** Stated effects of each action, added up by the factors. */
public record LinearAnalysis(Member member, Map<Action, Share> shares) implements MemberAnalysis {

    @Override
    public Sheet weight() {
        Sheet sheet = Sheet.blank();
        sheet.given("g_m", 0, MeasureUnit.NEWTON_PER_MILLIMETRE, "weight of the member", "");
        return sheet;
    }

    @Override
    public List<ActionForces> carried() {
        return List.of();
    }

    @Override
    public double attachedWeightN() {
        return 0;
    }

    @Override
    public double attachedImposedN() {
        return 0;
    }

    /**
     * What one action does.
     *
     * @param spans of each: sagging and hogging moment N mm, deflection down and up mm
     * @param supports of each: shear, largest and smallest reaction N
     */
    public record Share(List<double[]> spans, List<double[]> supports, double totalN) {}

    public static LinearAnalysis of(Member member) {
        return new LinearAnalysis(member, new TreeMap<>());
    }

    public LinearAnalysis with(Action action, Share share) {
        shares.put(action, share);
        return this;
    }

    /**
     * Handbook formulas of a simple beam under uniform load w: wL2/8, wL/2, 5wL4/384EI + 1.2wL2/8GA.
     *
     * @param loadNPerMm w
     */
    public static Share uniform(double loadNPerMm, double spanMm, Section section, double e, double g) {
        double l = spanMm;
        double bending =
                5 * loadNPerMm * l * l * l * l / (384 * e * section.breadthMm() * cube(section.depthMm()) / 12);
        double shear = 1.2 * loadNPerMm * l * l / (8 * g * section.breadthMm() * section.depthMm());
        double half = loadNPerMm * l / 2;
        return new Share(
                List.of(new double[] {loadNPerMm * l * l / 8, 0, bending + shear, 0}),
                List.of(new double[] {half, half, half}, new double[] {half, half, half}),
                2 * half);
    }

    /** A force at mid-span, or beside the support for shear and reaction. */
    public static Share atMidSpan(double forceN, double spanMm) {
        double[] support = {forceN, forceN, 0};
        return new Share(List.of(new double[] {forceN * spanMm / 4, 0, 0, 0}), List.of(support, support), forceN);
    }

    private static double cube(double x) {
        return x * x * x;
    }

    @Override
    public Effects effects(ActionFactors f) {
        Map<Action, Double> factors = new TreeMap<>(Map.of(
                Action.PERMANENT, f.permanent(),
                Action.IMPOSED, f.imposed(),
                Action.CONCENTRATED, f.concentrated(),
                Action.SNOW, f.snow()));
        List<SpanEffects> spans = new ArrayList<>();
        for (int i = 0; i < member.spans().size(); i++) {
            double[] s = new double[4];
            for (Map.Entry<Action, Share> share : shares.entrySet()) {
                add(s, factors.get(share.getKey()), share.getValue().spans().get(i));
            }
            spans.add(new SpanEffects(new Peak(s[0], 0), new Peak(s[1], 0), new Peak(s[2], 0), new Peak(s[3], 0)));
        }
        List<SupportEffects> supports = new ArrayList<>();
        for (int i = 0; i < member.supports().size(); i++) {
            double[] s = new double[3];
            for (Map.Entry<Action, Share> share : shares.entrySet()) {
                add(s, factors.get(share.getKey()), share.getValue().supports().get(i));
            }
            supports.add(new SupportEffects(new Peak(s[0], 0), s[1], s[2]));
        }
        return new Effects(spans, supports);
    }

    private static void add(double[] sum, double factor, double[] share) {
        for (int k = 0; k < sum.length; k++) {
            sum[k] += factor * share[k];
        }
    }

    @Override
    public LiftForces lift(int support) {
        double permanent = smallest(Action.PERMANENT, support);
        return new LiftForces(
                Math.max(0, permanent),
                Math.min(0, permanent),
                Math.min(0, smallest(Action.IMPOSED, support)),
                Math.min(0, smallest(Action.CONCENTRATED, support)));
    }

    private double smallest(Action action, int support) {
        return shares.containsKey(action) ? shares.get(action).supports().get(support)[2] : 0;
    }

    @Override
    public MemberDiagrams diagrams(List<ActionFactors> alternatives) {
        throw new UnsupportedOperationException("Methods draw nothing");
    }

    @Override
    public ActionForces forces(int support) {
        throw new UnsupportedOperationException("Effects are stated, not the forces of single actions");
    }

    @Override
    public double totalN(Action action) {
        return shares.containsKey(action) ? shares.get(action).totalN() : 0;
    }
}
