package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * A joint of dowel-type fasteners.
 *
 * @param diameter of the shank; of a screw its outer thread diameter
 * @param count fasteners in the joint
 * @param rows lines of fasteners along the grain of the post
 * @param spacing between fasteners of one row
 * @param rowSpacing between rows
 * @param endDistance from the nearest fastener to the upper end of the post
 * @param edgeDistance from the nearest fastener to the loaded edge of the beam, the upper one where posts carry it
 * @param tensileStrength N/mm2, characteristic, of the fastener's steel
 * @param penetration of a screw into the piece that holds its point
 */
public record Joint(
        JointKind kind,
        Length diameter,
        int count,
        int rows,
        Optional<Length> spacing,
        Optional<Length> rowSpacing,
        Optional<Length> endDistance,
        Optional<Length> edgeDistance,
        Optional<Measure> tensileStrength,
        Optional<Length> washerDiameter,
        Optional<Length> washerThickness,
        Optional<Length> penetration) {}
