package org.deckplanreview.report;

import org.deckplanreview.kernel.Worded;
import org.deckplanreview.ruleset.Binding;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.submission.Submission;

/** What picked the edition. */
public enum PickedBy implements Worded {
    DAY("day"),
    SUBMISSION("submission"),
    AMENDMENT("amendment"),
    REQUEST("request");

    private final String word;

    PickedBy(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    static PickedBy of(Submission submission, Edition edition) {
        boolean isNamed = submission.ruleset().edition().isPresent();
        if (submission.ruleset().edition().filter(edition.name()::equals).isPresent()) {
            return SUBMISSION;
        }
        boolean isAdopted = edition.amendments().stream()
                .anyMatch(a ->
                        a.amendment().adopts().filter(edition.name()::equals).isPresent());
        if (isAdopted && !isNamed) {
            return AMENDMENT;
        }
        return isNamed || edition.binding() instanceof Binding.AsAdopted ? REQUEST : DAY;
    }
}
