package org.deckplanreview.comparison;

import java.util.ArrayList;
import java.util.List;

/** A bar for each pair of outcomes that occurs. Measures are in the drawing's own units. */
public record TransitionChart(int width, int height, int labelRight, int barLeft, int barHeight, List<Bar> bars) {
    private static final int WIDTH = 860;
    private static final int LABEL_RIGHT = 290;
    private static final int BAR_LEFT = 300;
    private static final int LONGEST_BAR = 400;
    private static final int BAR_HEIGHT = 20;
    private static final int STEP = 30;
    private static final int BASELINE = 15;
    private static final int GAP = 8;

    public TransitionChart {
        bars = List.copyOf(bars);
    }

    /** One pair of outcomes. */
    public record Bar(String label, long count, Transition transition, int y, int textY, int width, int countX) {}

    static TransitionChart of(ComparisonSummary summary) {
        List<ComparisonSummary.OutcomeTally> tallies = summary.outcomes().stream()
                .filter(tally -> tally.submissions() > 0)
                .toList();
        long most = tallies.stream()
                .mapToLong(ComparisonSummary.OutcomeTally::submissions)
                .max()
                .orElse(1);
        List<Bar> bars = new ArrayList<>();
        for (ComparisonSummary.OutcomeTally tally : tallies) {
            int y = bars.size() * STEP + 1;
            // Even one of many must be seen.
            int length = (int) Math.max(1, LONGEST_BAR * tally.submissions() / most);
            bars.add(new Bar(
                    tally.before().word() + " → " + tally.after().word(),
                    tally.submissions(),
                    tally.transition(),
                    y,
                    y + BASELINE,
                    length,
                    BAR_LEFT + length + GAP));
        }
        return new TransitionChart(WIDTH, Math.max(STEP, bars.size() * STEP), LABEL_RIGHT, BAR_LEFT, BAR_HEIGHT, bars);
    }
}
