package org.deckplanreview.method.en1995;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.Joint;
import org.deckplanreview.submission.JointKind;

/** Joints to try: fasteners 5 d apart in a row, rows 4 d apart, the first 5 d below the beam's upper edge. */
final class Joints {
    private final JointKind kind;
    private final double diameterMm;
    private final int count;
    private final int rows;
    private Optional<Length> spacing;
    private Optional<Length> edge;
    private Optional<Measure> steel = Optional.empty();
    private Optional<Length> washer = Optional.empty();
    private Optional<Length> penetration = Optional.empty();

    private Joints(JointKind kind, double diameterMm, int count, int rows) {
        this.kind = kind;
        this.diameterMm = diameterMm;
        this.count = count;
        this.rows = rows;
        spacing = Optional.of(Length.ofMm(5 * diameterMm));
        edge = Optional.of(Length.ofMm(5 * diameterMm));
    }

    static Joints bolts(double diameterMm, int count, int rows) {
        return new Joints(JointKind.BOLT, diameterMm, count, rows);
    }

    static Joints screws(double diameterMm, int count, int rows) {
        return new Joints(JointKind.SCREW, diameterMm, count, rows);
    }

    Joints steel(double fuk) {
        steel = Optional.of(Measure.of(fuk, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE));
        return this;
    }

    Joints washers(double mm) {
        washer = Optional.of(Length.ofMm(mm));
        return this;
    }

    Joints penetration(double mm) {
        penetration = Optional.of(Length.ofMm(mm));
        return this;
    }

    Joints edge(double mm) {
        edge = Optional.of(Length.ofMm(mm));
        return this;
    }

    Joints spacing(double mm) {
        spacing = Optional.of(Length.ofMm(mm));
        return this;
    }

    Joints withoutDistances() {
        spacing = Optional.empty();
        edge = Optional.empty();
        return this;
    }

    Joint make() {
        return new Joint(
                kind,
                Length.ofMm(diameterMm),
                count,
                rows,
                spacing,
                Optional.of(Length.ofMm(4 * diameterMm)),
                Optional.of(Length.ofMm(90)),
                edge,
                steel,
                washer,
                Optional.empty(),
                penetration);
    }
}
