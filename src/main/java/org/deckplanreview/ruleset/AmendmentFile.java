package org.deckplanreview.ruleset;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Holds one amendment against its place and against the editions of its region. */
final class AmendmentFile {

    private AmendmentFile() {}

    /** The amendment; empty if its file has faults. */
    static Optional<Amendment> read(Entry root, Collection<EditionHeading> editions) {
        if (!root.isMap() || !root.file().faultless()) {
            return Optional.empty();
        }
        Amendment amendment = Amendment.of(root);
        String path = amendment.region() + "/amendments/" + amendment.name() + ".yaml";
        if (!amendment.path().equals(path)) {
            root.member("amendment")
                    .fault("The file stands in another place than its region and name say", "the file as " + path);
            return Optional.empty();
        }
        List<EditionHeading> ofRegion = editions.stream()
                .filter(edition -> edition.region().equals(amendment.region()))
                .toList();
        List<String> names = ofRegion.stream().map(EditionHeading::name).toList();
        root.member("amends").items().stream()
                .filter(name -> !names.contains(name.text()))
                .forEach(name -> name.unknown(name.text(), "edition of " + amendment.region(), names));
        root.optional("adopts").ifPresent(name -> checkAdopted(name, amendment, ofRegion));
        return root.file().faultless() ? Optional.of(amendment) : Optional.empty();
    }

    private static void checkAdopted(Entry name, Amendment amendment, List<EditionHeading> editions) {
        if (!amendment.amends().contains(name.text())) {
            name.fault("It adopts an edition that it does not amend", String.join(", ", amendment.amends()));
        }
        editions.stream()
                .filter(edition -> edition.name().equals(name.text()))
                .filter(edition -> edition.binding() instanceof Binding.ByDate)
                .forEach(edition -> name.fault(
                        "This edition binds by its date and is not adopted",
                        "an edition with 'published', or no 'adopts'"));
    }

    /** Lays it over each edition that it amends and tells what does not go. */
    static void check(Entry root, Amendment amendment, Collection<Edition> editions, Resolver resolver, Needed needed) {
        for (String name : amendment.amends()) {
            editions.stream()
                    .filter(edition -> edition.region().equals(amendment.region())
                            && edition.name().equals(name))
                    .forEach(edition -> check(root, amendment, edition, resolver, needed));
        }
    }

    private static void check(Entry root, Amendment amendment, Edition edition, Resolver resolver, Needed needed) {
        Resolver.Resolution resolution = resolver.lay(edition, amendment, needed);
        for (RulesetFault fault : resolution.faults()) {
            if (fault.file().equals(amendment.path())) {
                root.file().fault(fault.line(), fault.found(), fault.detail(), fault.accepted());
            } else {
                root.file()
                        .fault(
                                root.line(),
                                fault.found(),
                                "Over the edition " + edition.name() + ", this stands against it in " + fault.file()
                                        + " on line " + fault.line() + ": " + fault.detail(),
                                fault.accepted());
            }
        }
        resolution.edition().ifPresent(amended -> Relaxation.tell(root, edition, amended, resolver.vocabulary()));
    }
}
