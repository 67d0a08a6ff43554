package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.Optional;

/** How an edition comes to bind. */
public sealed interface Binding {

    /** The day that it is put in order by. */
    LocalDate day();

    /**
     * On every day of a period.
     *
     * @param from first day in force
     * @param until last day in force, empty while it is
     */
    record ByDate(LocalDate from, Optional<LocalDate> until) implements Binding {
        @Override
        public LocalDate day() {
            return from;
        }
    }

    /** Only where it is adopted, as a model code is: a submission or an amendment names it. */
    record AsAdopted(LocalDate published) implements Binding {
        @Override
        public LocalDate day() {
            return published;
        }
    }
}
