package org.deckplanreview.loadpath;

import java.util.Optional;

/** A load on a beam, downwards positive. Places in mm along the beam. */
public sealed interface BeamLoad {

    double fromMm();

    double toMm();

    /** The whole of it, N. */
    double totalN();

    /**
     * The part between two places. A point load on the border of two stretches belongs to the later one.
     *
     * @param closed whether a point load at the stretch's end belongs to it
     */
    Optional<BeamLoad> within(double fromMm, double toMm, boolean closed);

    /** A load on a stretch whose intensity, N/mm, varies linearly. */
    record Distributed(double fromMm, double toMm, double fromNPerMm, double toNPerMm) implements BeamLoad {
        public Distributed {
            if (!(toMm > fromMm)) {
                throw new IllegalArgumentException("A stretch from " + fromMm + " mm to " + toMm + " mm has no length");
            }
        }

        static Distributed uniform(double fromMm, double toMm, double nPerMm) {
            return new Distributed(fromMm, toMm, nPerMm, nPerMm);
        }

        double slope() {
            return (toNPerMm - fromNPerMm) / (toMm - fromMm);
        }

        double at(double xMm) {
            double t = (xMm - fromMm) / (toMm - fromMm);
            return fromNPerMm * (1 - t) + toNPerMm * t;
        }

        @Override
        public double totalN() {
            return (fromNPerMm + toNPerMm) / 2 * (toMm - fromMm);
        }

        @Override
        public Optional<BeamLoad> within(double from, double to, boolean closed) {
            double a = Math.max(from, fromMm);
            double b = Math.min(to, toMm);
            return b > a ? Optional.of(new Distributed(a, b, at(a), at(b))) : Optional.empty();
        }
    }

    /** A force at one place. */
    record Point(double atMm, double forceN) implements BeamLoad {
        @Override
        public double fromMm() {
            return atMm;
        }

        @Override
        public double toMm() {
            return atMm;
        }

        @Override
        public double totalN() {
            return forceN;
        }

        @Override
        public Optional<BeamLoad> within(double from, double to, boolean closed) {
            return atMm >= from && (atMm < to || closed && atMm == to) ? Optional.of(this) : Optional.empty();
        }
    }
}
