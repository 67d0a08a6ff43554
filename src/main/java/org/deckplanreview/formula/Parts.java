package org.deckplanreview.formula;

import java.util.List;
import java.util.stream.Stream;

/** What an expression is made of. */
final class Parts {
    private Parts() {}

    /** Every symbol in it, in order, as often as it stands there. */
    static Stream<Symbol> symbols(Expression whole) {
        return whole instanceof Symbol s ? Stream.of(s) : of(whole).stream().flatMap(Parts::symbols);
    }

    static List<Expression> of(Expression whole) {
        if (whole instanceof Expression.Negated n) {
            return List.of(n.of());
        }
        if (whole instanceof Expression.Bracketed b) {
            return List.of(b.inside());
        }
        if (whole instanceof Expression.Sum s) {
            return List.of(s.left(), s.right());
        }
        if (whole instanceof Expression.Product p) {
            return List.of(p.left(), p.right());
        }
        if (whole instanceof Expression.Quotient q) {
            return List.of(q.over(), q.under());
        }
        if (whole instanceof Expression.Power p) {
            return List.of(p.base(), p.exponent());
        }
        if (whole instanceof Expression.Call c) {
            return c.arguments();
        }
        if (whole instanceof Expression.Piecewise p) {
            return p.branches().stream()
                    .flatMap(b -> Stream.concat(
                            Stream.of(b.then()), b.conditions().stream().flatMap(c -> Stream.of(c.left(), c.right()))))
                    .toList();
        }
        return List.of();
    }
}
