package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.Locale;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;

/**
 * One way in which a joint of dowel-type fasteners yields, 8.2.2 (8.6) and (8.7): its resistance for one shear plane of one
 * fastener. The first timber is the beam, the second the post.
 */
enum YieldMode {
    A(Texts.BEAM_CRUSHES, Texts.OF_FIRST, false),
    B(Texts.POST_CRUSHES, "f_h,2,k * t_2 * d", false),
    C(
            "the fasteners tilt in beam and post",
            "f_h,1,k * t_1 * d / (1 + β) * (sqrt(β + 2 * β^2 * (1 + t_2 / t_1 + (t_2 / t_1)^2) + β^3 * (t_2 / t_1)^2)"
                    + " - β * (1 + t_2 / t_1))",
            true),
    D(Texts.HINGE_IN_POST, Texts.HINGE_IN_SECOND, true),
    E(
            "the fasteners tilt in the post and bend in the beam",
            "1.05 * f_h,1,k * t_2 * d / (1 + 2 * β) * (sqrt(2 * β^2 * (1 + β) + 4 * β * (1 + 2 * β) * M_y,Rk"
                    + " / (f_h,1,k * d * t_2^2)) - β)",
            true),
    F(Texts.TWO_BENDS, Texts.TWO_HINGES, true),
    G(Texts.BEAM_CRUSHES, Texts.OF_FIRST, false),
    H(Texts.POST_CRUSHES, "f_h,2,k * t_2 * d / 2", false),
    J(Texts.HINGE_IN_POST, Texts.HINGE_IN_SECOND, true),
    K(Texts.TWO_BENDS, Texts.TWO_HINGES, true);

    /** What modes of single and of double shear have in common. */
    private static final class Texts {
        static final String BEAM_CRUSHES = "the beam crushes under the fasteners";
        static final String POST_CRUSHES = "the post crushes under the fasteners";
        static final String HINGE_IN_POST = "the fasteners tilt in the beam and bend in the post";
        static final String TWO_BENDS = "the fasteners bend in beam and post";
        static final String OF_FIRST = "f_h,1,k * t_1 * d";
        static final String HINGE_IN_SECOND =
                "1.05 * f_h,1,k * t_1 * d / (2 + β) * (sqrt(2 * β * (1 + β) + 4 * β * (2 + β) * M_y,Rk / (f_h,1,k * d * t_1^2))"
                        + " - β)";
        static final String TWO_HINGES = "1.15 * sqrt(2 * β / (1 + β)) * sqrt(2 * M_y,Rk * f_h,1,k * d)";
    }

    private final String meaning;
    private final boolean stretches;
    private final Formula alone;
    private final Formula johansenPart;
    private final Formula withRope;

    /** @param stretches whether the fasteners bend or tilt, so that their tension helps */
    YieldMode(String meaning, String johansen, boolean stretches) {
        this.meaning = meaning;
        this.stretches = stretches;
        String clause = (name().compareTo("G") < 0 ? "(8.6) " : "(8.7) ") + letter();
        alone = Formula.of(symbol() + " = " + johansen, NEWTON_, clause);
        johansenPart = Formula.of(symbol() + ",J = " + johansen, NEWTON_, clause);
        withRope = Formula.of(
                symbol() + " = " + symbol() + ",J + min(F_ax,Rk / 4, 0.25 * " + symbol() + ",J)", NEWTON_, "8.2.2(2)");
    }

    /** As the standard writes it. */
    String letter() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Of its resistance. */
    String symbol() {
        return "F_" + letter();
    }

    /** For people. */
    String meaning() {
        return meaning;
    }

    /**
     * Calculates its resistance from the embedment strengths, t_1, t_2, d, β and M_y,Rk on the sheet.
     *
     * @param roped whether F_ax,Rk stands on the sheet, which bolts in tension add to modes that stretch them
     */
    double calculate(Sheet sheet, boolean roped) {
        if (roped && stretches) {
            sheet.calculate(johansenPart);
            return sheet.calculate(withRope);
        }
        return sheet.calculate(alone);
    }
}
