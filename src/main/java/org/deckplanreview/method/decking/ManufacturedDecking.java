package org.deckplanreview.method.decking;

import java.util.List;
import java.util.function.BiFunction;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.submission.ManufacturedBoards;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.Sense;

/** Methods for boards that are not of sawn timber. */
public final class ManufacturedDecking {

    static final String SOURCE = "what the maker of the boards states";
    static final List<SubjectKind> SUBJECTS = List.of(SubjectKind.BOARDS);

    private ManufacturedDecking() {}

    public static List<Method> methods() {
        return List.of(new StatedJoistSpacing(), new StatedLoad(), new StatedConcentratedLoad());
    }

    static Evaluation ofManufactured(
            Subject subject, BiFunction<BoardField, ManufacturedBoards, Evaluation> evaluating) {
        BoardField field = (BoardField) subject;
        return field.boards()
                .manufactured()
                .map(boards -> evaluating.apply(field, boards))
                .orElseGet(() -> new Evaluation.NotApplicable("the boards are of sawn timber"));
    }

    static Pointer stated(BoardField field, String member) {
        return field.pointer().child("manufactured").child(member);
    }

    /** What was found against what the maker states, both on the sheet. */
    static Evaluation atMost(Sheet sheet, Formula utilisation, String found, String stated) {
        sheet.calculate(utilisation);
        return Evaluation.Measured.on(sheet, sheet.measure(found), Sense.AT_MOST, sheet.measure(stated), "", List.of());
    }
}
