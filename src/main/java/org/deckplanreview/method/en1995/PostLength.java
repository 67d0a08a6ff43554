package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * The length over which a post can buckle in one direction.
 *
 * @param factor on the whole height, by the foot and by whether the upper end is held
 * @param heldTop whether a ledger or braces keep the upper end in its place in this direction
 * @param braced whether a brace in this direction makes it shorter; braces that would not are left out, which is safe
 * @param footPartMm from the foot to the lowest brace that counts, or the whole height
 * @param clearMm the longest part above that brace, 0 without one
 */
record PostLength(double heightMm, double factor, boolean heldTop, boolean braced, double footPartMm, double clearMm) {
    static final ParameterDescription FACTORS = ParameterDescription.table(
            "postLengthFactors",
            "effective length of a post over its clear height, by its foot (pad or embedded-post) and its upper end (held or"
                    + " free in position)",
            wordColumn("foot"),
            wordColumn("top"),
            numberColumn("factor", RATIO));

    /** An axis of the section, by the index of its symbols; none where one axis alone is looked at. */
    enum Axis {
        Y("y"),
        Z("z"),
        ONE("");

        private final String index;
        private final Formula whole;
        private final Formula braced;

        Axis(String index) {
            this.index = index;
            String ofFootPart = symbol("k_l") + " * " + symbol("l");
            whole = Formula.of(symbol("l_ef") + " = " + ofFootPart, MILLIMETRE, "");
            braced = Formula.of(symbol("l_ef") + " = max(" + ofFootPart + ", " + symbol("l_c") + ")", MILLIMETRE, "");
        }

        /** With this axis added to its index. */
        String symbol(String name) {
            return index.isEmpty() ? name : name + (name.contains("_") ? "," : "_") + index;
        }
    }

    static PostLength of(
            PostPlace post,
            FootingKind foot,
            double heightMm,
            Direction direction,
            SidewaysSupport support,
            Parameters parameters) {
        boolean held = support.isTiedToBuilding() || !support.braces(direction).isEmpty();
        double factor = parameters
                .table(FACTORS.name())
                .find("foot", foot.word(), "top", held ? "held" : "free")
                .orElseThrow(() -> new IllegalArgumentException(parameters.source(FACTORS.name())
                        + " has no row for a foot of kind " + foot.word() + ", its top " + (held ? "held" : "free")))
                .number("factor", RATIO);
        List<Double> meetings = support.braces(direction, post).stream()
                .map(BraceLine::brace)
                .map(b -> Math.max(0, heightMm - b.below().mm()))
                .sorted()
                .toList();
        double footPart = heightMm;
        double clear = 0;
        double above = 0;
        for (int i = meetings.size() - 1; i >= 0; i--) {
            above = Math.max(above, (i + 1 < meetings.size() ? meetings.get(i + 1) : heightMm) - meetings.get(i));
            if (Math.max(factor * meetings.get(i), above) < Math.max(factor * footPart, clear)) {
                footPart = meetings.get(i);
                clear = above;
            }
        }
        return new PostLength(heightMm, factor, held, footPart < heightMm, footPart, clear);
    }

    /**
     * Calculates the effective length: that of the whole height or, where braces hold the post between, less; a brace never
     * makes it longer.
     *
     * @param plane of buckling, for people
     */
    void calculate(Sheet sheet, Axis axis, String plane, Parameters parameters, Pointer post) {
        sheet.given(
                axis.symbol("k_l"),
                factor,
                RATIO,
                () -> "effective length over clear height, buckling " + plane,
                parameters.source(FACTORS.name()));
        String length = braced ? "height of its lowest brace that counts" : "clear height of the post";
        sheet.given(axis.symbol("l"), footPartMm, MILLIMETRE, length, "", post);
        if (braced) {
            sheet.given(axis.symbol("l_c"), clearMm, MILLIMETRE, "longest part above that brace", "", post);
        }
        sheet.calculate(braced ? axis.braced : axis.whole);
    }

    /** For the assumptions of a finding. */
    String assumption(String plane, FootingKind foot) {
        String post = foot == FootingKind.PAD ? "a post on a pad" : "an embedded post";
        String top = heldTop ? "whose upper end is held in its place" : "whose upper end nothing but its foot holds";
        return "Buckling " + plane + ": " + post + " " + top + " has an effective length of " + Numbers.plain(factor)
                + " times "
                + (braced
                        ? "its part below the lowest brace, or its part above a brace if that is longer."
                        : "its clear height.");
    }
}
