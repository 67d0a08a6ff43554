package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.layout.TimberPiece;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** The characteristic bending strength f_m,k that a timber is graded for, by its strength class of EN 338:2016, Table 1. */
final class GradedStrength implements Method {
    private static final ParameterDescription LEAST = ParameterDescription.number(
                    "leastBendingStrength", NEWTON_PER_SQUARE_MILLIMETRE, "least f_m,k that the timber is graded for")
            .higherIsStricter();

    private static final Utilisation UTILISATION =
            Utilisation.atLeast("f_m,k", "f_m,min", NEWTON_PER_SQUARE_MILLIMETRE, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.gradedStrength",
            "EN 338:2016, Table 1",
            "f_m,k",
            NEWTON_PER_SQUARE_MILLIMETRE,
            List.of(SubjectKind.JOISTS, SubjectKind.BEAMS, SubjectKind.LEDGERS, SubjectKind.POSTS),
            List.of(StrengthClass.TABLE, LEAST),
            "The characteristic bending strength of the timber's strength class against the least that is asked for.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        Timber timber = ((TimberPiece) subject).timber();
        Pointer pointer = context.submission().timberPointer(timber.id()).child("strengthClass");
        if (timber.strengthClass().isEmpty()) {
            return new Evaluation.Missing(
                    List.of(new Need(pointer, "the strength class of " + timber.displayLabel() + ", for example C24")));
        }
        String name = timber.strengthClass().get();
        Optional<StrengthClass> graded = StrengthClass.find(parameters, name);
        if (graded.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "Strength class " + name + " is not in the table", parameters.source(StrengthClass.TABLE.name()));
        }
        Sheet w = Sheet.blank();
        w.given(
                "f_m,k",
                graded.get().fmk(),
                NEWTON_PER_SQUARE_MILLIMETRE,
                () -> "characteristic bending strength, " + name,
                parameters.source(StrengthClass.TABLE.name()),
                pointer);
        parameters.enter(w, "f_m,min", LEAST);
        return UTILISATION.of(w, () -> name, List::of).measured();
    }
}
