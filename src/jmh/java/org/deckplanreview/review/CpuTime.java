package org.deckplanreview.review;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/** CPU time of the whole process for one operation, collector included. A busy machine changes it far less than the clock's time. */
public final class CpuTime implements InternalProfiler {
    static final String LABEL = "cpu";

    private final OperatingSystemMXBean system =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private long startNs;

    @Override
    public String getDescription() {
        return "CPU time of the process for one operation";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        startNs = system.getProcessCpuTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double millis = (system.getProcessCpuTime() - startNs) / 1e6;
        return List.of(new ScalarResult(
                LABEL, millis / result.getMetadata().getAllOps(), "ms/op", AggregationPolicy.AVG));
    }
}
