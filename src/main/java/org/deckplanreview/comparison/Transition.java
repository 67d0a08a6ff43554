package org.deckplanreview.comparison;

import java.math.BigDecimal;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.kernel.Worded;

/** What becomes of a finding, or of an outcome, from one edition to another; the ones to look at first come first. */
public enum Transition implements Worded {
    WORSE("worse"),
    /** Nothing of the kind under the first edition. */
    NEW("new"),
    /** Applies in one edition and not in the other, and is met where it applies. */
    CHANGED("changed"),
    BETTER("better"),
    /** Nothing of the kind under the second edition. */
    GONE("gone"),
    UNCHANGED("unchanged");

    private final String word;

    Transition(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** By the determinations alone. What does not apply is as good as what complies. */
    static Transition of(Determination before, Determination after) {
        int better = Integer.compare(rank(after), rank(before));
        if (better != 0) {
            return better > 0 ? BETTER : WORSE;
        }
        return before == after ? UNCHANGED : CHANGED;
    }

    /** By the determinations, and where they are the same by the utilisations. */
    static Transition of(
            Determination before,
            Optional<BigDecimal> utilisationBefore,
            Determination after,
            Optional<BigDecimal> utilisationAfter) {
        Transition determined = of(before, after);
        if (determined != UNCHANGED || utilisationBefore.isEmpty() || utilisationAfter.isEmpty()) {
            return determined;
        }
        int more = utilisationAfter.get().compareTo(utilisationBefore.get());
        return more == 0 ? UNCHANGED : more > 0 ? WORSE : BETTER;
    }

    private static int rank(Determination determination) {
        return switch (determination) {
            case DOES_NOT_COMPLY -> 0;
            case UNDETERMINED -> 1;
            case COMPLIES, NOT_APPLICABLE -> 2;
        };
    }

    /** Whether a determination leaves something to do. */
    static boolean isOpen(Determination determination) {
        return rank(determination) < rank(Determination.COMPLIES);
    }
}
