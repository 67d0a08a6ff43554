package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import java.util.List;
import java.util.OptionalDouble;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.method.Notches;

/**
 * Where a timber is pressed across its grain, 6.1.5(1); a notch's corner ends the bearing and the fibres beside it.
 *
 * @param lengthMm l, along the grain
 * @param startMm a on the side of the timber's start, from the contact to the timber's end or the notch's corner
 * @param endMm a on the other side
 * @param startGapMm l_1 to the next contact towards the start, if there is one
 * @param endGapMm l_1 towards the end, likewise
 * @param loadGapMm clear distance to the next concentrated force from above; empty for load along the whole timber
 */
record Contact(
        double lengthMm,
        double startMm,
        double endMm,
        OptionalDouble startGapMm,
        OptionalDouble endGapMm,
        OptionalDouble loadGapMm) {

    private static final Formula EFFECTIVE_LENGTH = Formula.of("l_ef = l + Δ_s + Δ_e", MILLIMETRE, "6.1.5(1)");

    /** What may be added to the contact on one side. */
    private enum Side {
        START("s", "start"),
        END("e", "end");

        private final String index;
        private final String word;
        private final Formula alone;
        private final Formula besideAnother;

        Side(String index, String word) {
            this.index = index;
            this.word = word;
            String least = "Δ_" + index + " = min(30 [mm], a_" + index + ", l";
            alone = Formula.of(least + ")", MILLIMETRE, "6.1.5(1)");
            besideAnother = Formula.of(least + ", l_1," + index + " / 2)", MILLIMETRE, "6.1.5(1)");
        }

        void calculate(Sheet sheet, String timber, double toEndMm, OptionalDouble gapMm) {
            sheet.given(
                    "a_" + index,
                    toEndMm,
                    MILLIMETRE,
                    () -> "from the contact to the end of " + timber + ", towards its " + word,
                    "");
            gapMm.ifPresent(gap ->
                    sheet.given("l_1," + index, gap, MILLIMETRE, () -> "to the next contact towards its " + word, ""));
            sheet.calculate(gapMm.isPresent() ? besideAnother : alone);
        }
    }

    /** The contact at a support whose contact length is known. */
    static Contact at(Member member, int support, double joistBreadthMm) {
        List<MemberSupport> supports = member.supports();
        MemberSupport s = supports.get(support);
        double before = Notches.bearsMm(member, support, -1);
        double behind = Notches.bearsMm(member, support, 1);
        double from = s.atMm() - before;
        double to = s.atMm() + behind;
        return new Contact(
                before + behind,
                Math.max(0, Math.min(from, Notches.cornerMm(member, support, -1) - before)),
                Math.max(0, Math.min(member.lengthMm() - to, Notches.cornerMm(member, support, 1) - behind)),
                support == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Math.max(0, from - farEdge(supports.get(support - 1), 1))),
                support == supports.size() - 1
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Math.max(0, farEdge(supports.get(support + 1), -1) - to)),
                nearestJoist(member, s.atMm(), Math.max(before, behind) + joistBreadthMm / 2));
    }

    private static double farEdge(MemberSupport support, int side) {
        return support.atMm() + side * support.contactLengthMm().orElse(0) / 2;
    }

    private static OptionalDouble nearestJoist(Member member, double atMm, double halvesMm) {
        return member instanceof BeamLine beam
                ? beam.joists().stream()
                        .mapToDouble(JoistBearing::atMm)
                        .map(joist -> Math.max(0, Math.abs(joist - atMm) - halvesMm))
                        .min()
                : OptionalDouble.empty();
    }

    /** The smallest clear distance from the contact to another force on the member; infinite with none. */
    double smallestGapMm() {
        List<OptionalDouble> gaps = List.of(startGapMm, endGapMm, loadGapMm);
        return gaps.stream().flatMapToDouble(OptionalDouble::stream).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** Calculates l_ef, l with what may be added at both ends, 6.1.5(1); l stands on the sheet. */
    double calculate(Sheet sheet, String timber) {
        Side.START.calculate(sheet, timber, startMm, startGapMm);
        Side.END.calculate(sheet, timber, endMm, endGapMm);
        return sheet.calculate(EFFECTIVE_LENGTH);
    }
}
