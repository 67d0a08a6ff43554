package org.deckplanreview.measure;

import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.YEAR;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.IncommensurableException;
import javax.measure.Unit;

/** The units that submissions, rulesets and reports may write, each backed by a JSR 385 unit. */
public enum MeasureUnit {
    MILLIMETRE("mm", MILLI(METRE)),
    METRE_("m", METRE),
    KILOMETRE("km", KILO(METRE)),
    INCH("in", InchPound.INCH),
    FOOT("ft", InchPound.FOOT),
    MILE("mi", InchPound.FOOT.multiply(5_280)),
    SQUARE_INCH("in2", InchPound.INCH.pow(2)),
    SQUARE_FOOT("ft2", InchPound.FOOT.pow(2)),
    CUBIC_INCH("in3", InchPound.INCH.pow(3)),
    CUBIC_FOOT("ft3", InchPound.FOOT.pow(3)),
    QUARTIC_INCH("in4", InchPound.INCH.pow(4)),
    SQUARE_MILLIMETRE("mm2", MILLI(METRE).pow(2)),
    SQUARE_METRE_("m2", SQUARE_METRE),
    CUBIC_MILLIMETRE("mm3", MILLI(METRE).pow(3)),
    CUBIC_METRE_("m3", CUBIC_METRE),
    QUARTIC_MILLIMETRE("mm4", MILLI(METRE).pow(4)),
    NEWTON_("N", NEWTON),
    KILONEWTON("kN", KILO(NEWTON)),
    POUND_FORCE("lbf", InchPound.POUND_FORCE),
    POUND_FORCE_INCH("lbf.in", InchPound.POUND_FORCE.multiply(InchPound.INCH)),
    POUND_FORCE_FOOT("lbf.ft", InchPound.POUND_FORCE.multiply(InchPound.FOOT)),
    POUND_FORCE_PER_FOOT("lbf/ft", InchPound.POUND_FORCE.divide(InchPound.FOOT)),
    POUND_FORCE_PER_INCH("lbf/in", InchPound.POUND_FORCE.divide(InchPound.INCH)),
    POUND_FORCE_PER_SQUARE_INCH("psi", InchPound.POUND_FORCE.divide(InchPound.INCH.pow(2))),
    POUND_FORCE_PER_SQUARE_FOOT("psf", InchPound.POUND_FORCE.divide(InchPound.FOOT.pow(2))),
    POUND_FORCE_PER_CUBIC_FOOT("pcf", InchPound.POUND_FORCE.divide(InchPound.FOOT.pow(3))),
    NEWTON_MILLIMETRE("N.mm", NEWTON.multiply(MILLI(METRE))),
    KILONEWTON_METRE("kN.m", KILO(NEWTON).multiply(METRE)),
    NEWTON_PER_MILLIMETRE("N/mm", NEWTON.divide(MILLI(METRE))),
    KILONEWTON_PER_METRE("kN/m", KILO(NEWTON).divide(METRE)),
    NEWTON_PER_SQUARE_MILLIMETRE("N/mm2", NEWTON.divide(MILLI(METRE).pow(2))),
    KILONEWTON_PER_SQUARE_METRE("kN/m2", KILO(NEWTON).divide(SQUARE_METRE)),
    KILONEWTON_PER_CUBIC_METRE("kN/m3", KILO(NEWTON).divide(CUBIC_METRE)),
    KILOGRAM_PER_CUBIC_METRE("kg/m3", KILOGRAM.divide(CUBIC_METRE)),
    POUND_PER_CUBIC_FOOT("lb/ft3", InchPound.POUND.divide(InchPound.FOOT.pow(3))),
    METRE_PER_SECOND_SQUARED("m/s2", METRE_PER_SQUARE_SECOND),
    DEGREE("deg", RADIAN.multiply(StrictMath.PI).divide(180)),
    YEAR_("years", YEAR),
    PERCENT_("%", PERCENT),
    RATIO("1", ONE);

    private final String symbol;
    private final Unit<?> unit;

    /** To find a converter takes far longer than to use it, and so does comparing dimensions. */
    private final Map<MeasureUnit, Factor> factors = new ConcurrentHashMap<>();

    private final Map<MeasureUnit, Boolean> alike = new ConcurrentHashMap<>();

    MeasureUnit(String symbol, Unit<?> unit) {
        this.symbol = symbol;
        this.unit = unit;
    }

    /** The symbol as rulesets and submissions write it, for example {@code kN/m2}. */
    public String symbol() {
        return symbol;
    }

    /** The JSR 385 unit behind the symbol. */
    public Unit<?> unit() {
        return unit;
    }

    /** Whether the two measure the same. An angle is no ratio, though JSR 385 gives both the dimension one. */
    public boolean sameDimension(MeasureUnit other) {
        return this == other || alike.computeIfAbsent(other, this::measuresLike);
    }

    private boolean measuresLike(MeasureUnit other) {
        return isAngle() == other.isAngle() && unit.isCompatible(other.unit);
    }

    private boolean isAngle() {
        return this == DEGREE;
    }

    /**
     * What a number is multiplied by and divided by; one of the two is 1. Dividing by 25.4 comes nearer to the true value
     * than multiplying by its rounded reciprocal.
     */
    private record Factor(double times, double over) {
        double convert(double value) {
            return value * times / over;
        }
    }

    /** All units here are multiples of each other, so that one conversion tells all; JSR 385 converts exactly and slowly. */
    private Factor factor(MeasureUnit to) {
        try {
            double there = unit.getConverterToAny(to.unit).convert(1.0);
            return there >= 1
                    ? new Factor(there, 1)
                    : new Factor(1, to.unit.getConverterToAny(unit).convert(1.0));
        } catch (IncommensurableException e) {
            throw new IllegalStateException("Units of one dimension convert", e);
        }
    }

    /**
     * Converts a value of this unit.
     *
     * @throws IllegalArgumentException if the two units measure different things
     */
    public double convert(double value, MeasureUnit to) {
        if (this == to) {
            return value;
        }
        Factor known = factors.get(to);
        if (known != null) {
            return known.convert(value);
        }
        if (!sameDimension(to)) {
            throw new IllegalArgumentException(symbol + " cannot be given in " + to.symbol);
        }
        return factors.computeIfAbsent(to, this::factor).convert(value);
    }

    public static Optional<MeasureUnit> ofSymbol(String symbol) {
        return Arrays.stream(values()).filter(u -> u.symbol.equals(symbol)).findFirst();
    }

    /** Symbols of all units. */
    public static List<String> symbols() {
        return Arrays.stream(values()).map(MeasureUnit::symbol).toList();
    }

    /** Symbols of the units that measure the same as this one, for messages. */
    public List<String> alternatives() {
        return Arrays.stream(values())
                .filter(this::sameDimension)
                .map(MeasureUnit::symbol)
                .toList();
    }
}
