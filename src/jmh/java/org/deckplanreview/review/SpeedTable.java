package org.deckplanreview.review;

import java.util.Collection;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.report.Detail;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs all benchmarks, or those that the command line names as for JMH, and prints the ratios of their CPU time within the run. */
public final class SpeedTable {
    private final TreeMap<String, Double> millis = new TreeMap<>();
    private final TreeMap<Integer, Double> byMembers = new TreeMap<>();

    private SpeedTable(Collection<RunResult> results) {
        for (RunResult result : results) {
            double score = result.getSecondaryResults().get(CpuTime.LABEL).getScore();
            String deck = result.getParams().getParam("deck");
            if (deck == null) {
                millis.put(result.getPrimaryResult().getLabel(), score);
            } else {
                byMembers.put(GrowthBenchmark.members(deck), score);
            }
        }
    }

    public static void main(String[] args) throws CommandLineOptionException, RunnerException {
        Options options = new OptionsBuilder()
                .parent(new CommandLineOptions(args))
                .addProfiler(CpuTime.class)
                .build();
        new SpeedTable(new Runner(options).run()).print();
    }

    private void print() {
        if (millis.keySet().containsAll(Set.of("read", "writeJson", "reviewToJson"))) {
            line("CPU: review to JSON / (read + write)", millis.get("reviewToJson") / (millis.get("read") + millis.get("writeJson")));
        }
        if (millis.containsKey("writePdf")) {
            line("PDF a second", 1000 / millis.get("writePdf"));
        }
        if (byMembers.size() > 1) {
            double cost = byMembers.lastEntry().getValue() / byMembers.firstEntry().getValue();
            double size = (double) byMembers.lastKey() / byMembers.firstKey();
            line("CPU from " + byMembers.firstKey() + " to " + byMembers.lastKey() + " members, exponent", Math.log(cost) / Math.log(size));
        }
        byte[] sample = BuiltIn.read(BuiltIn.SAMPLES.resolve("sloping-garden-deck.json"));
        for (Detail detail : Detail.values()) {
            line(
                    "JSON of sloping-garden-deck, " + detail + ", kB",
                    JsonRendering.line(BuiltIn.report(sample), detail).length / 1000.0);
        }
    }

    private static void line(String what, double figure) {
        System.out.printf(Locale.ROOT, "%-50s %8.3f%n", what, figure);
    }
}
