package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.method.Case;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Sense;

/**
 * Where a timber is pressed across its grain at a support of a member, 6.1.5 (6.3), (6.4): the member itself, or what carries it.
 *
 * @param basis of the member whose reaction presses
 * @param material of the timber
 * @param area the sheet on which A_ef stands
 * @param place for the finding's remark
 */
record Seat(MemberBasis basis, int support, Material material, Sheet area, String place, List<String> assumptions) {

    static final ParameterDescription KC90 = ParameterDescription.table(
            "kc90",
            "k_c,90 by support (general, or discrete with other forces far enough away) and kind of timber",
            wordColumn("support"),
            wordColumn("kind"),
            numberColumn("kc90", RATIO));

    static final Formula AREA = Formula.of("A_ef = b * l_ef", SQUARE_MILLIMETRE, "6.1.5(1)");

    private static final Formula LEAST_GAP = Formula.of("l_1 = 2 * h", MILLIMETRE, "6.1.5(3), (4)");
    private static final Formula STRESS =
            Formula.of("σ_c,90,d = F_c,90,d / A_ef", NEWTON_PER_SQUARE_MILLIMETRE, "(6.4)");
    private static final Utilisation UTILISATION =
            Utilisation.atMost("σ_c,90,d", "k_c,90 * f_c,90,d", NEWTON_PER_SQUARE_MILLIMETRE, "(6.3)");

    /** Which k_c,90 counts. */
    enum Support {
        GENERAL("general", "general"),
        /** Other forces stand at least 2 h away. */
        DISCRETE("discrete", "discrete supports, other forces at least 2 h away");

        private final String word;
        private final String meaning;

        Support(String word, String meaning) {
            this.word = word;
            this.meaning = meaning;
        }

        /** That of a contact along a timber whose depth stands on the sheet. */
        static Support of(Contact contact, Sheet depth, Combination combination) {
            boolean isFar = Sense.AT_LEAST.holds(contact.smallestGapMm(), depth.aside(LEAST_GAP));
            return isFar && !combination.isConcentrated() ? DISCRETE : GENERAL;
        }
    }

    /** @param strength the sheet on which f_c,90,d stands */
    Case under(Combination combination, double reactionN, Sheet strength, Support kind) {
        Sheet stress = Sheet.on(area);
        basis.enterForce(stress, "F_c,90,d", Math.max(0, reactionN), "design reaction at ", support, combination);
        stress.calculate(STRESS);
        Sheet sheet = Sheet.on(stress, strength);
        sheet.given(
                "k_c,90", kc90(kind), RATIO, kind.meaning, basis.parameters().source(KC90.name()));
        return basis.place(UTILISATION, sheet, combination, () -> place, () -> assumptions);
    }

    private double kc90(Support kind) {
        String timber = material.strengthClass().kind();
        return basis.parameters()
                .table(KC90.name())
                .find("support", kind.word, "kind", timber)
                .orElseThrow(() -> new IllegalArgumentException("No k_c,90 for " + timber))
                .number("kc90", RATIO);
    }
}
