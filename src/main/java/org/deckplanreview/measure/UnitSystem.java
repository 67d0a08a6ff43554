package org.deckplanreview.measure;

/** The units that a report is written in. Units without a counterpart, such as degrees and ratios, belong to both. */
public enum UnitSystem {
    METRIC {
        @Override
        public MeasureUnit unit(MeasureUnit unit) {
            return switch (unit) {
                case INCH, FOOT -> MeasureUnit.MILLIMETRE;
                case MILE -> MeasureUnit.KILOMETRE;
                case SQUARE_INCH -> MeasureUnit.SQUARE_MILLIMETRE;
                case SQUARE_FOOT -> MeasureUnit.SQUARE_METRE_;
                case CUBIC_INCH -> MeasureUnit.CUBIC_MILLIMETRE;
                case CUBIC_FOOT -> MeasureUnit.CUBIC_METRE_;
                case QUARTIC_INCH -> MeasureUnit.QUARTIC_MILLIMETRE;
                case POUND_FORCE -> MeasureUnit.KILONEWTON;
                case POUND_FORCE_INCH, POUND_FORCE_FOOT -> MeasureUnit.KILONEWTON_METRE;
                case POUND_FORCE_PER_FOOT, POUND_FORCE_PER_INCH -> MeasureUnit.KILONEWTON_PER_METRE;
                case POUND_FORCE_PER_SQUARE_INCH -> MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
                case POUND_FORCE_PER_SQUARE_FOOT -> MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
                case POUND_FORCE_PER_CUBIC_FOOT -> MeasureUnit.KILONEWTON_PER_CUBIC_METRE;
                case POUND_PER_CUBIC_FOOT -> MeasureUnit.KILOGRAM_PER_CUBIC_METRE;
                default -> unit;
            };
        }
    },

    /** Lengths in inches, written as feet and inches for people. */
    INCH_POUND {
        @Override
        public MeasureUnit unit(MeasureUnit unit) {
            return switch (unit) {
                case MILLIMETRE, METRE_, FOOT -> MeasureUnit.INCH;
                case KILOMETRE -> MeasureUnit.MILE;
                case SQUARE_MILLIMETRE -> MeasureUnit.SQUARE_INCH;
                case SQUARE_METRE_ -> MeasureUnit.SQUARE_FOOT;
                case CUBIC_MILLIMETRE -> MeasureUnit.CUBIC_INCH;
                case CUBIC_METRE_ -> MeasureUnit.CUBIC_FOOT;
                case QUARTIC_MILLIMETRE -> MeasureUnit.QUARTIC_INCH;
                case NEWTON_, KILONEWTON -> MeasureUnit.POUND_FORCE;
                case NEWTON_MILLIMETRE, KILONEWTON_METRE -> MeasureUnit.POUND_FORCE_FOOT;
                case NEWTON_PER_MILLIMETRE, KILONEWTON_PER_METRE -> MeasureUnit.POUND_FORCE_PER_FOOT;
                case NEWTON_PER_SQUARE_MILLIMETRE -> MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
                case KILONEWTON_PER_SQUARE_METRE -> MeasureUnit.POUND_FORCE_PER_SQUARE_FOOT;
                case KILONEWTON_PER_CUBIC_METRE -> MeasureUnit.POUND_FORCE_PER_CUBIC_FOOT;
                case KILOGRAM_PER_CUBIC_METRE -> MeasureUnit.POUND_PER_CUBIC_FOOT;
                default -> unit;
            };
        }
    };

    /** The unit in which this system shows what is measured in the given one. */
    public abstract MeasureUnit unit(MeasureUnit unit);

    /** The same measure in the unit that this system shows. */
    public Measure measure(Measure measure) {
        MeasureUnit shown = unit(measure.unit());
        return Measure.of(measure.in(shown), shown);
    }

    /** Whether this system shows the unit only converted into one of its own. */
    public boolean isForeign(MeasureUnit unit) {
        boolean isInchPound = METRIC.unit(unit) != unit;
        return this == METRIC ? isInchPound : !isInchPound && unit(unit) != unit;
    }
}
