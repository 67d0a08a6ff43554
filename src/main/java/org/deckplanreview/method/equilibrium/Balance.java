package org.deckplanreview.method.equilibrium;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * One combination of equilibrium: the parts of the permanent action that hold down count with one factor and those that lift
 * with another, as EN 1990, 6.4.3.1(4), asks where balance depends on them.
 */
record Balance(String id, double stabilising, double destabilising, double imposed, double concentrated) {
    static final ParameterDescription TABLE = ParameterDescription.table(
            "equilibrium",
            "combinations of equilibrium: factors of the permanent action that holds down, of that which lifts, and of the"
                    + " imposed loads that lift",
            wordColumn("id"),
            numberColumn("stabilising", RATIO),
            numberColumn("destabilising", RATIO),
            numberColumn("imposed", RATIO),
            numberColumn("concentrated", RATIO));

    private static final Formula DOWN = Formula.of("F_stb,d = γ_stb * G_stb", NEWTON_, "");
    private static final Formula UP = Formula.of("F_dst,d = γ_dst * G_dst + γ_Q * Q_dst + γ_Qk * Q_k,dst", NEWTON_, "");

    static List<Balance> of(Parameters parameters) {
        return parameters.table(TABLE.name()).rows().stream()
                .map(r -> new Balance(
                        r.word("id"),
                        r.number("stabilising", RATIO),
                        r.number("destabilising", RATIO),
                        r.number("imposed", RATIO),
                        r.number("concentrated", RATIO)))
                .toList();
    }

    /** With a part of the imposed loads, which accompany another action that leads. */
    Balance withImposed(double part) {
        return new Balance(id, stabilising, destabilising, part * imposed, part * concentrated);
    }

    /** A sheet on which stand what presses down, {@code F_stb,d}, and what lifts, {@code F_dst,d}. */
    Sheet of(LiftForces forces, Parameters parameters) {
        String source = parameters.source(TABLE.name());
        Sheet sheet = Sheet.blank();
        sheet.given("γ_stb", stabilising, RATIO, () -> "factor of the permanent action that holds down, " + id, source);
        sheet.given("G_stb", forces.permanentDownN(), NEWTON_, "permanent action that holds down", "");
        sheet.calculate(DOWN);
        sheet.given("γ_dst", destabilising, RATIO, "factor of the permanent action that lifts", source);
        sheet.given("G_dst", 0 - forces.permanentUpN(), NEWTON_, "permanent action that lifts", "");
        sheet.given("γ_Q", imposed, RATIO, "factor of the uniform imposed load", source);
        sheet.given("Q_dst", 0 - forces.imposedN(), NEWTON_, "uniform imposed load where it lifts", "");
        sheet.given("γ_Qk", concentrated, RATIO, "factor of the concentrated load", source);
        sheet.given("Q_k,dst", 0 - forces.concentratedN(), NEWTON_, "concentrated load where it lifts most", "");
        sheet.calculate(UP);
        return sheet;
    }
}
