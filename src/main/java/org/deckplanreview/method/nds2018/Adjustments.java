package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/**
 * Adjustment factors of one lumber in its conditions of service, 4.3.
 *
 * @param wet whether its moisture content exceeds 19 % for long, 4.1.4
 * @param timber where the submission gives it
 */
record Adjustments(Lumber lumber, boolean wet, boolean incised, Pointer timber, Parameters parameters) {
    private static final Formula ELASTICITY =
            Formula.of("E' = E * C_M,E * C_t,E * C_i,E", POUND_FORCE_PER_SQUARE_INCH, "4.3.1");
    private static final Formula STABILITY =
            Formula.of("E_min' = E_min * C_M,E * C_t,E * C_i,E", POUND_FORCE_PER_SQUARE_INCH, "4.3.1");

    private static final String WET = "wet";
    private static final String CM = "cm";
    private static final String NONE_UP_TO = "noneUpTo";
    private static final ParameterDescription SERVICE = ParameterDescription.word(
                    "serviceCondition", "moisture in service: wet or dry")
            .rising("dry", "wet");
    private static final ParameterDescription TEMPERATURE =
            ParameterDescription.number("ct", RATIO, "temperature factor C_t");
    private static final ParameterDescription WET_SERVICE = ParameterDescription.table(
            "wetServiceFactors",
            "wet service factor C_M by kind of lumber and property; none for a product of reference value and size factor"
                    + " up to a limit",
            wordColumn("lumber"),
            wordColumn("property"),
            numberColumn(CM, RATIO),
            numberColumn(NONE_UP_TO, POUND_FORCE_PER_SQUARE_INCH));
    private static final ParameterDescription INCISING = ParameterDescription.table(
            "incisingFactors",
            "incising factor C_i of each property",
            wordColumn("property"),
            numberColumn("ci", RATIO));
    private static final ParameterDescription USUALLY_INCISED = ParameterDescription.table(
            "usuallyIncised",
            "species that are taken as incised where the submission does not say",
            wordColumn("species"));
    private static final ParameterDescription SIZE = ParameterDescription.table(
            "sizeFactors",
            "size factor C_F of F_b and F_c by kind of lumber, thickness and width up to those given",
            wordColumn("lumber"),
            numberColumn("thickness", INCH),
            numberColumn("width", INCH),
            numberColumn(Property.BENDING.word(), RATIO),
            numberColumn(Property.COMPRESSION.word(), RATIO));
    static final ParameterDescription FLAT_USE = ParameterDescription.table(
            "flatUseFactors",
            "flat use factor C_fu by kind of lumber, thickness and width up to those given",
            wordColumn("lumber"),
            numberColumn("thickness", INCH),
            numberColumn("width", INCH),
            numberColumn("cfu", RATIO));
    private static final ParameterDescription REPETITIVE =
            ParameterDescription.number("repetitiveFactor", RATIO, "repetitive member factor C_r");
    private static final ParameterDescription LEAST_MEMBERS =
            ParameterDescription.number("repetitiveLeastMembers", RATIO, "fewest members that share load");
    private static final ParameterDescription LARGEST_SPACING =
            ParameterDescription.number("repetitiveLargestSpacing", INCH, "largest spacing of members that share load");
    private static final ParameterDescription LARGEST_THICKNESS = ParameterDescription.number(
            "repetitiveLargestThickness", INCH, "largest nominal thickness of members that share load");

    /** What every adjusted value needs. */
    static final List<ParameterDescription> PARAMETERS =
            List.of(Lumber.DESIGN_VALUES, SERVICE, TEMPERATURE, WET_SERVICE, INCISING, USUALLY_INCISED, SIZE);

    /** What an adjusted bending value needs too. */
    static final List<ParameterDescription> OF_BENDING =
            List.of(FLAT_USE, REPETITIVE, LEAST_MEMBERS, LARGEST_SPACING, LARGEST_THICKNESS);

    static Adjustments of(Lumber lumber, Timber timber, Pointer pointer, Parameters parameters) {
        return new Adjustments(
                lumber,
                parameters.word(SERVICE.name()).equals(WET),
                timber.incised().orElseGet(() -> isUsuallyIncised(lumber, parameters)),
                pointer,
                parameters);
    }

    private static boolean isUsuallyIncised(Lumber lumber, Parameters parameters) {
        return parameters
                .table(USUALLY_INCISED.name())
                .find("species", lumber.species().word())
                .isPresent();
    }

    /** What is taken of this timber that the submission does not say. */
    List<String> assumptions(Timber timber) {
        List<String> all = new ArrayList<>();
        all.add("Lumber is " + (wet ? "wet in service, as outdoors" : "dry in service") + " (NDS 4.1.4).");
        if (timber.incised().isEmpty()) {
            all.add(
                    incised
                            ? "Lumber of " + lumber.species().word()
                                    + " is incised for its treatment, as is usual, since the submission does not say."
                            : "Lumber of " + lumber.species().word()
                                    + " is not incised, as is usual, since the submission does not say.");
        }
        return all;
    }

    /** The reference value and C_M, C_t, C_F and C_i. */
    AdjustedValue of(Property property) {
        Sheet reference = Sheet.blank();
        reference.given(
                property.symbol(),
                lumber.reference(property),
                POUND_FORCE_PER_SQUARE_INCH,
                () -> "reference " + property.meaning() + " of " + lumber.name(),
                parameters.source(Lumber.DESIGN_VALUES.name()),
                timber.child("species"),
                timber.child("grade"));
        Sheet factors = Sheet.blank();
        String suffix = property.factorSuffix();
        enter(factors, "C_M" + suffix, wetService(property), "wet service factor", WET_SERVICE);
        enter(factors, "C_t" + suffix, parameters.number(TEMPERATURE.name(), RATIO), "temperature factor", TEMPERATURE);
        if (hasSizeFactor(property)) {
            enter(factors, "C_F", size(property), "size factor", SIZE);
        }
        enter(factors, "C_i" + suffix, incising(property), "incising factor", INCISING);
        return new AdjustedValue(reference, factors);
    }

    /** E'. */
    Sheet elasticity() {
        Sheet sheet = of(Property.ELASTICITY).always();
        sheet.calculate(ELASTICITY);
        return sheet;
    }

    /** E_min'. */
    Sheet stability() {
        Sheet sheet = of(Property.STABILITY).always();
        sheet.calculate(STABILITY);
        return sheet;
    }

    private void enter(Sheet sheet, String symbol, double factor, String meaning, ParameterDescription parameter) {
        sheet.given(symbol, factor, RATIO, meaning, parameters.source(parameter.name()));
    }

    private static boolean hasSizeFactor(Property property) {
        return property == Property.BENDING || property == Property.COMPRESSION;
    }

    private double size(Property property) {
        return hasSizeFactor(property)
                ? lumber.bySize(parameters.table(SIZE.name())).number(property.word(), RATIO)
                : 1;
    }

    private double wetService(Property property) {
        if (!wet) {
            return 1;
        }
        Table.Row row = lumber.byProperty(parameters.table(WET_SERVICE.name()), property);
        boolean none = Sense.AT_MOST.holds(
                lumber.reference(property) * size(property), row.number(NONE_UP_TO, POUND_FORCE_PER_SQUARE_INCH));
        return none ? 1 : row.number(CM, RATIO);
    }

    private double incising(Property property) {
        return incised
                ? parameters
                        .table(INCISING.name())
                        .find("property", property.word())
                        .orElseThrow(() -> new IllegalArgumentException("No C_i for " + property.word()))
                        .number("ci", RATIO)
                : 1;
    }

    /** Enters C_fu, 4.3.7: for a piece whose broad face takes the load. */
    void enterFlatUse(Sheet sheet, Section ply) {
        boolean flat = ply.breadthIn() > ply.depthIn();
        enter(
                sheet,
                "C_fu",
                flat ? lumber.bySize(parameters.table(FLAT_USE.name())).number("cfu", RATIO) : 1,
                flat ? "flat use factor" : "flat use factor, loaded on the narrow face",
                FLAT_USE);
    }

    /** Enters C_r, 4.3.9: for joists side by side under boards, or the plies of a beam. */
    void enterRepetitive(Sheet sheet, Member member) {
        if (member instanceof JoistLine joist) {
            enterRepetitive(sheet, joist.fieldSize(), MILLIMETRE.convert(joist.spacingMm(), INCH));
        } else {
            enterRepetitive(sheet, member.plies(), 0);
        }
    }

    /** Enters C_r of this many members side by side. */
    void enterRepetitive(Sheet sheet, int members, double spacingIn) {
        boolean shared = members >= parameters.number(LEAST_MEMBERS.name(), RATIO)
                && Sense.AT_MOST.holds(spacingIn, parameters.number(LARGEST_SPACING.name(), INCH))
                && Sense.AT_MOST.holds(lumber.thicknessIn(), parameters.number(LARGEST_THICKNESS.name(), INCH));
        enter(
                sheet,
                "C_r",
                shared ? parameters.number(REPETITIVE.name(), RATIO) : 1,
                shared ? "repetitive member factor" : "repetitive member factor, too few or too far apart",
                REPETITIVE);
    }
}
