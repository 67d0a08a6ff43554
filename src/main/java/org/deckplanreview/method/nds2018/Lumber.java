package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.Optional;
import org.deckplanreview.submission.Species;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/**
 * Visually graded lumber of one size, with the row of its design values.
 *
 * @param name for people, for example {@code southern-pine no.2}
 * @param thicknessIn the smaller side of one piece
 * @param widthIn the larger side
 */
record Lumber(String name, Species species, double thicknessIn, double widthIn, Table.Row row) {
    private static final String SPECIES = "species";
    private static final String GRADE = "grade";
    private static final String KIND = "lumber";
    private static final String THICKER_THAN = "thickerThan";
    private static final String THICKNESS = "thickness";
    private static final String WIDER_THAN = "widerThan";
    private static final String WIDTH = "width";

    static final ParameterDescription DESIGN_VALUES = ParameterDescription.table(
            "designValues",
            "reference design values by species, grade and nominal size; lumber names the kind by which the tables of"
                    + " factors go on",
            wordColumn(SPECIES),
            wordColumn(GRADE),
            wordColumn(KIND),
            numberColumn(THICKER_THAN, INCH),
            numberColumn(THICKNESS, INCH),
            numberColumn(WIDER_THAN, INCH),
            numberColumn(WIDTH, INCH),
            numberColumn(Property.BENDING.word(), POUND_FORCE_PER_SQUARE_INCH),
            numberColumn(Property.SHEAR.word(), POUND_FORCE_PER_SQUARE_INCH),
            numberColumn(Property.BEARING.word(), POUND_FORCE_PER_SQUARE_INCH),
            numberColumn(Property.COMPRESSION.word(), POUND_FORCE_PER_SQUARE_INCH),
            numberColumn(Property.ELASTICITY.word(), POUND_FORCE_PER_SQUARE_INCH),
            numberColumn(Property.STABILITY.word(), POUND_FORCE_PER_SQUARE_INCH));

    /** Empty where the table has no row for it, or species or grade are not given. */
    static Optional<Lumber> find(Parameters parameters, Timber timber) {
        double b = MILLIMETRE.convert(timber.breadth().mm(), INCH);
        double d = MILLIMETRE.convert(timber.depth().mm(), INCH);
        double thickness = Math.min(b, d);
        double width = Math.max(b, d);
        return timber.species()
                .flatMap(species -> timber.grade()
                        .flatMap(grade -> parameters.table(DESIGN_VALUES.name()).rows().stream()
                                .filter(r -> r.word(SPECIES).equals(species.word())
                                        && r.word(GRADE).equals(grade.word()))
                                .filter(r -> Sense.OVER.holds(thickness, r.number(THICKER_THAN, INCH))
                                        && Sense.OVER.holds(width, r.number(WIDER_THAN, INCH))
                                        && fits(r, thickness, width))
                                .findFirst()
                                .map(r -> new Lumber(
                                        timber.stiffnessName().orElseThrow(), species, thickness, width, r))));
    }

    private static boolean fits(Table.Row row, double thicknessIn, double widthIn) {
        return Sense.AT_MOST.holds(thicknessIn, row.number(THICKNESS, INCH))
                && Sense.AT_MOST.holds(widthIn, row.number(WIDTH, INCH));
    }

    private String kind() {
        return row.word(KIND);
    }

    /** psi. */
    double reference(Property property) {
        return row.number(property.word(), POUND_FORCE_PER_SQUARE_INCH);
    }

    /** The first row for this kind of lumber whose thickness and width it does not exceed. */
    Table.Row bySize(Table table) {
        return table.rows().stream()
                .filter(r -> r.word(KIND).equals(kind()) && fits(r, thicknessIn, widthIn))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(table.source() + " has no row for " + kind() + " of "
                        + thicknessIn + " in by " + widthIn + " in"));
    }

    /** The row for this kind of lumber and a property. */
    Table.Row byProperty(Table table, Property property) {
        return table.find(KIND, kind(), "property", property.word())
                .orElseThrow(() -> new IllegalArgumentException(
                        table.source() + " has no row for " + kind() + ", " + property.word()));
    }
}
