package org.deckplanreview.rendering.drawing;

import java.util.List;
import org.deckplanreview.submission.LengthUnit;

/** How a drawing writes lengths, forces and scales, by the unit that the submission is written in. */
interface ShownUnits {

    static ShownUnits of(LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> new MetricUnits();
            case INCH -> new InchUnits();
        };
    }

    /** Without its unit, which the title block tells. */
    String length(double mm);

    /** With its sign. */
    default String level(double mm) {
        String size = length(Math.abs(mm));
        if (size.equals(length(0))) {
            return "±" + size;
        }
        return (mm < 0 ? "−" : "+") + size;
    }

    /** Breadth and depth of a timber. */
    String section(double breadthMm, double depthMm);

    String force(double newton);

    String moment(double newtonMm);

    String lineLoad(double newtonPerMm);

    String deflection(double mm);

    /** What the title block says of the units. */
    String told();

    /** From the largest picture to the smallest. */
    List<Scale> scales();

    /** The round length of which a scale bar shows two, mm. */
    double barStepMm(Scale scale);

    /** A length on the scale bar, with its unit. */
    String barLength(double mm);
}
