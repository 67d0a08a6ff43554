package org.deckplanreview.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.ruleset.CaseFile;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.RulesetCase;
import org.deckplanreview.submission.NearestName;

/** Which cases are run: all, or those of one file, region or provision. */
final class Selection {
    private final Optional<String> only;
    private final List<String> known;

    private Selection(Optional<String> only, List<String> known) {
        this.only = only;
        this.known = known;
    }

    /** @param only a file's path, a region or a provision's id; all cases if empty */
    static Selection of(Optional<String> only, List<CaseFile> files) {
        List<String> known = files.stream()
                .flatMap(file -> Stream.concat(
                        Stream.of(file.path(), file.edition().region()),
                        file.cases().stream().map(RulesetCase::provision)))
                .distinct()
                .sorted()
                .toList();
        return new Selection(only, known);
    }

    boolean includes(CaseFile file, String provision) {
        return only.isEmpty() || only.get().equals(file.path()) || proves(file.edition(), provision);
    }

    /** Whether the edition must have cases for this provision; the cases of one file need not prove it. */
    boolean proves(Edition edition, String provision) {
        return provesAll(edition) || only.get().equals(provision);
    }

    boolean provesAll(Edition edition) {
        return only.isEmpty() || only.get().equals(edition.region());
    }

    /** What is told where no case is selected. */
    String unknown() {
        return "No case belongs to '" + only.orElseThrow() + "'."
                + NearestName.of(only.get(), known)
                        .map(name -> " Did you mean '" + name + "'?")
                        .orElse("")
                + " Accepted: the path of a file of cases, a region, or the id of a provision";
    }
}
