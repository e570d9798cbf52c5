package org.stillroom.bench;

import java.util.Locale;
import java.util.Map;

/** What Stillroom promises of its speed: at most so many times the yardstick measured in the same run. */
enum Promise {
    DENSITY_AT_20("DensityBenchmark.polynomialAt20", "DensityBenchmark.bareAt20", 2.0),
    DENSITY_AT_ANY_TEMPERATURE(
            "DensityBenchmark.polynomialAtAnyTemperature", "DensityBenchmark.bareAtAnyTemperature", 2.0),
    OIL_LOAD("ClarityBenchmark.oilLoad", "ClarityBenchmark.bareOilLoad", 2.5),
    /** 2,000 draws, each worth at most six bare loads. */
    CLARITY_CHANCES("ClarityBenchmark.chances", "ClarityBenchmark.bareOilLoad", 12_000.0),
    /** Six oils in whole drops take no longer than half of trying every number of drops of three. */
    WHOLE_DROPS("DropsBenchmark.sixOils", "DropsBenchmark.threeOilsOneByOne", 0.5);

    private final String ours;
    private final String yardstick;
    private final double most;

    Promise(String ours, String yardstick, double most) {
        this.ours = ours;
        this.yardstick = yardstick;
        this.most = most;
    }

    /** Says the ratio and whether it is kept. */
    boolean isKept(Map<String, Double> scores) {
        double ratio = score(scores, ours) / score(scores, yardstick);
        boolean kept = ratio <= most;
        System.out.printf(
                Locale.ROOT,
                "%s is %.2f times %s; at most %.1f is promised: %s%n",
                ours,
                ratio,
                yardstick,
                most,
                kept ? "kept" : "BROKEN");
        return kept;
    }

    private static double score(Map<String, Double> scores, String benchmark) {
        Double score = scores.get(benchmark);
        if (score == null) {
            throw new IllegalStateException("there is no benchmark " + benchmark);
        }
        return score;
    }
}
