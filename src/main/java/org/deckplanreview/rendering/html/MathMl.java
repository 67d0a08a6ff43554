package org.deckplanreview.rendering.html;

import java.util.stream.Collectors;
import org.deckplanreview.formula.Expression;
import org.deckplanreview.formula.MathFunction;
import org.deckplanreview.formula.Symbol;
import org.deckplanreview.measure.Phrases;

/** Formulas as presentation MathML. What a formula holds is letters, digits and signs, none of which needs escaping. */
final class MathMl {
    private static final String NAMESPACE = "http://www.w3.org/1998/Math/MathML";

    private MathMl() {}

    /** A whole element, in a line of text. */
    static String element(String content) {
        return "<math xmlns=\"" + NAMESPACE + "\">" + row(content) + "</math>";
    }

    static String sign(String sign) {
        return "<mo>" + sign + "</mo>";
    }

    static String of(Expression formula) {
        if (formula instanceof Expression.Number n) {
            return "<mn>" + n.digits() + "</mn>"
                    + n.unit()
                            .map(u -> "<mtext> " + Phrases.unit(u) + "</mtext>")
                            .orElse("");
        }
        if (formula instanceof Symbol s) {
            return symbol(s);
        }
        if (formula instanceof Expression.Negated n) {
            return sign("−") + of(n.of());
        }
        if (formula instanceof Expression.Sum s) {
            return of(s.left()) + sign(s.isDifference() ? "−" : "+") + of(s.right());
        }
        if (formula instanceof Expression.Product p) {
            return of(p.left()) + sign("·") + of(p.right());
        }
        if (formula instanceof Expression.Quotient q) {
            return "<mfrac>" + row(of(q.over().bare())) + row(of(q.under().bare())) + "</mfrac>";
        }
        if (formula instanceof Expression.Power p) {
            return "<msup>" + row(of(p.base())) + row(of(p.exponent().bare())) + "</msup>";
        }
        if (formula instanceof Expression.Call c) {
            return call(c);
        }
        return sign("(") + of(formula.bare()) + sign(")");
    }

    private static String row(String content) {
        return "<mrow>" + content + "</mrow>";
    }

    private static String symbol(Symbol s) {
        String name = "<mi>" + s.name() + "</mi>";
        String prime = sign("′");
        if (s.index().isEmpty()) {
            return s.isPrimed() ? "<msup>" + name + prime + "</msup>" : name;
        }
        String index = "<mtext>" + s.index() + "</mtext>";
        return s.isPrimed() ? "<msubsup>" + name + index + prime + "</msubsup>" : "<msub>" + name + index + "</msub>";
    }

    private static String call(Expression.Call c) {
        if (c.function() == MathFunction.SQRT && c.arguments().size() == 1) {
            return "<msqrt>" + of(c.arguments().get(0).bare()) + "</msqrt>";
        }
        return "<mi>" + c.function().word() + "</mi>" + sign("(")
                + c.arguments().stream().map(MathMl::of).collect(Collectors.joining(sign(",")))
                + sign(")");
    }
}
