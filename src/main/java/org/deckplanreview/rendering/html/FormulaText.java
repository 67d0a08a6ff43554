package org.deckplanreview.rendering.html;

import java.util.stream.Collectors;
import org.deckplanreview.formula.Expression;
import org.deckplanreview.formula.MathFunction;
import org.deckplanreview.formula.Symbol;
import org.deckplanreview.measure.Phrases;

/** Formulas on one line of HTML with raised and lowered letters, for paper that knows no MathML. */
final class FormulaText {
    private FormulaText() {}

    static String of(Expression formula) {
        if (formula instanceof Expression.Number n) {
            return n.digits() + n.unit().map(u -> " " + Phrases.unit(u)).orElse("");
        }
        if (formula instanceof Symbol s) {
            return s.name() + (s.isPrimed() ? "′" : "") + (s.index().isEmpty() ? "" : "<sub>" + s.index() + "</sub>");
        }
        if (formula instanceof Expression.Negated n) {
            return "−" + of(n.of());
        }
        if (formula instanceof Expression.Sum s) {
            return of(s.left()) + (s.isDifference() ? " − " : " + ") + of(s.right());
        }
        if (formula instanceof Expression.Product p) {
            return of(p.left()) + " · " + of(p.right());
        }
        if (formula instanceof Expression.Quotient q) {
            return of(q.over()) + " / " + of(q.under());
        }
        if (formula instanceof Expression.Power p) {
            return of(p.base()) + "<sup>" + of(p.exponent().bare()) + "</sup>";
        }
        if (formula instanceof Expression.Call c) {
            String arguments = c.arguments().stream().map(FormulaText::of).collect(Collectors.joining(", "));
            return (c.function() == MathFunction.SQRT ? "√" : c.function().word()) + "(" + arguments + ")";
        }
        return "(" + of(formula.bare()) + ")";
    }
}
