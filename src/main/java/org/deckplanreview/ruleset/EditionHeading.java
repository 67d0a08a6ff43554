package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.Optional;

/** What an edition's own file says of it: all that is needed to choose one, without reading what it builds on. */
public record EditionHeading(String region, String regionTitle, String name, String title, Binding binding) {

    /** Of a root whose format was checked; empty if it has faults, which are then told. */
    static Optional<EditionHeading> read(Entry root) {
        checkPath(root);
        Optional<Binding> binding = binding(root);
        return root.file().faultless()
                ? binding.map(bound -> new EditionHeading(
                        root.member("region").text(),
                        root.member("regionTitle").text(),
                        root.member("edition").text(),
                        root.member("title").text(),
                        bound))
                : Optional.empty();
    }

    /** Where its file stands, relative to the rulesets' root. */
    String path() {
        return region + "/" + name + ".yaml";
    }

    private static Optional<Entry> part(Entry root, String name) {
        return root.optional(name).filter(Entry::isSound);
    }

    private static Optional<Binding> binding(Entry root) {
        Optional<Entry> inForce = root.optional("inForce");
        Optional<Entry> published = root.optional("published");
        if (inForce.isPresent() == published.isPresent()) {
            root.fault(
                    inForce.isPresent()
                            ? "'inForce' and 'published' stand side by side"
                            : "'inForce' or 'published' is missing",
                    "inForce with the first day in force, or, for an edition that binds only where it is adopted,"
                            + " published with its day");
            return Optional.empty();
        }
        return inForce.isPresent()
                ? inForce.filter(Entry::isSound).flatMap(EditionHeading::byDate)
                : published.filter(Entry::isSound).flatMap(Entry::date).map(Binding.AsAdopted::new);
    }

    private static Optional<Binding> byDate(Entry inForce) {
        Optional<LocalDate> from = inForce.member("from").date();
        Optional<LocalDate> until = inForce.optional("until").flatMap(Entry::date);
        if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
            inForce.member("until")
                    .fault("The last day in force is before the first", "a day from " + from.get() + " on");
        }
        return from.map(day -> new Binding.ByDate(day, until));
    }

    private static void checkPath(Entry root) {
        Optional<Entry> region = part(root, "region");
        Optional<Entry> edition = part(root, "edition");
        if (region.isPresent() && edition.isPresent()) {
            String path = region.get().text() + "/" + edition.get().text() + ".yaml";
            if (!root.file().path().equals(path)) {
                edition.get()
                        .fault(
                                "The file stands in another place than its region and edition say",
                                "the file as " + path);
            }
        }
    }
}
