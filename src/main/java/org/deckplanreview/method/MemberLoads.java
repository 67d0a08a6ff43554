package org.deckplanreview.method;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.AreaStrip;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.UnitSystem;

/**
 * With what the working of a joist or beam begins: what lies on the deck, what of it the member carries, the combination and the
 * spans, from which elastic statics give moments, shear forces, reactions and deflections.
 *
 * @param factors of the combination
 * @param combined where the factors come from
 */
public record MemberLoads(
        Member member, MemberAnalysis analysis, ReviewContext context, ActionFactors factors, String combined) {

    /** By which actions the combination has. */
    private enum Combined {
        PERMANENT("φ_G * g_k", ""),
        IMPOSED("(φ_G * g_k + φ_Q * q_k)", " + φ_Q * R_Q"),
        SNOW("(φ_G * g_k + φ_S * s_k)", " + φ_S * R_S"),
        BOTH("(φ_G * g_k + φ_Q * q_k + φ_S * s_k)", " + φ_Q * R_Q + φ_S * R_S");

        private final Formula onJoist;
        private final Formula onBeam;

        Combined(String onArea, String ofJoists) {
            onJoist = Formula.of("p_d = " + onArea + " * t + φ_G * g_m", NEWTON_PER_MILLIMETRE, "");
            onBeam = Formula.of("F_d = φ_G * (R_G + g_m * L_m)" + ofJoists, NEWTON_, "");
        }

        static Combined of(boolean imposed, boolean snow) {
            if (imposed) {
                return snow ? BOTH : IMPOSED;
            }
            return snow ? SNOW : PERMANENT;
        }
    }

    private static final Formula ATTACHED = Formula.of("F_a = φ_G * G_a + φ_Q * Q_a", NEWTON_, "");
    private static final Formula ATTACHED_WEIGHT = Formula.of("F_a = φ_G * G_a", NEWTON_, "");
    private static final Formula CONCENTRATED = Formula.of("P_d = φ_C * P_k", NEWTON_, "");

    /** The calculation in the units of a system; empty where what lies on the deck is not known in full. */
    public Sheet sheet(UnitSystem units) {
        Sheet sheet = context.loadPath()
                .areaLoads(member.platformIndex())
                .optional()
                .map(area -> Sheet.on(area, analysis.weight()))
                .orElseGet(() -> Sheet.on(analysis.weight()));
        enterFactors(sheet);
        if (member instanceof JoistLine joist) {
            joist(sheet, joist);
        } else {
            beam(sheet, (BeamLine) member);
        }
        if (analysis.attachedWeightN() != 0 || analysis.attachedImposedN() != 0) {
            attached(sheet);
        }
        if (factors.concentrated() != 0) {
            sheet.given(
                    "P_k",
                    analysis.totalN(Action.CONCENTRATED),
                    NEWTON_,
                    "concentrated load, wherever on the member it is worst",
                    "",
                    Pointer.of("/use"));
            sheet.calculate(CONCENTRATED);
        }
        enterSpans(sheet);
        return sheet.in(units);
    }

    private void enterFactors(Sheet sheet) {
        enterFactor(sheet, "φ_G", factors.permanent(), "permanent load");
        if (hasImposed()) {
            enterFactor(sheet, "φ_Q", factors.imposed(), "imposed load");
        }
        if (hasSnow()) {
            enterFactor(sheet, "φ_S", factors.snow(), "snow");
        }
        if (factors.concentrated() != 0) {
            enterFactor(sheet, "φ_C", factors.concentrated(), "concentrated load");
        }
    }

    private void enterFactor(Sheet sheet, String symbol, double factor, String of) {
        sheet.given(symbol, factor, RATIO, () -> "factor of the " + of, combined);
    }

    private boolean hasImposed() {
        return factors.imposed() != 0;
    }

    private Combined together() {
        return Combined.of(hasImposed(), hasSnow());
    }

    private boolean hasSnow() {
        return factors.snow() != 0 && analysis.totalN(Action.SNOW) != 0;
    }

    private void joist(Sheet sheet, JoistLine joist) {
        double widthMm = joist.strips().stream()
                .filter(s -> s.heavyItem().isEmpty())
                .mapToDouble(s -> Math.max(s.widthFromMm(), s.widthToMm()))
                .max()
                .orElse(0);
        sheet.given("t", widthMm, MILLIMETRE, "tributary width where it is largest", "", joist.pointer());
        enterHeavyItems(sheet, joist);
        if (context.loadPath().areaLoads(joist.platformIndex()).isKnown()) {
            sheet.calculate(together().onJoist);
        }
    }

    private void enterHeavyItems(Sheet sheet, JoistLine joist) {
        List<Integer> items = joist.strips().stream()
                .map(AreaStrip::heavyItem)
                .flatMap(Optional::stream)
                .distinct()
                .sorted()
                .toList();
        for (int item : items) {
            sheet.given(
                    "W_" + (item + 1),
                    context.submission().use().heavyItems().get(item).weight().in(NEWTON_),
                    NEWTON_,
                    "heavy item, of which the joist carries what stands on its width",
                    "",
                    Pointer.of("/use/heavyItems").child(item));
        }
    }

    private void beam(Sheet sheet, BeamLine beam) {
        List<ActionForces> reactions = analysis.carried();
        Pointer joists = context.layout().platformOf(beam).pointer().child("joists");
        String of = " of the " + reactions.size() + " joists that it carries";
        enterReactions(sheet, "R_G", reactions, ActionForces::permanentN, "permanent reactions" + of, joists);
        enterReactions(
                sheet, "R_Q", reactions, ActionForces::imposedLargestN, "largest imposed reactions" + of, joists);
        if (hasSnow()) {
            enterReactions(sheet, "R_S", reactions, ActionForces::snowN, "reactions" + of + " under snow", joists);
        }
        sheet.given("L_m", beam.lengthMm(), MILLIMETRE, "length of the beam", "", beam.pointer());
        sheet.calculate(together().onBeam);
    }

    private static void enterReactions(
            Sheet sheet,
            String symbol,
            List<ActionForces> reactions,
            ToDoubleFunction<ActionForces> of,
            String meaning,
            Pointer joists) {
        sheet.given(symbol, reactions.stream().mapToDouble(of).sum(), NEWTON_, meaning, "", joists);
    }

    private void attached(Sheet sheet) {
        Pointer platform = context.layout().platformOf(member).pointer();
        Pointer[] from = {platform.child("stairs"), platform.child("guards")};
        sheet.given("G_a", analysis.attachedWeightN(), NEWTON_, "weight of stairs and guards that it holds", "", from);
        if (hasImposed() && analysis.attachedImposedN() != 0) {
            sheet.given("Q_a", analysis.attachedImposedN(), NEWTON_, "imposed load of stairs that it holds", "", from);
            sheet.calculate(ATTACHED);
        } else {
            sheet.calculate(ATTACHED_WEIGHT);
        }
    }

    private void enterSpans(Sheet sheet) {
        Pointer[] from = Stream.concat(
                        Stream.of(member.pointer()), member.supports().stream().map(MemberSupport::pointer))
                .distinct()
                .toArray(Pointer[]::new);
        List<Span> spans = member.spans();
        for (int i = 0; i < spans.size(); i++) {
            int span = i;
            sheet.given(
                    "L_" + (i + 1),
                    spans.get(i).lengthMm(),
                    MILLIMETRE,
                    () -> "length of " + member.spanName(span),
                    "",
                    from);
        }
    }
}
