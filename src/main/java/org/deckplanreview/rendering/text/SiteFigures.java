package org.deckplanreview.rendering.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.deckplanreview.measure.FeetInches;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.UnitSystem;

/** Figures of the site schedule, as a tape of each system of units shows them. */
public enum SiteFigures {
    /** Lengths and levels in whole mm, but for what is cut to less. */
    METRIC("mm", "m3", 10, 12) {
        @Override
        public String length(double mm) {
            return decimals(mm, 0);
        }

        @Override
        public String fine(double mm) {
            return decimals(mm, 1);
        }

        @Override
        public String inAll(double mm) {
            return decimals(MeasureUnit.MILLIMETRE.convert(mm, MeasureUnit.METRE_), 2) + " m";
        }

        @Override
        public String area(double m2) {
            return decimals(m2, 2) + " m2";
        }

        @Override
        public String volume(double m3) {
            return decimals(m3, 3);
        }
    },

    /** Lengths and levels in feet and inches to a sixteenth. */
    INCH_POUND("feet and inches", "ft3", 15, 20) {
        @Override
        public String length(double mm) {
            return FeetInches.of(MeasureUnit.MILLIMETRE.convert(mm, MeasureUnit.INCH));
        }

        @Override
        public String fine(double mm) {
            return length(mm);
        }

        @Override
        public String inAll(double mm) {
            return decimals(MeasureUnit.MILLIMETRE.convert(mm, MeasureUnit.FOOT), 2) + " ft";
        }

        @Override
        public String area(double m2) {
            return decimals(MeasureUnit.SQUARE_METRE_.convert(m2, MeasureUnit.SQUARE_FOOT), 1) + " ft2";
        }

        @Override
        public String volume(double m3) {
            return decimals(MeasureUnit.CUBIC_METRE_.convert(m3, MeasureUnit.CUBIC_FOOT), 2);
        }
    };

    private final String unit;
    private final String volumeUnit;
    private final int cell;
    private final int counted;

    SiteFigures(String unit, String volumeUnit, int cell, int counted) {
        this.unit = unit;
        this.volumeUnit = volumeUnit;
        this.cell = cell;
        this.counted = counted;
    }

    public static SiteFigures of(UnitSystem system) {
        return switch (system) {
            case METRIC -> METRIC;
            case INCH_POUND -> INCH_POUND;
        };
    }

    /** What lengths are in, for people. */
    public String unit() {
        return unit;
    }

    /** What volumes are in. */
    public String volumeUnit() {
        return volumeUnit;
    }

    /** Characters that a column of lengths takes. */
    int cell() {
        return cell;
    }

    /** Characters that a count of pieces with their length takes. */
    int counted() {
        return counted;
    }

    /** A length or level without its unit. */
    public abstract String length(double mm);

    /** A length that is cut or measured to less than others. */
    public abstract String fine(double mm);

    /** The sum of many lengths, with its unit. */
    public abstract String inAll(double mm);

    /** With its unit. */
    public abstract String area(double m2);

    /** Without its unit. */
    public abstract String volume(double m3);

    public static String decimals(double value, int digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN);
        return (rounded.signum() == 0 ? BigDecimal.ZERO.setScale(digits) : rounded).toPlainString();
    }
}
