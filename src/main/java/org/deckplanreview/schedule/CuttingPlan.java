package org.deckplanreview.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which pieces are cut from which stock, by first-fit decreasing: the longest piece first, each into the first length that
 * has room for it, a saw cut between pieces; each length is then bought as the shortest stock that holds its pieces.
 *
 * @param overlongMm pieces longer than the longest stock, longest first
 */
record CuttingPlan(List<Length> lengths, List<Double> overlongMm) {

    /** So that pieces that fill stock exactly fit in spite of rounding. */
    private static final double ROUNDING_MM = 1e-6;

    /** One length of stock and the pieces that are cut from it, longest first. */
    record Length(double stockMm, List<Double> piecesMm) {}

    /** @param stockMm shortest first */
    static CuttingPlan of(List<Double> piecesMm, List<Double> stockMm, double kerfMm) {
        double longest = stockMm.isEmpty() ? 0 : stockMm.get(stockMm.size() - 1);
        List<Double> falling =
                piecesMm.stream().sorted(Comparator.reverseOrder()).toList();
        List<Double> overlong =
                falling.stream().filter(p -> p > longest + ROUNDING_MM).toList();
        List<List<Double>> cut = new ArrayList<>();
        List<Double> used = new ArrayList<>();
        for (double piece : falling.subList(overlong.size(), falling.size())) {
            int first = 0;
            while (first < cut.size() && used.get(first) + kerfMm + piece > longest + ROUNDING_MM) {
                first++;
            }
            if (first == cut.size()) {
                cut.add(new ArrayList<>(List.of(piece)));
                used.add(piece);
            } else {
                cut.get(first).add(piece);
                used.set(first, used.get(first) + kerfMm + piece);
            }
        }
        List<Length> lengths = new ArrayList<>();
        for (int i = 0; i < cut.size(); i++) {
            double needed = used.get(i);
            double shortest = stockMm.stream()
                    .filter(s -> needed <= s + ROUNDING_MM)
                    .findFirst()
                    .orElseThrow();
            lengths.add(new Length(shortest, List.copyOf(cut.get(i))));
        }
        return new CuttingPlan(List.copyOf(lengths), overlong);
    }
}
