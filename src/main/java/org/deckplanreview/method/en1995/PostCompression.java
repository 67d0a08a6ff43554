package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
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
import org.deckplanreview.vocabulary.Sense;

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
        return PostBasis.evaluate(
                (PostPlace) subject,
                parameters,
                context,
                basis -> Case.worst(basis.combinations().stream()
                        .map(c -> new Loaded(basis, c, basis.column(c, 0, 0, Modification.of(parameters, c.factors()))))
                        .toList()));
    }

    /** The post under one combination. */
    private record Loaded(PostBasis basis, Combination combination, Column column) implements Case {
        @Override
        public double utilisation() {
            return column.utilisation();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(utilisation(), RATIO),
                    Sense.AT_MOST,
                    Measure.of(1, RATIO),
                    utilisation(),
                    buckling() + ", combination " + combination.id() + ", "
                            + column.modification().duration(),
                    working(),
                    basis.assumptions(List.of()));
        }

        private String buckling() {
            Buckling worst = column.yGoverns() ? column.y() : column.z();
            return (column.yGoverns() ? PostBasis.ACROSS : PostBasis.ALONG) + ", effective length "
                    + basis.context().written(Measure.mm(worst.effectiveLengthMm()));
        }

        private List<WorkingStep> working() {
            Sheet w = Sheet.blank();
            basis.writeLoads(w, combination);
            if (basis.eccentricityMm() > 0) {
                w.step("M_y,d", "M_e,d", column.momentYNmm(), NEWTON_MILLIMETRE, "");
            }
            basis.writeColumn(w, column);
            return w.steps();
        }
    }
}
