package org.deckplanreview.api;

import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.deckplanreview.rendering.drawing.Drawing;
import org.deckplanreview.rendering.drawing.DrawingKind;
import org.deckplanreview.rendering.drawing.Drawings;
import org.deckplanreview.rendering.drawing.DrawnDeck;

/** The drawing that a request asks for, or why there is none. */
sealed interface DrawingChoice {

    Response response();

    record Chosen(Drawing drawing) implements DrawingChoice {
        @Override
        public Response response() {
            return Response.ok(drawing.svg(), MediaTypes.SVG + ";charset=UTF-8").build();
        }
    }

    record NoSuch(String detail) implements DrawingChoice {
        @Override
        public Response response() {
            return Problem.of(ProblemType.BAD_REQUEST, detail).response();
        }
    }

    Pattern SHEET = Pattern.compile("[1-9]\\d{0,4}");

    /** @param kind a word of {@link DrawingKind}; the plan if empty */
    static DrawingChoice of(Optional<String> kind, Optional<String> sheet, DrawnDeck deck) {
        Optional<DrawingKind> known = DrawingKind.ofWord(kind.orElse(DrawingKind.PLAN.word()));
        if (known.isEmpty()) {
            return new NoSuch("There is no such drawing. The parameter drawing is one of plan, section and members.");
        }
        List<Drawing> sheets = Drawings.of(known.get(), deck);
        return Optional.of(sheet.orElse("1"))
                .filter(s -> SHEET.matcher(s).matches())
                .map(Integer::parseInt)
                .filter(n -> n <= sheets.size())
                .<DrawingChoice>map(n -> new Chosen(sheets.get(n - 1)))
                .orElseGet(() -> new NoSuch("There is no such sheet. The parameter sheet is a number from 1 to "
                        + sheets.size() + " here."));
    }
}
