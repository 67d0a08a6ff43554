package org.deckplanreview.submission;

import java.util.List;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.kernel.Worded;

/** Timbers that are graded in two ways at once, or treated for nothing that is said. */
final class TimberChecks {

    private static final String ONE_WAY = "either strengthClass, or species and grade";

    private final List<Timber> timbers;
    private final FaultList faults;

    TimberChecks(Submission submission, FaultList faults) {
        this.timbers = submission.timbers();
        this.faults = faults;
    }

    void check() {
        for (int i = 0; i < timbers.size(); i++) {
            Pointer pointer = Pointer.of("/timbers").child(i);
            grading(timbers.get(i), pointer);
            treatment(timbers.get(i), pointer.child("treatment"));
        }
    }

    private void grading(Timber timber, Pointer at) {
        timber.strengthClass().ifPresent(strengthClass -> {
            timber.species().ifPresent(s -> twice(strengthClass, s, at.child("species")));
            timber.grade().ifPresent(g -> twice(strengthClass, g, at.child("grade")));
        });
        if (timber.strengthClass().isEmpty()
                && timber.grade().isPresent()
                && timber.species().isEmpty()) {
            faults.add(
                    at.child("species"),
                    "The member is missing, though the timber has the grade "
                            + Found.quoted(timber.grade().get().word()),
                    "the species that the grade is of");
        }
    }

    private void twice(String strengthClass, Worded word, Pointer at) {
        faults.add(
                at,
                "The timber is " + Found.quoted(word.word()) + " and has the strength class "
                        + Found.quoted(strengthClass) + " too",
                ONE_WAY);
    }

    private void treatment(Timber timber, Pointer at) {
        timber.treatment()
                .filter(t -> t.useClass().isEmpty() && t.useCategory().isEmpty())
                .ifPresent(t -> faults.add(
                        at,
                        "The treatment has neither a use class nor a use category",
                        "a treatment with useClass, useCategory, or both"));
    }
}
