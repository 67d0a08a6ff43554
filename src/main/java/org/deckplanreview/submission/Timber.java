package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * One stock of timber: its section, grade and treatment.
 *
 * @param breadth the smaller side of joists and beams; the width of a board
 * @param depth the side along the load; the thickness of a board
 * @param strengthClass of EN 338, for example C24; or else species and grade
 * @param species of visually graded lumber
 * @param incised whether the faces were cut to let preservative in
 * @param installedWet whether it is put in near fibre saturation and dries under load
 */
public record Timber(
        String id,
        Optional<String> label,
        Length breadth,
        Length depth,
        Optional<String> strengthClass,
        Optional<Species> species,
        Optional<Grade> grade,
        Optional<Boolean> incised,
        Optional<Treatment> treatment,
        Optional<NaturalDurability> naturalDurability,
        Optional<Boolean> installedWet) {

    public String displayLabel() {
        return label.orElse(id);
    }

    /** What tables of stiffness call it: its strength class, or its species and grade, for example {@code southern-pine no.2}. */
    public Optional<String> stiffnessName() {
        return strengthClass().or(() -> species().flatMap(s -> grade().map(g -> s.word() + " " + g.word())));
    }
}
