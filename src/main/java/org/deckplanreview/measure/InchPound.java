package org.deckplanreview.measure;

import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.NEWTON;

import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;

/**
 * The inch and the pound, exact by the international yard and pound agreement of 1959, and the pound-force at standard
 * gravity, 9.80665 m/s2 (ISO 80000-4:2006, Annex C).
 */
final class InchPound {

    static final Unit<Length> INCH = METRE.multiply(254).divide(10_000);
    static final Unit<Length> FOOT = METRE.multiply(3_048).divide(10_000);
    static final Unit<Mass> POUND = KILOGRAM.multiply(45_359_237).divide(100_000_000);
    static final Unit<Force> POUND_FORCE = NEWTON.multiply(44_482_216_152_605L).divide(10_000_000_000_000L);

    private InchPound() {}
}
