package org.deckplanreview.layout;

import java.util.List;
import java.util.stream.IntStream;
import org.deckplanreview.submission.Tolerances;

/** Joists side by side. */
public final class BesideJoists {

    private static final double SAME_ROW_MM = 1;

    private BesideJoists() {}

    /** Indices of a joist's spans that have another joist along their whole length on either side; cantilevers have not. */
    public static List<Integer> spansBetweenNeighbours(JoistLine joist, List<JoistLine> field) {
        return IntStream.range(0, joist.spans().size())
                .filter(k -> !joist.spans().get(k).isCantilever())
                .filter(k -> isBeside(joist, joist.spans().get(k), field, 1)
                        && isBeside(joist, joist.spans().get(k), field, -1))
                .boxed()
                .toList();
    }

    private static boolean isBeside(JoistLine joist, Span span, List<JoistLine> field, int side) {
        Axis axis = Axis.of(joist.line());
        double row = axis.across(joist.line().from());
        double start = axis.along(joist.line().from());
        double farthest = joist.spacingMm() + Tolerances.OUTLINE_MM;
        return field.stream().anyMatch(other -> {
            double off = side * (axis.across(other.line().from()) - row);
            double a = axis.along(other.line().from()) - start;
            double b = axis.along(other.line().to()) - start;
            return off > SAME_ROW_MM
                    && off <= farthest
                    && Math.min(a, b) <= span.fromMm() + Tolerances.OUTLINE_MM
                    && Math.max(a, b) >= span.toMm() - Tolerances.OUTLINE_MM;
        });
    }
}
