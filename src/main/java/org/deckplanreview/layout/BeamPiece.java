package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.PlanLine;

/**
 * A beam between two joints of its plies, or its end. Nothing passes a joint: each piece spans by itself.
 *
 * @param fromMm along the whole beam
 * @param toMm along the whole beam
 */
record BeamPiece(PlanLine line, double fromMm, double toMm, boolean isLast) {

    /** In order along the beam; the beam itself where it has no joints within its length. */
    static List<BeamPiece> of(Beam beam) {
        double length = Axis.length(beam.line());
        List<Double> joints = beam.plyJoints().stream()
                .map(Length::mm)
                .filter(at -> at > 0 && at < length)
                .sorted()
                .distinct()
                .toList();
        if (joints.isEmpty()) {
            return List.of(new BeamPiece(beam.line(), 0, length, true));
        }
        List<BeamPiece> pieces = new ArrayList<>();
        double from = 0;
        for (double at : joints) {
            pieces.add(of(beam, from, at, length));
            from = at;
        }
        pieces.add(of(beam, from, length, length));
        return pieces;
    }

    private static BeamPiece of(Beam beam, double from, double to, double length) {
        return new BeamPiece(
                new PlanLine(Axis.pointAt(beam.line(), from / length), Axis.pointAt(beam.line(), to / length)),
                from,
                to,
                to == length);
    }

    double lengthMm() {
        return toMm - fromMm;
    }

    /** Those of the whole beam's joists whose middle lies on this piece, measured along it. */
    List<JoistBearing> bearings(List<JoistBearing> ofBeam) {
        return ofBeam.stream()
                .filter(b -> b.atMm() >= fromMm && (b.atMm() < toMm || isLast))
                .map(b -> new JoistBearing(b.joist(), b.joistSupport(), b.atMm() - fromMm))
                .toList();
    }
}
