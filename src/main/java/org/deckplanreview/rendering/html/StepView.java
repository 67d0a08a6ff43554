package org.deckplanreview.rendering.html;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Expression;
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
        Optional<Expression> symbol = Expression.find(step.symbol());
        formulas.add(new RawString(step.expression()
                .map(e -> equation(symbol, e, form))
                .orElseGet(() -> symbol.map(s -> part(s, form)).orElseGet(() -> HarmlessText.escaped(step.symbol())))));
        step.substituted()
                .filter(s -> !step.expression().equals(Optional.of(s)))
                .ifPresent(s -> formulas.add(new RawString(equation(Optional.empty(), s, form))));
        return new StepView(
                List.copyOf(formulas), ReportWords.value(step), String.join("; ", ReportWords.remarks(step)));
    }

    private static String equation(Optional<Expression> left, Expression right, Form form) {
        return switch (form) {
            case SCREEN -> forScreens(left, right);
            case PAPER -> left.map(FormulaText::of).orElse("") + " = " + FormulaText.of(right);
        };
    }

    /** Mathematics does not wrap: on a narrow screen a long equation is a line of text, which does. */
    private static String forScreens(Optional<Expression> left, Expression right) {
        String mathematics = MathMl.element(left.map(MathMl::of).orElse("") + MathMl.sign("=") + MathMl.of(right));
        int length =
                left.map(Expression::text).orElse("").length() + right.text().length();
        return length <= FITS_NARROW
                ? mathematics
                : "<span class=\"wide\">" + mathematics + "</span><span class=\"narrow\">"
                        + equation(left, right, Form.PAPER) + "</span>";
    }

    private static String part(Expression expression, Form form) {
        return form == Form.SCREEN ? MathMl.element(MathMl.of(expression)) : FormulaText.of(expression);
    }
}
