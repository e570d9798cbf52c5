package org.stillroom.bench;

import java.util.HashMap;
import java.util.Map;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs every benchmark shortly and holds those with a promise to their ratio; ends with 1 when one is broken.
 *
 * <p>Of each it takes the quickest iteration: what else the machine does can only slow one down.
 */
public final class Smoke {
    private Smoke() {}

    public static void main(String[] args) throws RunnerException {
        Options shortly = new OptionsBuilder()
                .forks(1)
                .warmupIterations(5)
                .warmupTime(TimeValue.milliseconds(300))
                .measurementIterations(10)
                .measurementTime(TimeValue.milliseconds(150))
                .shouldFailOnError(true)
                .build();
        Map<String, Double> scores = new HashMap<>();
        for (RunResult result : new Runner(shortly).run()) {
            String[] names = result.getParams().getBenchmark().split("\\.", -1);
            scores.put(
                    names[names.length - 2] + "." + names[names.length - 1],
                    result.getPrimaryResult().getStatistics().getMin());
        }
        boolean kept = true;
        for (Promise promise : Promise.values()) {
            kept &= promise.isKept(scores);
        }
        System.exit(kept ? 0 : 1);
    }
}
