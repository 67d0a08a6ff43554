package org.deckplanreview.rendering.html;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.rendering.text.ReportWords;
import org.deckplanreview.report.ReportedStep;

/**
 * A step of a calculation on the page.
 *
 * @param formulas the symbol with its expression, then the expression with numbers put in: markup
 * @param value with its unit
 * @param remarks what the symbol stands for, where it stands and where its value comes from
 */
public record StepView(List<RawString> formulas, String value, String remarks) {
    /** Characters of an equation that have room on a screen of 360 px. */
    private static final int FITS_NARROW = 30;

    static StepView of(ReportedStep step, Form form) {
        List<RawString> formulas = new ArrayList<>();
        formulas.add(new RawString(step.expression()
                .map(e -> equation(step.symbol(), e, form))
                .orElseGet(() -> part(step.symbol(), form))));
        step.substituted()
                .filter(s -> !step.expression().equals(Optional.of(s)))
                .ifPresent(s -> formulas.add(new RawString(equation("", s, form))));
        return new StepView(
                List.copyOf(formulas), ReportWords.value(step), String.join("; ", ReportWords.remarks(step)));
    }

    private static String equation(String left, String right, Form form) {
        return switch (form) {
            case SCREEN -> forScreens(left, right);
            case PAPER -> part(left, form) + " = " + part(right, form);
        };
    }

    /** Mathematics does not wrap: on a narrow screen a long equation is a line of text, which does. */
    private static String forScreens(String left, String right) {
        String mathematics = mathematics(left, right);
        return left.length() + right.length() <= FITS_NARROW
                ? mathematics
                : "<span class=\"wide\">" + mathematics + "</span><span class=\"narrow\">"
                        + equation(left, right, Form.PAPER) + "</span>";
    }

    private static String mathematics(String left, String right) {
        return readable(left)
                .map(MathMl::of)
                .or(() -> Optional.of(left).filter(String::isEmpty))
                .flatMap(l -> readable(right).map(MathMl::of).map(r -> l + MathMl.sign("=") + r))
                .map(MathMl::element)
                .orElseGet(() -> plain(left + " = " + right));
    }

    private static String part(String expression, Form form) {
        Function<Formula, String> written = form == Form.SCREEN ? f -> MathMl.element(MathMl.of(f)) : FormulaText::of;
        return readable(expression).map(written).orElseGet(() -> plain(expression));
    }

    private static Optional<Formula> readable(String expression) {
        return Formula.parse(expression);
    }

    /** What is not in the grammar stays as it is written. */
    private static String plain(String text) {
        return HarmlessText.escaped(text);
    }
}
