package org.deckplanreview.loadpath;

import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.loadpath.LoadModel.Material;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.ManufacturedBoards;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;

/** Self-weight of timber, by mean density and section. */
final class Weights {

    private static final double M3_PER_MM3 = 1e-9;
    private static final double N_PER_MM2_OF_KN_PER_M2 = 1e-3;

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

    Derived<Double> ofMemberNPerMm(Member member) {
        Timber t = member.timber();
        return material(t)
                .map(m -> weightPerMm3(m)
                        * member.plies()
                        * t.breadth().mm()
                        * t.depth().mm());
    }

    /** Boards' weight over their area with gaps; without a gap where none is given, which is heavier. */
    Derived<Double> ofBoardsNPerMm2(BoardField field) {
        Timber t = field.timber();
        return field.boards()
                .manufactured()
                .map(boards -> ofManufacturedNPerMm2(field, boards))
                .orElseGet(() -> material(t)
                        .map(m -> weightPerMm3(m) * t.depth().mm() * t.breadth().mm() / pitchMm(field)));
    }

    private static Derived<Double> ofManufacturedNPerMm2(BoardField field, ManufacturedBoards boards) {
        return Derived.of(
                        boards.weight(),
                        field.pointer().child("manufactured").child("weight"),
                        "the weight of " + field.label() + ", for example 0.25 kN/m2")
                .map(weight -> nPerMm2(weight.in(MeasureUnit.KILONEWTON_PER_SQUARE_METRE)));
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
