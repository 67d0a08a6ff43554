package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * A rectangular column under an axial force with moments about both axes: 6.2.4 (6.19), (6.20) where neither axis lets it
 * buckle, else 6.3.2 (6.23), (6.24). The y axis lies along the breadth, so that buckling about it bends the depth.
 *
 * @param axialN compression, N
 * @param momentYNmm about the y axis
 * @param momentZNmm about the z axis
 */
record Column(
        Section section,
        Buckling y,
        Buckling z,
        double axialN,
        double momentYNmm,
        double momentZNmm,
        Modification modification,
        StrengthClass strengthClass,
        Parameters parameters) {
    private static final ParameterDescription KM =
            ParameterDescription.number("km", RATIO, "factor k_m for bending about both axes of a rectangle");

    static final List<ParameterDescription> PARAMETERS = needed();

    private static List<ParameterDescription> needed() {
        List<ParameterDescription> all = new ArrayList<>(DesignStrength.PARAMETERS);
        all.addAll(SizeEffect.PARAMETERS);
        all.addAll(Buckling.PARAMETERS);
        all.add(StrengthClass.TABLE);
        all.add(KM);
        return List.copyOf(all);
    }

    private DesignStrength design(String property, double characteristic) {
        return new DesignStrength(
                property, characteristic, modification, 1, parameters.number(DesignStrength.GAMMA_M.name(), RATIO));
    }

    private DesignStrength fc0() {
        return design("c,0", strengthClass.fc0k());
    }

    private double kh(double sideMm) {
        return SizeEffect.of(parameters).kh(sideMm, strengthClass.rhoK());
    }

    private double km() {
        return parameters.number(KM.name(), RATIO);
    }

    private double areaMm2() {
        return section.breadthMm() * section.depthMm();
    }

    private double modulusZMm3() {
        return section.depthMm() * section.breadthMm() * section.breadthMm() / 6;
    }

    private double axialStress() {
        return axialN / areaMm2();
    }

    private double stressY() {
        return momentYNmm / section.sectionModulusMm3();
    }

    private double stressZ() {
        return momentZNmm / modulusZMm3();
    }

    private double bendingStrength(double sideMm) {
        return kh(sideMm) * design("m", strengthClass.fmk()).value();
    }

    private double bendingY() {
        return stressY() / bendingStrength(section.depthMm());
    }

    private double bendingZ() {
        return stressZ() / bendingStrength(section.breadthMm());
    }

    private boolean isStocky() {
        return y.isStocky() && z.isStocky();
    }

    private double axialTerm(Buckling axis) {
        double ratio = axialStress() / fc0().value();
        return isStocky() ? ratio * ratio : ratio / axis.kc();
    }

    /** The left side of (6.19) or (6.23). */
    private double aboutY() {
        return axialTerm(y) + bendingY() + km() * bendingZ();
    }

    /** The left side of (6.20) or (6.24). */
    private double aboutZ() {
        return axialTerm(z) + km() * bendingY() + bendingZ();
    }

    double utilisation() {
        return Math.max(aboutY(), aboutZ());
    }

    boolean yGoverns() {
        return aboutY() >= aboutZ();
    }

    /** Shows the strengths and both inequalities; b, h, N_d and the moments that are not 0 stand in the working already. */
    void write(Sheet w, String yPlane, String zPlane, Pointer column, Pointer strengthClassPointer) {
        fc0().write(w, parameters, "strength along the grain of " + strengthClass.name(), strengthClassPointer);
        w.given(
                "E_0,05",
                strengthClass.e005(),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "5 % value of the modulus of elasticity",
                parameters.source(StrengthClass.TABLE.name()),
                strengthClassPointer);
        y.write(w, "h", yPlane, column);
        z.write(w, "b", zPlane, column);
        w.step("σ_c,0,d", "N_d / (b * h)", axialStress(), NEWTON_PER_SQUARE_MILLIMETRE, "");
        if (isBent()) {
            w.given(
                    "f_m,k",
                    strengthClass.fmk(),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "bending strength of " + strengthClass.name(),
                    parameters.source(StrengthClass.TABLE.name()),
                    strengthClassPointer);
            w.given("k_m", km(), RATIO, "rectangular section", parameters.source(KM.name()));
        }
        if (momentYNmm != 0) {
            writeBending(
                    w, "y", "b * h^2 / 6", section.sectionModulusMm3(), stressY(), "h", section.depthMm(), "(6.23)");
        }
        if (momentZNmm != 0) {
            writeBending(w, "z", "h * b^2 / 6", modulusZMm3(), stressZ(), "b", section.breadthMm(), "(6.24)");
        }
        w.step("u_y", axialExpression("y") + terms("", "k_m * "), aboutY(), RATIO, isStocky() ? "(6.19)" : "(6.23)");
        w.step("u_z", axialExpression("z") + terms("k_m * ", ""), aboutZ(), RATIO, isStocky() ? "(6.20)" : "(6.24)");
        w.step("utilisation", "max(u_y, u_z)", utilisation(), RATIO, "");
    }

    private boolean isBent() {
        return momentYNmm != 0 || momentZNmm != 0;
    }

    private void writeBending(
            Sheet w,
            String axis,
            String modulus,
            double modulusMm3,
            double stress,
            String side,
            double sideMm,
            String equation) {
        SizeEffect size = SizeEffect.of(parameters);
        w.step("W_" + axis, modulus, modulusMm3, CUBIC_MILLIMETRE, "");
        w.step("σ_m," + axis + ",d", "M_" + axis + ",d / W_" + axis, stress, NEWTON_PER_SQUARE_MILLIMETRE, "");
        w.step(
                "k_h," + axis,
                size.expression(sideMm, strengthClass.rhoK()).replace("/ h", "/ " + side),
                kh(sideMm),
                RATIO,
                "(3.1)");
        w.step(
                "f_m," + axis + ",d",
                "k_mod * k_h," + axis + " * f_m,k / γ_M",
                bendingStrength(sideMm),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "(2.14), " + equation);
    }

    private String axialExpression(String axis) {
        return isStocky() ? "(σ_c,0,d / f_c,0,d)^2" : "σ_c,0,d / (k_c," + axis + " * f_c,0,d)";
    }

    private String terms(String factorY, String factorZ) {
        return (momentYNmm == 0 ? "" : " + " + factorY + "σ_m,y,d / f_m,y,d")
                + (momentZNmm == 0 ? "" : " + " + factorZ + "σ_m,z,d / f_m,z,d");
    }
}
