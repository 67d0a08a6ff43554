package org.deckplanreview.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.deckplanreview.measure.MeasureUnit;

/** By recursive descent: sums of products of powers. */
final class ExpressionReader {
    private static final Pattern TOKEN =
            Pattern.compile("\\s*(?:(?<number>\\d+(?:\\.\\d+)?)|(?<unit>\\[[^\\]]+])|(?<symbol>" + Symbol.PATTERN
                    + ")|(?<sign><=|>=|[-+*/^(),;<>]))\\s*");
    private static final String END = "";
    private static final String PI = "π";
    private static final String IF = "if";
    private static final String AND = "and";

    private final String text;
    private final List<String> tokens = new ArrayList<>();
    private int at;

    ExpressionReader(String text) {
        this.text = text;
        Matcher m = TOKEN.matcher(text);
        int end = 0;
        while (end < text.length()) {
            if (!m.find(end) || m.start() != end) {
                throw unreadable();
            }
            tokens.add(m.group().strip());
            end = m.end();
        }
    }

    private IllegalArgumentException unreadable() {
        return new IllegalArgumentException("'" + text + "' is not an expression");
    }

    Expression whole() {
        Expression expression = piecewise();
        if (!next().equals(END)) {
            throw unreadable();
        }
        return expression;
    }

    private String next() {
        return at < tokens.size() ? tokens.get(at) : END;
    }

    private String take() {
        String token = next();
        at++;
        return token;
    }

    private boolean takes(String token) {
        boolean isNext = next().equals(token);
        at += isNext ? 1 : 0;
        return isNext;
    }

    private void mustTake(String token) {
        if (!takes(token)) {
            throw unreadable();
        }
    }

    private Expression piecewise() {
        List<Expression.Branch> branches = new ArrayList<>();
        do {
            branches.add(branch());
        } while (takes(";"));
        for (Expression.Branch b : branches) {
            boolean isLast = b == branches.get(branches.size() - 1);
            if (b.conditions().isEmpty() != isLast) {
                throw unreadable();
            }
        }
        return branches.size() == 1 ? branches.get(0).then() : new Expression.Piecewise(branches);
    }

    private Expression.Branch branch() {
        Expression then = sum();
        List<Expression.Comparison> conditions = new ArrayList<>();
        if (takes(IF)) {
            do {
                conditions.add(comparison());
            } while (takes(AND));
        }
        return new Expression.Branch(then, conditions);
    }

    private Expression.Comparison comparison() {
        Expression left = sum();
        Relation relation = Relation.find(take()).orElseThrow(this::unreadable);
        return new Expression.Comparison(left, relation, sum());
    }

    private Expression sum() {
        Expression left = product();
        while (true) {
            if (takes("+")) {
                left = new Expression.Sum(left, false, product());
            } else if (takes("-")) {
                left = new Expression.Sum(left, true, product());
            } else {
                return left;
            }
        }
    }

    private Expression product() {
        Expression left = power();
        while (true) {
            if (takes("*")) {
                left = new Expression.Product(left, power());
            } else if (takes("/")) {
                left = new Expression.Quotient(left, power());
            } else {
                return left;
            }
        }
    }

    private Expression power() {
        if (takes("-")) {
            return new Expression.Negated(power());
        }
        Expression base = operand();
        return takes("^") ? new Expression.Power(base, power()) : base;
    }

    private Expression operand() {
        if (takes("(")) {
            Expression inside = sum();
            mustTake(")");
            return new Expression.Bracketed(inside);
        }
        String token = take();
        if (token.isEmpty() || token.equals(IF) || token.equals(AND)) {
            throw unreadable();
        }
        if (Character.isDigit(token.charAt(0))) {
            return new Expression.Number(token, Double.parseDouble(token), unit());
        }
        if (token.equals(PI)) {
            return new Expression.Number(PI, StrictMath.PI, Optional.empty());
        }
        Optional<MathFunction> function = MathFunction.find(token);
        if (function.isPresent()) {
            return new Expression.Call(function.get(), arguments());
        }
        return Symbol.of(token);
    }

    private Optional<MeasureUnit> unit() {
        if (!next().startsWith("[")) {
            return Optional.empty();
        }
        String token = take();
        return Optional.of(
                MeasureUnit.ofSymbol(token.substring(1, token.length() - 1)).orElseThrow(this::unreadable));
    }

    private List<Expression> arguments() {
        mustTake("(");
        List<Expression> arguments = new ArrayList<>();
        do {
            arguments.add(sum());
        } while (takes(","));
        mustTake(")");
        return arguments;
    }
}
