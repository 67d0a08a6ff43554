package org.deckplanreview.formula;

import java.util.Map;
import org.deckplanreview.measure.MeasureUnit;
import tech.units.indriya.unit.UnitDimension;

/** What a value measures, as powers of mass, length, time and angle. */
record Dimension(double mass, double length, double time, double angle) {
    static final Dimension NONE = new Dimension(0, 0, 0, 0);

    static Dimension of(MeasureUnit unit) {
        javax.measure.Dimension dimension = unit.unit().getDimension();
        Map<? extends javax.measure.Dimension, Integer> powers = dimension.getBaseDimensions();
        Map<? extends javax.measure.Dimension, Integer> of = powers == null ? Map.of(dimension, 1) : powers;
        return new Dimension(
                power(of, UnitDimension.MASS),
                power(of, UnitDimension.LENGTH),
                power(of, UnitDimension.TIME),
                unit == MeasureUnit.DEGREE ? 1 : 0);
    }

    private static int power(Map<? extends javax.measure.Dimension, Integer> powers, javax.measure.Dimension of) {
        Integer power = powers.get(of);
        return power == null ? 0 : power;
    }

    Dimension times(Dimension other) {
        return new Dimension(mass + other.mass, length + other.length, time + other.time, angle + other.angle);
    }

    Dimension over(Dimension other) {
        return times(other.to(-1));
    }

    Dimension to(double power) {
        return equals(NONE) ? NONE : new Dimension(mass * power, length * power, time * power, angle * power);
    }

    /** Equal but for the sign of nought. */
    boolean isSame(Dimension other) {
        return mass == other.mass && length == other.length && time == other.time && angle == other.angle;
    }
}
