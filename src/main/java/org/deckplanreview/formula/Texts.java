package org.deckplanreview.formula;

import java.util.List;
import java.util.stream.Collectors;
import org.deckplanreview.measure.Phrases;

/** Expressions on one line of text, as rulesets' documents and reports write them. */
final class Texts {
    private Texts() {}

    static String of(Expression of) {
        StringBuilder text = new StringBuilder();
        write(of, text);
        return text.toString();
    }

    private static void write(Expression of, StringBuilder to) {
        if (of instanceof Symbol s) {
            to.append(s);
        } else if (of instanceof Expression.Number n) {
            to.append(n.digits());
            n.unit().ifPresent(u -> to.append(' ').append(Phrases.unit(u)));
        } else if (of instanceof Expression.Negated n) {
            to.append('-');
            write(n.of(), to);
        } else if (of instanceof Expression.Bracketed b) {
            to.append('(');
            write(b.inside(), to);
            to.append(')');
        } else if (of instanceof Expression.Sum s) {
            write(s.left(), s.isDifference() ? " - " : " + ", s.right(), to);
        } else if (of instanceof Expression.Product p) {
            write(p.left(), " * ", p.right(), to);
        } else if (of instanceof Expression.Quotient q) {
            write(q.over(), " / ", q.under(), to);
        } else if (of instanceof Expression.Power p) {
            write(p.base(), "^", p.exponent(), to);
        } else if (of instanceof Expression.Call c) {
            to.append(c.function().word()).append('(');
            writeAll(c.arguments(), to);
            to.append(')');
        } else if (of instanceof Expression.Piecewise p) {
            to.append(p.branches().stream().map(Texts::branch).collect(Collectors.joining("; ")));
        }
    }

    private static void write(Expression left, String sign, Expression right, StringBuilder to) {
        write(left, to);
        to.append(sign);
        write(right, to);
    }

    private static void writeAll(List<Expression> arguments, StringBuilder to) {
        for (int i = 0; i < arguments.size(); i++) {
            to.append(i == 0 ? "" : ", ");
            write(arguments.get(i), to);
        }
    }

    private static String branch(Expression.Branch b) {
        String conditions = b.conditions().stream()
                .map(c -> of(c.left()) + " " + c.relation().sign() + " " + of(c.right()))
                .collect(Collectors.joining(" and "));
        return of(b.then()) + (conditions.isEmpty() ? "" : " if " + conditions);
    }
}
