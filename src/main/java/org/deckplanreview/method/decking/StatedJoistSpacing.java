package org.deckplanreview.method.decking;

import static org.deckplanreview.measure.MeasureUnit.DEGREE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.ManufacturedBoards;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/**
 * The largest spacing of the joists under manufactured boards against the one that their maker states. Boards that are not
 * square to the joists take the spacing that is stated for 45 degrees; it is no larger than the other one.
 */
final class StatedJoistSpacing implements Method {

    private static final String LEAST_JOISTS = "leastJoists";
    private static final String LARGEST_OVERHANG = "largestOverhang";
    private static final double SQUARE_DEGREES = 90;
    private static final double DIAGONAL_DEGREES = 45;

    private static final Formula SQUARE_SPACING = Formula.of("s = l * sin(α)", MILLIMETRE, "");
    private static final Formula UTILISATION = Formula.of("utilisation = s / s_max", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "decking.joistSpacing",
            ManufacturedDecking.SOURCE,
            "largest joist spacing under the boards",
            MILLIMETRE,
            ManufacturedDecking.SUBJECTS,
            List.of(
                    ParameterDescription.number(
                                    LEAST_JOISTS,
                                    RATIO,
                                    "the fewest joists under each board for which makers state spacings")
                            .higherIsStricter(),
                    ParameterDescription.number(
                                    LARGEST_OVERHANG,
                                    MILLIMETRE,
                                    "the largest length of board beyond the last joist that needs no word of the maker")
                            .lowerIsStricter()),
            "The largest distance between joists, square to them, against what the maker of manufactured boards states for"
                    + " boards square to the joists or at 45 degrees. Boards at less than 45 degrees to the joists, on too few"
                    + " joists or with a long overhang are out of scope.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return ManufacturedDecking.ofManufactured(
                subject, (field, boards) -> evaluate(field, boards, parameters, context));
    }

    private static Evaluation evaluate(
            BoardField field, ManufacturedBoards boards, Parameters parameters, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(field);
        Optional<JoistField> joists = platform.platform().joists();
        if (joists.isEmpty()) {
            return new Evaluation.Missing(
                    Derived.missing(platform.pointer().child("joists"), "the joists under " + field.label())
                            .needs());
        }
        double degrees = field.degreesTo(joists.get().direction());
        if (Sense.UNDER.holds(degrees, DIAGONAL_DEGREES)) {
            return new Evaluation.OutOfScope(
                    "makers state joist spacings for boards square to the joists and at 45 degrees, and these lie closer to"
                            + " the joists' length",
                    "");
        }
        if (platform.joists().size() < parameters.number(LEAST_JOISTS, RATIO)) {
            return new Evaluation.OutOfScope(
                    "makers state joist spacings for boards that run over several joists, and these lie on "
                            + platform.joists().size(),
                    parameters.source(LEAST_JOISTS));
        }
        boolean isSquare = Sense.AT_LEAST.holds(degrees, SQUARE_DEGREES);
        String member = isSquare ? "joistSpacing" : "diagonalJoistSpacing";
        Derived<Double> stated = Derived.of(
                        isSquare ? boards.joistSpacing() : boards.diagonalJoistSpacing(),
                        ManufacturedDecking.stated(field, member),
                        "the largest joist spacing that the maker states for boards "
                                + (isSquare ? "square to the joists" : "at 45 degrees to the joists"))
                .map(Length::mm);
        Derived<double[]> known =
                field.spanMm().with(field.overhangMm(), (span, overhang) -> new double[] {span, overhang});
        Derived<double[]> all = known.with(stated, (lengths, most) -> new double[] {lengths[0], lengths[1], most});
        if (!all.isKnown()) {
            return new Evaluation.Missing(all.needs());
        }
        if (Sense.OVER.holds(all.get()[1], parameters.number(LARGEST_OVERHANG, MILLIMETRE))) {
            return new Evaluation.OutOfScope(
                    "the boards reach further past the last joist than makers let them without saying so",
                    parameters.source(LARGEST_OVERHANG));
        }
        Sheet working = Sheet.blank();
        working.given(
                "α",
                degrees,
                DEGREE,
                "angle between the boards and the joists",
                "",
                field.pointer().child("direction"));
        working.given(
                "l",
                all.get()[0],
                MILLIMETRE,
                "largest distance between joists, along the boards",
                "",
                field.pointer());
        working.calculate(SQUARE_SPACING);
        working.given(
                "s_max",
                all.get()[2],
                MILLIMETRE,
                "largest joist spacing by the maker",
                "",
                ManufacturedDecking.stated(field, member));
        return ManufacturedDecking.atMost(working, UTILISATION, "s", "s_max");
    }
}
