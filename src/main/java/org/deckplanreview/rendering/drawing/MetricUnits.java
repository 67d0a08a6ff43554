package org.deckplanreview.rendering.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;

/** Millimetres, kilonewtons; the scales of ISO 5455 and 1:25, which is common practice for timber frames. */
final class MetricUnits implements ShownUnits {

    private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_UP);
    private static final List<Scale> SCALES = IntStream.of(10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000, 10_000)
            .mapToObj(n -> new Scale(n, "1:" + n))
            .toList();
    private static final double LEAST_BAR_MM = 15;
    private static final double[] BAR_STEPS = {200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000};
    private static final double METRE = 1000;

    @Override
    public String length(double mm) {
        return decimals(mm, 1);
    }

    @Override
    public String section(double breadthMm, double depthMm) {
        return length(breadthMm) + " × " + length(depthMm);
    }

    @Override
    public String force(double newton) {
        return digits(newton / METRE) + " kN";
    }

    @Override
    public String moment(double newtonMm) {
        return digits(newtonMm / METRE / METRE) + " kN·m";
    }

    @Override
    public String lineLoad(double newtonPerMm) {
        return digits(newtonPerMm) + " kN/m";
    }

    @Override
    public String deflection(double mm) {
        return digits(mm) + " mm";
    }

    @Override
    public String told() {
        return "Lengths and levels in mm";
    }

    @Override
    public List<Scale> scales() {
        return SCALES;
    }

    @Override
    public double barStepMm(Scale scale) {
        for (double step : BAR_STEPS) {
            if (scale.onSheet(step) >= LEAST_BAR_MM) {
                return step;
            }
        }
        return BAR_STEPS[BAR_STEPS.length - 1];
    }

    @Override
    public String barLength(double mm) {
        return decimals(mm / METRE, 1) + " m";
    }

    static String digits(double value) {
        BigDecimal n = new BigDecimal(value).round(THREE_DIGITS).stripTrailingZeros();
        return n.signum() == 0 ? "0" : n.toPlainString();
    }

    static String decimals(double value, int decimals) {
        BigDecimal n =
                new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return n.signum() == 0 ? "0" : n.toPlainString();
    }
}
