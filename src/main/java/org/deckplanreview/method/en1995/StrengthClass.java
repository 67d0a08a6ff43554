package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.KILOGRAM_PER_CUBIC_METRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.Optional;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Characteristic values of a strength class, N/mm2 and kg/m3. */
record StrengthClass(
        String name,
        boolean softwood,
        double fmk,
        double fc0k,
        double fc90k,
        double fvk,
        double e0Mean,
        double e005,
        double gMean,
        double rhoK) {
    static final ParameterDescription TABLE = ParameterDescription.table(
            "strengthClasses",
            "characteristic strengths, stiffness and densities of each strength class; kind is softwood or hardwood",
            wordColumn("class"),
            wordColumn("kind"),
            numberColumn("fmk", NEWTON_PER_SQUARE_MILLIMETRE),
            numberColumn("fc0k", NEWTON_PER_SQUARE_MILLIMETRE),
            numberColumn("fc90k", NEWTON_PER_SQUARE_MILLIMETRE),
            numberColumn("fvk", NEWTON_PER_SQUARE_MILLIMETRE),
            numberColumn("e0Mean", NEWTON_PER_SQUARE_MILLIMETRE),
            numberColumn("e005", NEWTON_PER_SQUARE_MILLIMETRE),
            numberColumn("gMean", NEWTON_PER_SQUARE_MILLIMETRE),
            numberColumn("rhoK", KILOGRAM_PER_CUBIC_METRE));

    /** Empty where the ruleset's table does not have the class. */
    static Optional<StrengthClass> find(Parameters parameters, String name) {
        return parameters
                .table(TABLE.name())
                .find("class", name)
                .map(r -> new StrengthClass(
                        name,
                        r.word("kind").equals("softwood"),
                        r.number("fmk", NEWTON_PER_SQUARE_MILLIMETRE),
                        r.number("fc0k", NEWTON_PER_SQUARE_MILLIMETRE),
                        r.number("fc90k", NEWTON_PER_SQUARE_MILLIMETRE),
                        r.number("fvk", NEWTON_PER_SQUARE_MILLIMETRE),
                        r.number("e0Mean", NEWTON_PER_SQUARE_MILLIMETRE),
                        r.number("e005", NEWTON_PER_SQUARE_MILLIMETRE),
                        r.number("gMean", NEWTON_PER_SQUARE_MILLIMETRE),
                        r.number("rhoK", KILOGRAM_PER_CUBIC_METRE)));
    }

    /** As the tables of factors name it. */
    String kind() {
        return softwood ? "softwood" : "hardwood";
    }
}
