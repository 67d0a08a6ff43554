package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Which edition of a region's ruleset holds on a day. */
public sealed interface InForce {

    /** @param edition its name */
    record Found(String edition) implements InForce {}

    /** The region has editions, none of them on that day. */
    record NoneThatDay(String region, List<Period> editions) implements InForce {
        public NoneThatDay {
            editions = List.copyOf(editions);
        }
    }

    /**
     * No edition of the region is in force of itself: each binds only where it is adopted.
     *
     * @param adopting the amendments that adopt one
     */
    record OnlyAsAdopted(String region, List<String> editions, List<Amendment> adopting) implements InForce {
        public OnlyAsAdopted {
            editions = List.copyOf(editions);
            adopting = List.copyOf(adopting);
        }
    }

    /** @param nearest the known region that was most likely meant */
    record UnknownRegion(List<String> known, Optional<String> nearest) implements InForce {
        public UnknownRegion {
            known = List.copyOf(known);
        }
    }

    /** @param until last day in force, empty where no end is known */
    record Period(String edition, LocalDate from, Optional<LocalDate> until) {
        boolean includes(LocalDate day) {
            return !day.isBefore(from)
                    && until.filter(last -> last.isBefore(day)).isEmpty();
        }
    }
}
