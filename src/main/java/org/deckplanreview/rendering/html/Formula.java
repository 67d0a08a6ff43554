package org.deckplanreview.rendering.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An expression of a calculation as a tree, in the grammar in which workings write them. */
sealed interface Formula {

    record Number(String digits) implements Formula {}

    /** @param index of the name, blank for none */
    record Symbol(String name, String index, boolean isPrimed) implements Formula {}

    record Negated(Formula of) implements Formula {}

    record Sum(Formula left, boolean isDifference, Formula right) implements Formula {}

    record Product(Formula left, Formula right) implements Formula {}

    record Quotient(Formula over, Formula under) implements Formula {}

    record Power(Formula base, Formula exponent) implements Formula {}

    record Call(String function, List<Formula> arguments) implements Formula {}

    record Bracketed(Formula inside) implements Formula {}

    /** Without brackets that a line or a root makes needless. */
    static Formula bare(Formula formula) {
        return formula instanceof Bracketed b ? bare(b.inside()) : formula;
    }

    /** Empty for what is not in the grammar. */
    static Optional<Formula> parse(String expression) {
        Optional<List<String>> tokens = Reader.tokens(expression);
        try {
            return tokens.map(t -> new Reader(t).whole());
        } catch (Reader.Unreadable e) {
            return Optional.empty();
        }
    }

    /** By recursive descent: sums of products of powers. */
    final class Reader {
        private static final Pattern TOKEN = Pattern.compile("\\s*(?:(?<number>\\d+(?:\\.\\d+)?)"
                + "|(?<symbol>\\p{L}+(?:_[A-Za-z0-9]+(?:,[A-Za-z0-9]+)*)?'?)|(?<sign>[-+*/^(),]))\\s*");
        private static final Pattern SYMBOL = Pattern.compile("(\\p{L}+)(?:_([A-Za-z0-9,]+))?('?)");
        private static final List<String> FUNCTIONS = List.of("min", "max", "sqrt");
        private static final String END = "";

        private final List<String> tokens;
        private int at;

        private Reader(List<String> tokens) {
            this.tokens = tokens;
        }

        private static final class Unreadable extends RuntimeException {}

        private static Optional<List<String>> tokens(String expression) {
            List<String> found = new ArrayList<>();
            Matcher m = TOKEN.matcher(expression);
            int end = 0;
            while (end < expression.length()) {
                if (!m.find(end) || m.start() != end) {
                    return Optional.empty();
                }
                found.add(m.group().strip());
                end = m.end();
            }
            return Optional.of(found);
        }

        private Formula whole() {
            Formula formula = sum();
            if (!next().equals(END)) {
                throw new Unreadable();
            }
            return formula;
        }

        private String next() {
            return at < tokens.size() ? tokens.get(at) : END;
        }

        private boolean takes(String token) {
            boolean isNext = next().equals(token);
            at += isNext ? 1 : 0;
            return isNext;
        }

        private void mustTake(String token) {
            if (!takes(token)) {
                throw new Unreadable();
            }
        }

        private Formula sum() {
            Formula left = product();
            while (true) {
                if (takes("+")) {
                    left = new Sum(left, false, product());
                } else if (takes("-")) {
                    left = new Sum(left, true, product());
                } else {
                    return left;
                }
            }
        }

        private Formula product() {
            Formula left = power();
            while (true) {
                if (takes("*")) {
                    left = new Product(left, power());
                } else if (takes("/")) {
                    left = new Quotient(left, power());
                } else {
                    return left;
                }
            }
        }

        private Formula power() {
            if (takes("-")) {
                return new Negated(power());
            }
            Formula base = operand();
            return takes("^") ? new Power(base, power()) : base;
        }

        private Formula operand() {
            if (takes("(")) {
                Formula inside = sum();
                mustTake(")");
                return new Bracketed(inside);
            }
            String token = next();
            at++;
            if (FUNCTIONS.contains(token)) {
                return new Call(token, arguments());
            }
            if (!token.isEmpty() && Character.isDigit(token.charAt(0))) {
                return new Number(token);
            }
            Matcher m = SYMBOL.matcher(token);
            if (!m.matches()) {
                throw new Unreadable();
            }
            return new Symbol(
                    m.group(1),
                    m.group(2) == null ? "" : m.group(2),
                    !m.group(3).isEmpty());
        }

        private List<Formula> arguments() {
            mustTake("(");
            List<Formula> arguments = new ArrayList<>();
            do {
                arguments.add(sum());
            } while (takes(","));
            mustTake(")");
            return arguments;
        }
    }
}
