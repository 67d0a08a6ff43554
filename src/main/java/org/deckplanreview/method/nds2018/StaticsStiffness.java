package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.Optional;
import org.deckplanreview.vocabulary.ParameterDescription;

/** The modulus of elasticity with which the statics found deflections, psi. */
record StaticsStiffness(double psi) {
    private static final String CLASS = "class";
    private static final String E0_MEAN = "e0Mean";

    static final ParameterDescription TABLE = ParameterDescription.table(
            "strengthClasses",
            "modulus of elasticity of each species and grade, as the loads of the edition give it to the statics",
            wordColumn(CLASS),
            numberColumn(E0_MEAN, POUND_FORCE_PER_SQUARE_INCH));

    /** Empty where the table does not have the lumber. */
    static Optional<StaticsStiffness> of(MemberBasis basis) {
        return basis.parameters()
                .table(TABLE.name())
                .find(CLASS, basis.adjustments().lumber().name())
                .map(r -> new StaticsStiffness(r.number(E0_MEAN, POUND_FORCE_PER_SQUARE_INCH)));
    }
}
