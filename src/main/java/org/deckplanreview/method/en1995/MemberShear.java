package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Shear of joists and beams, 6.1.7 (6.13) with (6.13a). Load near a support is not left out. */
final class MemberShear implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.shear",
            En1995.SOURCE,
            "shear stress",
            NEWTON_PER_SQUARE_MILLIMETRE,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(Inputs.OF_STRENGTH, SystemStrength.PARAMETERS, ShearStress.KCR),
            "Largest shear stress beside a support over all combinations, on the breadth that cracks leave (6.13a), against"
                    + " the design shear strength: equation (6.13).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return MemberBasis.evaluate(subject, parameters, context, MemberShear::worst);
    }

    private static Evaluation worst(MemberBasis basis) {
        Sheet breadth = Sheet.on(basis.start());
        ShearStress.enterBreadth(breadth, basis.parameters());
        return ShearStress.worst(basis, breadth, ShearStress.OF_RECTANGLE, ShearStress.UTILISATION, List.of());
    }
}
