package org.deckplanreview.rendering.html;

import java.util.stream.Collectors;

/** Formulas on one line of HTML with raised and lowered letters, for paper that knows no MathML. */
final class FormulaText {
    private FormulaText() {}

    static String of(Formula formula) {
        if (formula instanceof Formula.Number n) {
            return n.digits();
        }
        if (formula instanceof Formula.Symbol s) {
            return s.name() + (s.isPrimed() ? "′" : "") + (s.index().isEmpty() ? "" : "<sub>" + s.index() + "</sub>");
        }
        if (formula instanceof Formula.Negated n) {
            return "−" + of(n.of());
        }
        if (formula instanceof Formula.Sum s) {
            return of(s.left()) + (s.isDifference() ? " − " : " + ") + of(s.right());
        }
        if (formula instanceof Formula.Product p) {
            return of(p.left()) + " · " + of(p.right());
        }
        if (formula instanceof Formula.Quotient q) {
            return of(q.over()) + " / " + of(q.under());
        }
        if (formula instanceof Formula.Power p) {
            return of(p.base()) + "<sup>" + of(Formula.bare(p.exponent())) + "</sup>";
        }
        if (formula instanceof Formula.Call c) {
            String arguments = c.arguments().stream().map(FormulaText::of).collect(Collectors.joining(", "));
            return (c.function().equals("sqrt") ? "√" : c.function()) + "(" + arguments + ")";
        }
        return "(" + of(Formula.bare(formula)) + ")";
    }
}
