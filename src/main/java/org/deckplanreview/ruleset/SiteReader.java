package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the local values that amendments give for their sites. What two amendments give must be the same. */
final class SiteReader {

    private final Citations citations;

    SiteReader(Citations citations) {
        this.citations = citations;
    }

    SiteValues read(List<Entry> amendments) {
        List<SiteValues.Local> values = new ArrayList<>();
        Map<String, Entry> first = new LinkedHashMap<>();
        for (Entry amendment : amendments) {
            String setBy = amendment.member("amendment").text();
            amendment.membersOf("site").forEach((name, entry) -> {
                Entry other = first.putIfAbsent(name, entry);
                if (other == null) {
                    read(name, entry, setBy, values);
                } else if (!other.member("value").isLike(entry.member("value"))) {
                    Overlay.tellContradiction(entry, other);
                }
            });
        }
        return new SiteValues(values);
    }

    private void read(String name, Entry entry, String setBy, List<SiteValues.Local> values) {
        for (SiteValues.Member member : SiteValues.Member.values()) {
            if (member.word().equals(name)) {
                TokenReader.number(entry.member("value"), member.unit())
                        .ifPresent(value -> citations
                                .read(entry.member("cite"))
                                .ifPresent(
                                        citation -> values.add(new SiteValues.Local(member, value, citation, setBy))));
            }
        }
    }
}
