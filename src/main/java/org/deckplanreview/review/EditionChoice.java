package org.deckplanreview.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.InForce;
import org.deckplanreview.ruleset.Rulesets;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.Submission;

/** The edition that a submission is reviewed against, or why there is none. */
sealed interface EditionChoice {

    record Chosen(Edition edition) implements EditionChoice {}

    record NoSuch(ReviewResult.UnknownRuleset problem) implements EditionChoice {}

    /** The edition that the submission names, else the one in force on its day. */
    static EditionChoice of(Submission submission, Rulesets rulesets) {
        String region = submission.ruleset().region();
        InForce inForce = rulesets.inForce(region, submission.reviewOn());
        if (inForce instanceof InForce.UnknownRegion unknown) {
            return noSuch(
                    "/ruleset/region",
                    "There is no ruleset for the region '" + region + "'."
                            + unknown.nearest()
                                    .map(n -> " Is '" + n + "' meant?")
                                    .orElse(""),
                    "one of " + String.join(", ", unknown.known()));
        }
        Optional<String> named = submission.ruleset().edition();
        if (named.isPresent()) {
            return rulesets.edition(region, named.get())
                    .<EditionChoice>map(Chosen::new)
                    .orElseGet(() -> noSuch(
                            "/ruleset/edition",
                            "The region '" + region + "' has no edition '" + named.get() + "'.",
                            "one of " + periods(rulesets.periods(region)) + "; or none, for the one in force"));
        }
        if (inForce instanceof InForce.NoneThatDay none) {
            return noSuch(
                    "/reviewOn",
                    "No edition of '" + region + "' is in force on " + submission.reviewOn() + ".",
                    "a day on which one of these is in force: " + periods(none.editions()));
        }
        return new Chosen(((InForce.Found) inForce).edition());
    }

    private static EditionChoice noSuch(String pointer, String detail, String accepted) {
        return new NoSuch(new ReviewResult.UnknownRuleset(detail, accepted, Pointer.of(pointer)));
    }

    private static String periods(List<InForce.Period> periods) {
        return periods.stream()
                .map(p -> p.edition() + " (from " + p.from()
                        + p.until().map(u -> " to " + u).orElse("") + ")")
                .collect(Collectors.joining(", "));
    }
}
