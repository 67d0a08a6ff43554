package org.deckplanreview.ruleset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Checks which provisions are named as calculating the same as another one. */
final class CalculatedReader {

    private final Map<String, Stated> stated = new LinkedHashMap<>();
    private final Map<String, Provision> read = new LinkedHashMap<>();

    /**
     * @param stated all that the edition states
     * @param read those of them without faults
     */
    CalculatedReader(List<Stated> stated, List<Provision> read) {
        stated.stream()
                .filter(Stated::isSound)
                .forEach(s -> this.stated.put(s.member("id").text(), s));
        read.forEach(p -> this.read.put(p.id(), p));
    }

    /** Tells names of what is not in the edition, is not calculated, or looks at other subjects. */
    void tell() {
        stated.forEach((id, s) -> s.optional("calculated").ifPresent(named -> tell(s, id, named)));
    }

    private void tell(Stated provision, String id, Entry named) {
        if (provision.rule("calculate").isPresent()) {
            named.fault("'" + id + "' is a calculation itself", "calculated beside limit or lookUp only");
            return;
        }
        named.items().forEach(name -> {
            if (!stated.containsKey(name.text())) {
                name.unknown(name.text(), "provision of the edition", calculations());
            } else if (stated.get(name.text()).rule("calculate").isEmpty()) {
                name.fault("'" + name.text() + "' calculates nothing", "a provision with calculate");
            } else {
                tellOtherSubjects(id, name);
            }
        });
    }

    private void tellOtherSubjects(String id, Entry name) {
        Optional<Provision> by = Optional.ofNullable(read.get(name.text()));
        Optional<Provision> of = Optional.ofNullable(read.get(id));
        if (by.isPresent() && of.isPresent() && by.get().subjects() != of.get().subjects()) {
            name.fault(
                    "'" + name.text() + "' looks at " + by.get().subjects().word() + ", '" + id + "' at "
                            + of.get().subjects().word(),
                    "a provision with the same subjects");
        }
    }

    private List<String> calculations() {
        return stated.entrySet().stream()
                .filter(s -> s.getValue().rule("calculate").isPresent())
                .map(Map.Entry::getKey)
                .toList();
    }
}
