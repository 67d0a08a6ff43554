package org.deckplanreview.ruleset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Editions with amendments laid over them, resolved when they are first asked for; those asked for last are kept. */
final class AmendedEditions {

    private static final int KEPT = 64;

    private final Resolver resolver;
    private final Map<List<String>, Amending> kept = new LinkedHashMap<>(KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<String>, Amending> eldest) {
            return size() > KEPT;
        }
    };

    AmendedEditions(Resolver resolver) {
        this.resolver = resolver;
    }

    /** @param amendments of the edition's region, all of which amend it */
    synchronized Amending of(Edition edition, List<Amendment> amendments) {
        if (amendments.isEmpty()) {
            return new Amending.Amended(edition);
        }
        List<String> key = Stream.concat(
                        Stream.of(edition.region(), edition.name()),
                        amendments.stream().map(Amendment::name))
                .toList();
        Amending known = kept.get(key);
        if (known != null) {
            return known;
        }
        Amending resolved = resolve(edition, amendments);
        kept.put(key, resolved);
        return resolved;
    }

    private Amending resolve(Edition edition, List<Amendment> amendments) {
        int last = amendments.size() - 1;
        Amending below = of(edition, amendments.subList(0, last));
        if (!(below instanceof Amending.Amended amended)) {
            return below;
        }
        Resolver.Resolution resolution = resolver.lay(amended.edition(), amendments.get(last), new Needed());
        return resolution
                .edition()
                .<Amending>map(Amending.Amended::new)
                .orElseGet(() -> refused(last, amendments.get(last), resolution.faults()));
    }

    private static Amending refused(int index, Amendment amendment, List<RulesetFault> faults) {
        RulesetFault fault = faults.stream()
                .filter(f -> f.file().equals(amendment.path()))
                .findFirst()
                .orElse(faults.get(0));
        return new Amending.Refused(
                index,
                "The amendment '" + amendment.name() + "' cannot be laid over those named before it: " + fault.detail()
                        + " (" + fault.file() + ", line " + fault.line() + ").",
                fault.accepted());
    }
}
