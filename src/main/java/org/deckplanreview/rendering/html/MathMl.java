package org.deckplanreview.rendering.html;

import java.util.stream.Collectors;

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

    static String of(Formula formula) {
        if (formula instanceof Formula.Number n) {
            return "<mn>" + n.digits() + "</mn>";
        }
        if (formula instanceof Formula.Symbol s) {
            return symbol(s);
        }
        if (formula instanceof Formula.Negated n) {
            return sign("−") + of(n.of());
        }
        if (formula instanceof Formula.Sum s) {
            return of(s.left()) + sign(s.isDifference() ? "−" : "+") + of(s.right());
        }
        if (formula instanceof Formula.Product p) {
            return of(p.left()) + sign("·") + of(p.right());
        }
        if (formula instanceof Formula.Quotient q) {
            return "<mfrac>" + row(of(Formula.bare(q.over()))) + row(of(Formula.bare(q.under()))) + "</mfrac>";
        }
        if (formula instanceof Formula.Power p) {
            return "<msup>" + row(of(p.base())) + row(of(Formula.bare(p.exponent()))) + "</msup>";
        }
        if (formula instanceof Formula.Call c) {
            return call(c);
        }
        return sign("(") + of(Formula.bare(formula)) + sign(")");
    }

    private static String row(String content) {
        return "<mrow>" + content + "</mrow>";
    }

    private static String symbol(Formula.Symbol s) {
        String name = "<mi>" + s.name() + "</mi>";
        String prime = sign("′");
        if (s.index().isEmpty()) {
            return s.isPrimed() ? "<msup>" + name + prime + "</msup>" : name;
        }
        String index = "<mtext>" + s.index() + "</mtext>";
        return s.isPrimed() ? "<msubsup>" + name + index + prime + "</msubsup>" : "<msub>" + name + index + "</msub>";
    }

    private static String call(Formula.Call c) {
        if (c.function().equals("sqrt") && c.arguments().size() == 1) {
            return "<msqrt>" + of(Formula.bare(c.arguments().get(0))) + "</msqrt>";
        }
        return "<mi>" + c.function() + "</mi>" + sign("(")
                + c.arguments().stream().map(MathMl::of).collect(Collectors.joining(sign(",")))
                + sign(")");
    }
}
