package org.deckplanreview.rendering.drawing;

import java.util.List;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;

/** Feet, inches and sixteenths, pounds-force; scales of so many inches or parts of one to a foot (common practice). */
final class InchUnits implements ShownUnits {

    private static final double INCH_MM = MeasureUnit.INCH.convert(1, MeasureUnit.MILLIMETRE);
    private static final int INCHES = 12;
    private static final List<Scale> SCALES = List.of(
            new Scale(12, "1 in = 1 ft (1:12)"),
            new Scale(24, "1/2 in = 1 ft (1:24)"),
            new Scale(48, "1/4 in = 1 ft (1:48)"),
            new Scale(96, "1/8 in = 1 ft (1:96)"),
            new Scale(192, "1/16 in = 1 ft (1:192)"),
            new Scale(480, "1 in = 40 ft (1:480)"),
            new Scale(1200, "1 in = 100 ft (1:1200)"),
            new Scale(2400, "1 in = 200 ft (1:2400)"),
            new Scale(12_000, "1 in = 1000 ft (1:12000)"));
    private static final double LEAST_BAR_MM = 15;
    private static final int[] BAR_FEET = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

    @Override
    public String length(double mm) {
        return Phrases.of(Measure.mm(mm), UnitSystem.INCH_POUND);
    }

    @Override
    public String section(double breadthMm, double depthMm) {
        return length(breadthMm) + " × " + length(depthMm);
    }

    @Override
    public String force(double newton) {
        return shown(newton, MeasureUnit.NEWTON_);
    }

    @Override
    public String moment(double newtonMm) {
        return shown(newtonMm, MeasureUnit.NEWTON_MILLIMETRE);
    }

    @Override
    public String lineLoad(double newtonPerMm) {
        return shown(newtonPerMm, MeasureUnit.NEWTON_PER_MILLIMETRE);
    }

    @Override
    public String deflection(double mm) {
        return shown(mm, MeasureUnit.MILLIMETRE);
    }

    private static String shown(double value, MeasureUnit unit) {
        Measure m = UnitSystem.INCH_POUND.measure(Measure.of(value, unit));
        return MetricUnits.digits(m.value()) + " " + Phrases.unit(m.unit());
    }

    @Override
    public String told() {
        return "Lengths and levels in feet and inches";
    }

    @Override
    public List<Scale> scales() {
        return SCALES;
    }

    @Override
    public double barStepMm(Scale scale) {
        for (int feet : BAR_FEET) {
            if (scale.onSheet(feet * INCHES * INCH_MM) >= LEAST_BAR_MM) {
                return feet * INCHES * INCH_MM;
            }
        }
        return BAR_FEET[BAR_FEET.length - 1] * INCHES * INCH_MM;
    }

    @Override
    public String barLength(double mm) {
        return MetricUnits.decimals(mm / INCH_MM / INCHES, 1) + " ft";
    }
}
