package org.deckplanreview.loadpath;

import static org.deckplanreview.measure.MeasureUnit.KILOGRAM_PER_CUBIC_METRE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.METRE_PER_SECOND_SQUARED;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.loadpath.LoadModel.Material;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.ManufacturedBoards;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;

/** Self-weight of timber, by mean density and section. */
final class Weights {

    private static final double M3_PER_MM3 = 1e-9;
    private static final double N_PER_MM2_OF_KN_PER_M2 = 1e-3;

    private static final Formula OF_MEMBER = Formula.of("g_m = ρ_m * g_n * b_m * h_m", NEWTON_PER_MILLIMETRE, "");
    private static final Formula OF_PLIES = Formula.of("g_m = n_m * ρ_m * g_n * b_m * h_m", NEWTON_PER_MILLIMETRE, "");
    private static final Formula OF_BOARDS = Formula.of("g_b = ρ_b * g_n * h_b", KILONEWTON_PER_SQUARE_METRE, "");
    private static final Formula OF_BOARDS_WITH_GAPS =
            Formula.of("g_b = ρ_b * g_n * h_b * b_b / (b_b + s_b)", KILONEWTON_PER_SQUARE_METRE, "");

    private final Submission submission;
    private final LoadModel model;

    Weights(Submission submission, LoadModel model) {
        this.submission = submission;
        this.model = model;
    }

    static double nPerMm2(double kNPerM2) {
        return kNPerM2 * N_PER_MM2_OF_KN_PER_M2;
    }

    static double kNPerM2(double nPerMm2) {
        return nPerMm2 / N_PER_MM2_OF_KN_PER_M2;
    }

    /** Stiffness and density; missing where the submission grades the timber in no way that the model knows. */
    Derived<Material> material(Timber timber) {
        Optional<Material> material =
                timber.stiffnessName().map(name -> model.materials().get(name));
        return material.isPresent() ? Derived.known(material.get()) : new Grading(submission, model).missing(timber);
    }

    /** The weight g_m of a joist or beam, N/mm, and how it comes about. */
    Derived<Sheet> ofMember(Member member) {
        Timber t = member.timber();
        return material(t).map(m -> {
            Sheet sheet = Sheet.blank();
            enterDensity(sheet, "ρ_m", m, t);
            enterSection(sheet, "m", t, "the member");
            if (member.plies() == 1) {
                sheet.calculate(OF_MEMBER);
            } else {
                sheet.given(
                        "n_m",
                        member.plies(),
                        RATIO,
                        "plies",
                        "",
                        member.pointer().child("plies"));
                sheet.calculate(OF_PLIES);
            }
            return sheet;
        });
    }

    Derived<Double> ofMemberNPerMm(Member member) {
        return ofMember(member).map(s -> s.value("g_m"));
    }

    /** The boards' weight g_b over their area with gaps, kN/m2; without a gap where none is given, which is heavier. */
    Derived<Sheet> ofBoards(BoardField field) {
        return field.boards()
                .manufactured()
                .map(boards -> ofManufactured(field, boards))
                .orElseGet(() -> material(field.timber()).map(m -> ofSawn(field, m)));
    }

    private Sheet ofSawn(BoardField field, Material material) {
        Timber t = field.timber();
        Sheet sheet = Sheet.blank();
        enterDensity(sheet, "ρ_b", material, t);
        Optional<Length> gap = field.boards().gap();
        if (gap.isEmpty()) {
            enterDepth(sheet, "b", t, "a board");
            sheet.calculate(OF_BOARDS);
        } else {
            enterSection(sheet, "b", t, "a board");
            sheet.given(
                    "s_b",
                    gap.get().mm(),
                    MILLIMETRE,
                    "gap between boards",
                    "",
                    field.pointer().child("gap"));
            sheet.calculate(OF_BOARDS_WITH_GAPS);
        }
        return sheet;
    }

    private static Derived<Sheet> ofManufactured(BoardField field, ManufacturedBoards boards) {
        Pointer weight = field.pointer().child("manufactured").child("weight");
        return Derived.of(boards.weight(), weight, "the weight of " + field.label() + ", for example 0.25 kN/m2")
                .map(w -> {
                    Sheet sheet = Sheet.blank();
                    sheet.given(
                            "g_b",
                            w.in(KILONEWTON_PER_SQUARE_METRE),
                            KILONEWTON_PER_SQUARE_METRE,
                            "weight of the boards",
                            "",
                            weight);
                    return sheet;
                });
    }

    private void enterDensity(Sheet sheet, String symbol, Material material, Timber timber) {
        sheet.given(
                symbol,
                material.meanDensityKgPerM3(),
                KILOGRAM_PER_CUBIC_METRE,
                () -> "mean density of " + timber.displayLabel(),
                "",
                submission.timberPointer(timber.id()));
        sheet.given("g_n", model.gravityMPerS2(), METRE_PER_SECOND_SQUARED, "acceleration of free fall", "");
    }

    private void enterSection(Sheet sheet, String index, Timber timber, String of) {
        sheet.given(
                "b_" + index,
                timber.breadth().mm(),
                MILLIMETRE,
                "breadth of " + of,
                "",
                submission.timberPointer(timber.id()).child("breadth"));
        enterDepth(sheet, index, timber, of);
    }

    private void enterDepth(Sheet sheet, String index, Timber timber, String of) {
        sheet.given(
                "h_" + index,
                timber.depth().mm(),
                MILLIMETRE,
                "depth of " + of,
                "",
                submission.timberPointer(timber.id()).child("depth"));
    }

    /** From one board to the next. */
    static double pitchMm(BoardField field) {
        return field.timber().breadth().mm()
                + field.boards().gap().map(Length::mm).orElse(0.0);
    }

    /** The whole length of the post, the embedded part included. */
    Derived<Double> ofPostN(PostPlace post) {
        Timber t = post.timber();
        Derived<Double> length = post.topLevelMm().with(post.bottomLevelMm(), (top, bottom) -> top - bottom);
        return material(t)
                .with(
                        length,
                        (m, mm) ->
                                weightPerMm3(m) * t.breadth().mm() * t.depth().mm() * mm);
    }

    private double weightPerMm3(Material m) {
        return m.meanDensityKgPerM3() * model.gravityMPerS2() * M3_PER_MM3;
    }
}
