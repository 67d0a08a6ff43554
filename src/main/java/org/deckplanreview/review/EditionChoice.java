package org.deckplanreview.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.ruleset.Amending;
import org.deckplanreview.ruleset.Amendment;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.EditionHeading;
import org.deckplanreview.ruleset.InForce;
import org.deckplanreview.ruleset.Rulesets;
import org.deckplanreview.submission.RulesetChoice;
import org.deckplanreview.submission.Submission;

/** The edition that a submission is reviewed against, or why there is none. */
sealed interface EditionChoice {

    record Chosen(Edition edition) implements EditionChoice {}

    record NoSuch(ReviewResult.UnknownRuleset problem) implements EditionChoice {}

    /**
     * The edition that the submission names, else the one that an amendment adopts, else the one in force on its day; with
     * the amendments that it names.
     */
    static EditionChoice of(Submission submission, Rulesets rulesets) {
        RulesetChoice choice = submission.ruleset();
        String region = choice.region();
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
        if (choice.edition().isPresent()) {
            return named(choice, choice.edition().get(), rulesets);
        }
        List<String> adopted = adopted(choice, rulesets);
        if (adopted.size() > 1) {
            return noSuch(
                    "/ruleset/amendments",
                    "The amendments adopt different editions: " + String.join(", ", adopted) + ".",
                    "amendments that adopt one edition, or an edition by name");
        }
        if (adopted.size() == 1) {
            return named(choice, adopted.get(0), rulesets);
        }
        if (inForce instanceof InForce.NoneThatDay none) {
            return noSuch(
                    "/reviewOn",
                    "No edition of '" + region + "' is in force on " + submission.reviewOn() + ".",
                    "a day on which one of these is in force: " + periods(none.editions()));
        }
        if (inForce instanceof InForce.OnlyAsAdopted only) {
            return noSuch(
                    "/ruleset/edition",
                    "The editions of '" + region + "' bind only where they are adopted, so that no day picks one.",
                    "one of " + String.join(", ", only.editions()) + adopting(only.adopting()));
        }
        return named(choice, ((InForce.Found) inForce).edition(), rulesets);
    }

    private static EditionChoice named(RulesetChoice choice, String edition, Rulesets rulesets) {
        Optional<Amending> amending = rulesets.edition(choice.region(), edition, choice.amendments());
        if (amending.isEmpty()) {
            return noSuch(
                    "/ruleset/edition",
                    "The region '" + choice.region() + "' has no edition '" + edition + "'.",
                    "one of " + known(choice.region(), rulesets));
        }
        return amending.get() instanceof Amending.Refused refused
                ? noSuch("/ruleset/amendments/" + refused.index(), refused.detail(), refused.accepted())
                : new Chosen(((Amending.Amended) amending.get()).edition());
    }

    /** The editions that the named amendments adopt, without repetition. */
    private static List<String> adopted(RulesetChoice choice, Rulesets rulesets) {
        return rulesets.amendments(choice.region()).stream()
                .filter(amendment -> choice.amendments().contains(amendment.name()))
                .flatMap(amendment -> amendment.adopts().stream())
                .distinct()
                .toList();
    }

    private static String known(String region, Rulesets rulesets) {
        List<InForce.Period> periods = rulesets.periods(region);
        List<String> byName = rulesets.headings(region).stream()
                .map(EditionHeading::name)
                .filter(name -> periods.stream().noneMatch(p -> p.edition().equals(name)))
                .toList();
        return Stream.of(periods(periods), String.join(", ", byName))
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining(", "))
                + (periods.isEmpty() ? "" : "; or none, for the one in force");
    }

    private static String adopting(List<Amendment> amendments) {
        return amendments.isEmpty()
                ? ""
                : "; or in /ruleset/amendments one that adopts an edition: "
                        + amendments.stream()
                                .map(a -> a.name() + " (" + a.adopts().orElseThrow() + ")")
                                .collect(Collectors.joining(", "));
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
