package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Sense;

/**
 * A rectangular column under an axial force with moments about both axes: 6.2.4 (6.19), (6.20) where neither axis lets it
 * buckle, else 6.3.2 (6.23), (6.24). The y axis lies along the breadth, so that buckling about it bends the depth.
 *
 * @param sheet strengths and buckling, which are the same under all combinations
 */
record Column(Material material, Sheet sheet) {
    static final List<ParameterDescription> PARAMETERS =
            MemberBasis.parameters(Material.PARAMETERS, List.of(), StrengthClass.TABLE);

    private static final Formula AXIAL_STRESS = Formula.of("σ_c,0,d = N_d / (b * h)", NEWTON_PER_SQUARE_MILLIMETRE, "");
    private static final Formula RECTANGLE = Formula.of("k_m = 0.7", RATIO, "6.1.6(2)");
    private static final Formula UTILISATION = Formula.of("utilisation = max(u_y, u_z)", RATIO, "");

    /** What belongs to one axis of the section. */
    private enum Axis {
        Y("y", "z", "h", Section.MODULUS, "(6.19); (6.23)"),
        Z("z", "y", "b", Formula.of("W_z = h * b^2 / 6", CUBIC_MILLIMETRE, ""), "(6.20); (6.24)");

        private final Formula modulus;
        private final Formula stress;
        private final Formula sizeFactor;
        private final Formula strength;
        private final Formula axialAlone;
        private final Formula withOwnMoment;
        private final Formula withOtherMoment;
        private final Formula withBothMoments;

        /**
         * @param index of the symbols
         * @param other index of the other axis
         * @param side symbol of the side that bending about this axis bends
         * @param clauses of the inequality without and with buckling
         */
        Axis(String index, String other, String side, Formula modulus, String clauses) {
            this.modulus = modulus;
            String bending = "σ_m," + index + ",d / f_m," + index + ",d";
            String otherBending = "k_m * σ_m," + other + ",d / f_m," + other + ",d";
            String ofBoth = index.equals("y") ? bending + " + " + otherBending : otherBending + " + " + bending;
            stress = Formula.of(
                    "σ_m," + index + ",d = M_" + index + ",d / W_" + index, NEWTON_PER_SQUARE_MILLIMETRE, "");
            sizeFactor = Material.sizeFactor("k_h," + index, side);
            strength = Formula.of(
                    "f_m," + index + ",d = k_mod * k_h," + index + " * k_sys * f_m,k / γ_M",
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "(2.14)");
            axialAlone = inequality(index, "", clauses);
            withOwnMoment = inequality(index, " + " + bending, clauses);
            withOtherMoment = inequality(index, " + " + otherBending, clauses);
            withBothMoments = inequality(index, " + " + ofBoth, clauses);
        }

        /** The left side, which must not be more than 1. */
        private static Formula inequality(String index, String bending, String clauses) {
            return Formula.of(
                    "u_" + index + " = (σ_c,0,d / f_c,0,d)^2" + bending
                            + " if λ_rel,y <= 0.3 and λ_rel,z <= 0.3; σ_c,0,d / (k_c," + index + " * f_c,0,d)"
                            + bending,
                    RATIO,
                    clauses);
        }

        void calculateBending(Sheet sheet) {
            sheet.calculate(modulus);
            sheet.calculate(stress);
            sheet.calculate(sizeFactor);
            sheet.calculate(strength);
        }

        double calculateUse(Sheet sheet, boolean own, boolean other) {
            Formula bent = own && other ? withBothMoments : own ? withOwnMoment : withOtherMoment;
            return sheet.calculate(own || other ? bent : axialAlone);
        }
    }

    /** @param lengths a sheet with b, h, l_ef,y and l_ef,z */
    static Column of(Material material, Sheet lengths) {
        Sheet sheet = Sheet.on(lengths);
        material.enter(sheet, Strength.COMPRESSION_ALONG, 1);
        material.enterLowStiffness(sheet);
        Buckling.ABOUT_Y.calculate(sheet);
        Buckling.ABOUT_Z.calculate(sheet);
        return new Column(material, sheet);
    }

    /**
     * Under an axial force and moments.
     *
     * @param loads a sheet with b, h, N_d and, where the column is bent, M_y,d and M_z,d
     * @param momentYNmm 0 for none
     * @param momentZNmm 0 for none
     */
    Loaded under(
            Sheet loads,
            double momentYNmm,
            double momentZNmm,
            Modification modification,
            Function<Loaded, String> remark,
            Supplier<List<String>> assumptions) {
        Sheet all = Sheet.on(loads, sheet);
        material.calculate(all, Strength.COMPRESSION_ALONG, modification);
        all.calculate(AXIAL_STRESS);
        boolean y = momentYNmm != 0;
        boolean z = momentZNmm != 0;
        if (y || z) {
            material.enter(all, Strength.BENDING);
            material.enterDensity(all);
            all.calculate(RECTANGLE);
        }
        if (y) {
            Axis.Y.calculateBending(all);
        }
        if (z) {
            Axis.Z.calculateBending(all);
        }
        boolean yGoverns = Axis.Y.calculateUse(all, y, z) >= Axis.Z.calculateUse(all, z, y);
        return new Loaded(all, yGoverns, all.calculate(UTILISATION), remark, assumptions);
    }

    /** @param yGoverns whether bending and buckling about y use more of it than about z */
    record Loaded(
            Sheet sheet,
            boolean yGoverns,
            double utilisation,
            Function<Loaded, String> remark,
            Supplier<List<String>> assumptions)
            implements Case {
        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(utilisation, RATIO),
                    Sense.AT_MOST,
                    Measure.of(1, RATIO),
                    utilisation,
                    remark.apply(this),
                    sheet.steps(),
                    assumptions.get());
        }
    }
}
