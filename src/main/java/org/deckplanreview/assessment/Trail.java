package org.deckplanreview.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.method.Observation;

/** What a reading of a table leaves behind on its way. Nothing that is noted is taken back. */
final class Trail {
    private final UnitSystem units;
    private final List<WorkingStep> working = new ArrayList<>();
    private final List<TakenRow> rows = new ArrayList<>();
    private final List<String> assumptions = new ArrayList<>();
    private final List<Need> needs = new ArrayList<>();
    private Optional<String> beyond = Optional.empty();

    /** @param units in which what was found is told */
    Trail(UnitSystem units) {
        this.units = units;
    }

    UnitSystem units() {
        return units;
    }

    /** What was found of a quantity, with its working; otherwise notes what is missing, or why the table has nothing. */
    Optional<Observation.Found> found(Observation seen, String quantity) {
        if (seen instanceof Observation.Found found) {
            working.addAll(found.working());
            return Optional.of(found);
        }
        if (seen instanceof Observation.Missing m) {
            needs.addAll(m.needs());
        } else {
            goBeyond("The table asks for the " + quantity + ": " + ((Observation.NotApplicable) seen).reason());
        }
        return Optional.empty();
    }

    void add(List<WorkingStep> steps) {
        working.addAll(steps);
    }

    void add(Sheet sheet) {
        working.addAll(sheet.steps());
    }

    void add(WorkingStep step) {
        working.add(step);
    }

    void take(TakenRow row) {
        rows.add(row);
    }

    void assume(String assumption) {
        assumptions.add(assumption);
    }

    void need(List<Need> more) {
        needs.addAll(more);
    }

    List<Need> needs() {
        return List.copyOf(needs);
    }

    /** Notes why the table has nothing, for a sentence; of several reasons the first counts. */
    void goBeyond(String reason) {
        beyond = beyond.or(() -> Optional.of(reason));
    }

    Optional<String> beyond() {
        return beyond;
    }

    TableEntry.Way way() {
        return new TableEntry.Way(working, rows, assumptions);
    }

    /** The way to a row beside the one that was looked for. */
    TableEntry.Way way(TakenRow row, Sheet sheet) {
        List<TakenRow> all = new ArrayList<>(rows);
        all.add(row);
        return new TableEntry.Way(working, all, assumptions).then(sheet);
    }
}
