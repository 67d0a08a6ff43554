package org.deckplanreview.loadpath;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.loadpath.LoadModel.Material;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;

/** What to give of a timber whose stiffness is not known: the strength class, or the species and grade, as the model lists them. */
final class Grading {

    private static final String STRENGTH_CLASS = "strengthClass";
    private static final String SPECIES = "species";
    private static final String BETWEEN_SPECIES_AND_GRADE = " ";

    private final Submission submission;
    private final List<String> classes;
    private final List<String> graded;

    Grading(Submission submission, LoadModel model) {
        this.submission = submission;
        this.classes = model.materials().keySet().stream()
                .filter(name -> !isGraded(name))
                .toList();
        this.graded =
                model.materials().keySet().stream().filter(Grading::isGraded).toList();
    }

    private static boolean isGraded(String name) {
        return name.contains(BETWEEN_SPECIES_AND_GRADE);
    }

    /** @param timber of which the model does not know the stiffness */
    Derived<Material> missing(Timber timber) {
        Pointer pointer = submission.timberPointer(timber.id());
        String label = timber.displayLabel();
        Optional<String> given = timber.stiffnessName();
        if (given.isPresent()) {
            boolean byGrade = isGraded(given.get());
            List<String> listed = byGrade ? graded : classes;
            if (!listed.isEmpty()) {
                return Derived.missing(
                        pointer.child(byGrade ? SPECIES : STRENGTH_CLASS),
                        (byGrade ? "a species and grade of " : "a strength class of ") + label
                                + " that the ruleset has: " + String.join(", ", listed) + "; " + given.get()
                                + " is none of them");
            }
        }
        if (graded.isEmpty()) {
            return Derived.missing(
                    pointer.child(STRENGTH_CLASS), "the strength class of " + label + ", for example C24");
        }
        if (timber.species().isPresent() && timber.grade().isEmpty()) {
            return Derived.missing(pointer.child("grade"), "the grade of " + label + ", for example no.2");
        }
        return classes.isEmpty()
                ? Derived.missing(
                        pointer.child(SPECIES),
                        "the species and grade of " + label + ", for example southern-pine no.2")
                : Derived.missing(
                        pointer.child(STRENGTH_CLASS),
                        "the strength class of " + label + ", for example C24, or its species and grade, for example"
                                + " southern-pine no.2");
    }
}
