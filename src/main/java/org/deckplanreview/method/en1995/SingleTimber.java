package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.QUARTIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * One timber in bending that shares its load with no other and does not buckle sideways, for checks outside this package.
 * Its depth lies along the load.
 */
public final class SingleTimber {

    private static final ParameterDescription DURATION = ParameterDescription.word(
            "loadDuration",
            "load duration class of the load that leads, as the table of modification factors names it");

    private final Timber timber;
    private final Pointer pointer;
    private final StrengthClass strengthClass;
    private final DesignStrength fm;
    private final SizeEffect size;
    private final Section section;
    private final Optional<Notch> notch;
    private final Parameters parameters;

    /** What is cut out of the depth where the timber bends most. */
    private record Notch(double depthMm, Pointer pointer) {}

    private SingleTimber(
            Timber timber, Pointer pointer, StrengthClass strengthClass, Optional<Notch> notch, Parameters parameters) {
        this.notch = notch;
        this.timber = timber;
        this.pointer = pointer;
        this.strengthClass = strengthClass;
        this.parameters = parameters;
        this.section = new Section(timber.breadth().mm(), timber.depth().mm());
        this.size = SizeEffect.of(parameters);
        this.fm = new DesignStrength(
                "m",
                strengthClass.fmk(),
                modification(parameters),
                1,
                parameters.number(DesignStrength.GAMMA_M.name(), RATIO));
    }

    private static Modification modification(Parameters parameters) {
        String duration = parameters.word(DURATION.name());
        String serviceClass = parameters.word(Modification.SERVICE_CLASS.name());
        return new Modification(
                duration,
                parameters
                        .table(Modification.KMOD.name())
                        .find("serviceClass", serviceClass, "duration", duration)
                        .orElseThrow(() -> new IllegalArgumentException(
                                "No k_mod for service class " + serviceClass + ", " + duration))
                        .number("kmod", RATIO));
    }

    /** What the ruleset must give, with what a check adds. */
    public static List<ParameterDescription> parameters(ParameterDescription... more) {
        List<ParameterDescription> all = new ArrayList<>(List.of(
                Modification.SERVICE_CLASS, Modification.KMOD, DURATION, DesignStrength.GAMMA_M, StrengthClass.TABLE));
        all.addAll(SizeEffect.PARAMETERS);
        all.addAll(List.of(more));
        return List.copyOf(all);
    }

    /** Out of scope where the ruleset's table lacks the strength class; empty where the class is not given at all. */
    public static Optional<Evaluation> outOfScope(Timber timber, Parameters parameters) {
        return timber.strengthClass()
                .filter(name -> StrengthClass.find(parameters, name).isEmpty())
                .map(name -> new Evaluation.OutOfScope(
                        "Strength class " + name + " is not in the table",
                        parameters.source(StrengthClass.TABLE.name())));
    }

    /**
     * Missing without a strength class.
     *
     * @param pointer of the timber
     * @throws java.util.NoSuchElementException if the class is out of scope
     */
    public static Derived<SingleTimber> of(Timber timber, Pointer pointer, Parameters parameters) {
        return Derived.of(
                        timber.strengthClass(),
                        pointer.child("strengthClass"),
                        "the strength class of " + timber.displayLabel() + ", for example C24")
                .map(name -> new SingleTimber(
                        timber,
                        pointer,
                        StrengthClass.find(parameters, name).orElseThrow(),
                        Optional.empty(),
                        parameters));
    }

    /** With a notch where it bends most; k_h stays that of the whole depth. */
    public SingleTimber notched(double depthMm, Pointer from) {
        return new SingleTimber(timber, pointer, strengthClass, Optional.of(new Notch(depthMm, from)), parameters);
    }

    /** f_m,d of (2.14) with k_h of (3.1), N/mm2. */
    public double bendingStrength() {
        return size.kh(section.depthMm(), strengthClass.rhoK()) * fm.value();
    }

    /** W_y of what a notch leaves, mm3. */
    public double sectionModulusMm3() {
        return new Section(section.breadthMm(), leftMm()).sectionModulusMm3();
    }

    private double leftMm() {
        return section.depthMm() - notch.map(Notch::depthMm).orElse(0.0);
    }

    /** I_y, mm4. */
    public double secondMomentMm4() {
        return section.secondMomentMm4();
    }

    /** E_0,mean, N/mm2. */
    public double e0Mean() {
        return strengthClass.e0Mean();
    }

    public String loadDuration() {
        return fm.modification().duration();
    }

    /** σ_m,d over f_m,d, (6.11), for a moment in N.mm. */
    public double bendingUtilisation(double momentNmm) {
        return momentNmm / sectionModulusMm3() / bendingStrength();
    }

    /** Shows (6.11) from the moment M_d, which stands in the working already, down to the utilisation. */
    public void writeBending(Sheet w, double momentNmm, String meaning) {
        writeSection(w, "", meaning);
        notch.ifPresent(n -> {
            w.given("d_n", n.depthMm(), MILLIMETRE, "depth of the notch", "", n.pointer());
            w.step("h_ef", "h_t - d_n", leftMm(), MILLIMETRE, "");
        });
        String depth = notch.isPresent() ? "h_ef" : "h_t";
        w.step("W_y", "b * " + depth + "^2 / 6", sectionModulusMm3(), CUBIC_MILLIMETRE, "");
        w.step("σ_m,d", "M_d / W_y", momentNmm / sectionModulusMm3(), NEWTON_PER_SQUARE_MILLIMETRE, "(6.11)");
        fm.writeFactors(w, parameters, "bending strength of " + strengthClass.name(), pointer.child("strengthClass"));
        w.step(
                "k_h",
                size.expression(section.depthMm(), strengthClass.rhoK()).replace("h)", "h_t)"),
                size.kh(section.depthMm(), strengthClass.rhoK()),
                RATIO,
                "(3.1)");
        w.step(
                "f_m,d",
                "k_mod * k_h * k_sys * f_m,k / γ_M",
                bendingStrength(),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "(2.14), 3.2");
        w.step("utilisation", "σ_m,d / f_m,d", bendingUtilisation(momentNmm), RATIO, "(6.11)");
    }

    /** Shows the stiffness as E and I with this index. */
    public void writeStiffness(Sheet w, String index, String meaning) {
        writeSection(w, index, meaning);
        w.given(
                "E_" + index,
                e0Mean(),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "mean stiffness of " + strengthClass.name(),
                parameters.source(StrengthClass.TABLE.name()),
                pointer.child("strengthClass"));
        w.step("I_" + index, "b_" + index + " * h_t," + index + "^3 / 12", secondMomentMm4(), QUARTIC_MILLIMETRE, "");
    }

    private void writeSection(Sheet w, String index, String meaning) {
        w.given(
                index.isEmpty() ? "b" : "b_" + index,
                timber.breadth().mm(),
                MILLIMETRE,
                "breadth of " + meaning,
                "",
                pointer.child("breadth"));
        w.given(
                index.isEmpty() ? "h_t" : "h_t," + index,
                timber.depth().mm(),
                MILLIMETRE,
                "depth of " + meaning + ", along the load",
                "",
                pointer.child("depth"));
    }
}
