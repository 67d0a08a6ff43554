package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.QUARTIC_MILLIMETRE;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.method.Case;
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

    private static final Formula MODULUS = Formula.of("W_y = b * h_t^2 / 6", CUBIC_MILLIMETRE, "");
    private static final Formula LEFT_DEPTH = Formula.of("h_ef = h_t - d_n", MILLIMETRE, "");
    private static final Formula SIZE_FACTOR = Material.sizeFactor("k_h", "h_t");

    private final Timber timber;
    private final Pointer pointer;
    private final Material material;
    private final Optional<Notch> notch;

    /** What is cut out of the depth where the timber bends most. */
    private record Notch(double depthMm, Pointer pointer) {}

    private SingleTimber(Timber timber, Pointer pointer, Material material, Optional<Notch> notch) {
        this.timber = timber;
        this.pointer = pointer;
        this.material = material;
        this.notch = notch;
    }

    /** What the ruleset must give, with what a check adds. */
    public static List<ParameterDescription> parameters(ParameterDescription... more) {
        return MemberBasis.parameters(
                List.of(Modification.SERVICE_CLASS, Modification.KMOD, DURATION, Material.GAMMA_M, StrengthClass.TABLE),
                List.of(more));
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
        Pointer strengthClass = pointer.child("strengthClass");
        return Derived.of(
                        timber.strengthClass(),
                        strengthClass,
                        "the strength class of " + timber.displayLabel() + ", for example C24")
                .map(name -> StrengthClass.find(parameters, name).orElseThrow())
                .map(found -> new SingleTimber(
                        timber, pointer, new Material(found, strengthClass, parameters), Optional.empty()));
    }

    /** With a notch where it bends most; k_h stays that of the whole depth. */
    public SingleTimber notched(double depthMm, Pointer from) {
        return new SingleTimber(timber, pointer, material, Optional.of(new Notch(depthMm, from)));
    }

    /**
     * Calculates (6.11) from the moment M_d, which stands on the sheet, down to the utilisation.
     *
     * @param meaning of the timber
     * @param place where it bends, for the finding's remark; may be empty
     */
    public Case bending(Sheet sheet, String meaning, String place, List<String> assumptions) {
        enterSection(sheet, "b", "h_t", meaning);
        notch.ifPresent(n -> {
            sheet.given("d_n", n.depthMm(), MILLIMETRE, "depth of the notch", "", n.pointer());
            sheet.calculate(LEFT_DEPTH);
        });
        sheet.calculate(notch.isPresent() ? Section.LEFT_MODULUS : MODULUS);
        sheet.calculate(BendingStress.OF_SECTION);
        material.enterBending(sheet, 1, SIZE_FACTOR);
        String duration = material.parameters().word(DURATION.name());
        material.calculate(sheet, Strength.BENDING, Modification.ofDuration(material.parameters(), duration));
        return BendingStress.UTILISATION.of(
                sheet, () -> (place.isEmpty() ? "" : place + ", ") + duration, () -> assumptions);
    }

    /**
     * Symbols of a stiffness, told apart from others by their index. Make each once.
     *
     * @param secondMoment I of b and h_t with this index
     */
    public record Stiffness(String index, Formula secondMoment) {
        /** E and I with this index. */
        public static Stiffness of(String index) {
            String equation = "I_" + index + " = b_" + index + " * h_t," + index + "^3 / 12";
            return new Stiffness(index, Formula.of(equation, QUARTIC_MILLIMETRE, ""));
        }
    }

    /** Enters the mean stiffness as E, and calculates I. */
    public void calculate(Sheet sheet, Stiffness stiffness, String meaning) {
        enterSection(sheet, "b_" + stiffness.index(), "h_t," + stiffness.index(), meaning);
        material.enterStiffness(sheet, "E_" + stiffness.index());
        sheet.calculate(stiffness.secondMoment());
    }

    private void enterSection(Sheet sheet, String breadth, String depth, String meaning) {
        sheet.given(
                breadth,
                timber.breadth().mm(),
                MILLIMETRE,
                () -> "breadth of " + meaning,
                "",
                pointer.child("breadth"));
        sheet.given(
                depth,
                timber.depth().mm(),
                MILLIMETRE,
                () -> "depth of " + meaning + ", along the load",
                "",
                pointer.child("depth"));
    }
}
