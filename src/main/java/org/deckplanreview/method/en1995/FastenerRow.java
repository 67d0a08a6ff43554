package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;

/** How many fasteners of a row along the grain count, 8.5.1.1(4): of the longest rows of a joint and of those with one less. */
enum FastenerRow {
    LONGEST("1"),
    SHORTER("2");

    private static final Formula ALL_EQUAL = Formula.of("N_ef = s * (m_1 * n_ef,1)", RATIO, "8.1.2");
    private static final Formula TWO_LENGTHS = Formula.of("N_ef = s * (m_1 * n_ef,1 + m_2 * n_ef,2)", RATIO, "8.1.2");

    private final String index;
    private final Formula single;
    private final Formula ofBolts;
    private final Formula ofScrews;

    FastenerRow(String index) {
        this.index = index;
        single = Formula.of("n_ef," + index + " = n_" + index, RATIO, "8.5.1.1(4)");
        ofBolts = several(index, "d");
        ofScrews = several(index, "d_s");
    }

    private static Formula several(String index, String diameter) {
        String n = "n_" + index;
        return Formula.of(
                "n_ef," + index + " = min(" + n + ", " + n + "^0.9 * (a_1 / (13 * " + diameter + "))^0.25)",
                RATIO,
                "(8.34)");
    }

    /** Calculates N_ef of a joint, whose diameter stands on the sheet, and a_1 where a row has more than one fastener. */
    static void calculate(Sheet sheet, BeamJoint joint) {
        int shorter = joint.rows() - joint.longestRows();
        LONGEST.calculate(sheet, joint, joint.longestRows(), joint.longestRow());
        if (shorter > 0) {
            SHORTER.calculate(sheet, joint, shorter, joint.longestRow() - 1);
        }
        sheet.given(
                "s",
                joint.sides(),
                RATIO,
                "sides of the post at which the beam stands",
                "",
                joint.line().pointer());
        sheet.calculate(shorter > 0 ? TWO_LENGTHS : ALL_EQUAL);
    }

    private void calculate(Sheet sheet, BeamJoint joint, int rows, int n) {
        Pointer pointer = joint.pointer();
        sheet.given("m_" + index, rows, RATIO, () -> "rows of " + n, "", pointer.child("rows"));
        sheet.given("n_" + index, n, RATIO, "fasteners in each of them", "", pointer.child("count"));
        Formula several = joint.screwed() ? ofScrews : ofBolts;
        sheet.calculate(n == 1 ? single : several);
    }
}
