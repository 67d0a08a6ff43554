package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Yielding of a fastener in two timbers, 8.2.2. In double shear the first timber stands on both sides of the second.
 *
 * @param fh1 f_h,1,k of the beam, N/mm2
 * @param t1Mm thickness of the beam on one side of the post
 * @param fh2 f_h,2,k of the post, N/mm2
 * @param t2Mm thickness of the post, or penetration of a screw into it
 * @param dMm diameter
 * @param myNmm M_y,Rk
 */
record Johansen(
        double fh1, double t1Mm, double fh2, double t2Mm, double dMm, double myNmm, double oneHinge, double twoHinges) {
    static final ParameterDescription ONE_HINGE = ParameterDescription.number(
            "johansenOneHinge", RATIO, "factor of the modes with one plastic hinge in each shear plane");
    static final ParameterDescription TWO_HINGES = ParameterDescription.number(
            "johansenTwoHinges", RATIO, "factor of the modes with two plastic hinges in each shear plane");
    static final List<ParameterDescription> PARAMETERS = List.of(ONE_HINGE, TWO_HINGES);

    private static final String BEAM_CRUSHES = "the beam crushes under the fasteners";
    private static final String POST_CRUSHES = "the post crushes under the fasteners";
    private static final String HINGE_IN_POST = "the fasteners tilt in the beam and bend in the post";
    private static final String TWO_BENDS = "the fasteners bend in beam and post";

    static Johansen of(Parameters p, double fh1, double t1Mm, double fh2, double t2Mm, double dMm, double myNmm) {
        return new Johansen(
                fh1,
                t1Mm,
                fh2,
                t2Mm,
                dMm,
                myNmm,
                p.number(ONE_HINGE.name(), RATIO),
                p.number(TWO_HINGES.name(), RATIO));
    }

    /** β = f_h,2,k / f_h,1,k, (8.8). */
    double beta() {
        return fh2 / fh1;
    }

    /** Timber to timber, one shear plane, (8.6) a to f. */
    List<YieldMode> singleShear() {
        return List.of(
                new YieldMode("a", BEAM_CRUSHES, fh1 * t1Mm * dMm, "f_h,1,k * t_1 * d", false),
                new YieldMode("b", POST_CRUSHES, fh2 * t2Mm * dMm, "f_h,2,k * t_2 * d", false),
                new YieldMode(
                        "c",
                        "the fasteners tilt in beam and post",
                        tilting(),
                        "f_h,1,k * t_1 * d / (1 + β) * (sqrt(β + 2 * β^2 * (1 + t_2 / t_1 + (t_2 / t_1)^2) + β^3 * (t_2 / t_1)^2)"
                                + " - β * (1 + t_2 / t_1))",
                        true),
                new YieldMode("d", HINGE_IN_POST, hingeInSecond(), hingeInSecondText(), true),
                new YieldMode(
                        "e",
                        "the fasteners tilt in the post and bend in the beam",
                        hingeInFirst(),
                        Numbers.plain(oneHinge)
                                + " * f_h,1,k * t_2 * d / (1 + 2 * β) * (sqrt(2 * β^2 * (1 + β) + 4 * β * (1 + 2 * β) * M_y,Rk"
                                + " / (f_h,1,k * d * t_2^2)) - β)",
                        true),
                new YieldMode("f", TWO_BENDS, twoHingesN(), twoHingesText(), true));
    }

    /** Timber to timber, for each of two shear planes, (8.7) g to k. */
    List<YieldMode> doubleShear() {
        return List.of(
                new YieldMode("g", BEAM_CRUSHES, fh1 * t1Mm * dMm, "f_h,1,k * t_1 * d", false),
                new YieldMode("h", POST_CRUSHES, fh2 * t2Mm * dMm / 2, "f_h,2,k * t_2 * d / 2", false),
                new YieldMode("j", HINGE_IN_POST, hingeInSecond(), hingeInSecondText(), true),
                new YieldMode("k", TWO_BENDS, twoHingesN(), twoHingesText(), true));
    }

    private double tilting() {
        double b = beta();
        double r = t2Mm / t1Mm;
        double root = Math.sqrt(b + 2 * b * b * (1 + r + r * r) + b * b * b * r * r);
        return fh1 * t1Mm * dMm / (1 + b) * (root - b * (1 + r));
    }

    private double hingeInSecond() {
        double b = beta();
        double root = Math.sqrt(2 * b * (1 + b) + 4 * b * (2 + b) * myNmm / (fh1 * dMm * t1Mm * t1Mm));
        return oneHinge * fh1 * t1Mm * dMm / (2 + b) * (root - b);
    }

    private String hingeInSecondText() {
        return Numbers.plain(oneHinge)
                + " * f_h,1,k * t_1 * d / (2 + β) * (sqrt(2 * β * (1 + β) + 4 * β * (2 + β) * M_y,Rk / (f_h,1,k * d * t_1^2))"
                + " - β)";
    }

    private double hingeInFirst() {
        double b = beta();
        double root = Math.sqrt(2 * b * b * (1 + b) + 4 * b * (1 + 2 * b) * myNmm / (fh1 * dMm * t2Mm * t2Mm));
        return oneHinge * fh1 * t2Mm * dMm / (1 + 2 * b) * (root - b);
    }

    private double twoHingesN() {
        double b = beta();
        return twoHinges * Math.sqrt(2 * b / (1 + b)) * Math.sqrt(2 * myNmm * fh1 * dMm);
    }

    private String twoHingesText() {
        return Numbers.plain(twoHinges) + " * sqrt(2 * β / (1 + β)) * sqrt(2 * M_y,Rk * f_h,1,k * d)";
    }
}
