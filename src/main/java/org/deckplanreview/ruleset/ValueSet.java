package org.deckplanreview.ruleset;

import java.util.Collection;
import java.util.SortedSet;
import java.util.TreeSet;
import org.deckplanreview.vocabulary.Sense;

/** Values of one quantity that a limit permits or a condition picks. */
sealed interface ValueSet {

    /** Whether the other set has all that this one has. */
    boolean isWithin(ValueSet other);

    /** What both have. */
    ValueSet and(ValueSet other);

    boolean isEmpty();

    /** Numbers in one unit; bounds that are the same but for the last digits are one bound. */
    record Interval(double low, boolean hasLow, double high, boolean hasHigh) implements ValueSet {

        static Interval of(Sense sense, double value) {
            return switch (sense) {
                case AT_LEAST -> new Interval(value, true, Double.POSITIVE_INFINITY, false);
                case OVER -> new Interval(value, false, Double.POSITIVE_INFINITY, false);
                case AT_MOST -> new Interval(Double.NEGATIVE_INFINITY, false, value, true);
                case UNDER -> new Interval(Double.NEGATIVE_INFINITY, false, value, false);
                case EQUAL, ONE_OF -> new Interval(value, true, value, true);
            };
        }

        @Override
        public boolean isWithin(ValueSet other) {
            return other instanceof Interval o && !lowerThan(o) && !o.higherLessThan(this);
        }

        private boolean lowerThan(Interval o) {
            return same(low, o.low) ? hasLow && !o.hasLow : low < o.low;
        }

        private boolean higherLessThan(Interval o) {
            return same(high, o.high) ? !hasHigh && o.hasHigh : high < o.high;
        }

        @Override
        public ValueSet and(ValueSet other) {
            if (!(other instanceof Interval o)) {
                return Words.NONE;
            }
            Interval lower = lowerThan(o) ? o : this;
            Interval higher = higherLessThan(o) ? this : o;
            return new Interval(lower.low, lower.hasLow, higher.high, higher.hasHigh);
        }

        @Override
        public boolean isEmpty() {
            return same(low, high) ? !(hasLow && hasHigh) : low > high;
        }

        private static boolean same(double a, double b) {
            return a == b || Double.isFinite(a) && Double.isFinite(b) && Sense.EQUAL.holds(a, b);
        }
    }

    /** Words of a list, or yes and no. */
    record Words(SortedSet<String> words) implements ValueSet {

        private static final Words NONE = new Words(new TreeSet<>());

        static Words of(Collection<String> words) {
            return new Words(new TreeSet<>(words));
        }

        @Override
        public boolean isWithin(ValueSet other) {
            return other instanceof Words o && o.words.containsAll(words);
        }

        @Override
        public ValueSet and(ValueSet other) {
            if (!(other instanceof Words o)) {
                return NONE;
            }
            SortedSet<String> both = new TreeSet<>(words);
            both.retainAll(o.words);
            return new Words(both);
        }

        @Override
        public boolean isEmpty() {
            return words.isEmpty();
        }
    }
}
