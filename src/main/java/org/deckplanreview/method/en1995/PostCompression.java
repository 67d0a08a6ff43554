package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Posts in compression, with the bending from a beam on one side: 6.2.4 (6.19), (6.20) and 6.3.2 (6.21) to (6.29). */
final class PostCompression implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.post",
            En1995.SOURCE,
            "use of the post's strength",
            RATIO,
            List.of(SubjectKind.POSTS),
            PostBasis.PARAMETERS,
            "Largest left side of (6.23) and (6.24), or of (6.19) and (6.20) for a post that cannot buckle, over all"
                    + " combinations: load from the beams and the post's weight, buckling along and across the beam, and the"
                    + " moment of a beam on one side of the post.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return PostBasis.evaluate((PostPlace) subject, parameters, context, PostCompression::worst);
    }

    private static Evaluation worst(PostBasis basis) {
        Column column = basis.column();
        return Case.worst(
                basis.combinations().stream().map(c -> loaded(basis, column, c)).toList());
    }

    private static Case loaded(PostBasis basis, Column column, Combination combination) {
        Sheet loads = basis.loads(combination);
        double moment = basis.isEccentric() ? loads.calculate(PostBasis.MOMENT_OF_SEAT) : 0;
        Modification modification = Modification.of(basis.parameters(), combination.factors());
        return column.under(
                loads,
                moment,
                0,
                modification,
                used -> (used.yGoverns() ? PostBasis.ACROSS : PostBasis.ALONG) + ", effective length "
                        + basis.context().written(Measure.mm(used.sheet().value(used.yGoverns() ? "l_ef,y" : "l_ef,z")))
                        + ", combination " + combination.id() + ", " + modification.duration(),
                () -> basis.assumptions(List.of()));
    }
}
